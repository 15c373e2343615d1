/** What a house loads after its first paint: it comes before a test's end, or is asked of a page that is gone. */
export const loadedLater = (): Promise<unknown> =>
  Promise.all([
    import('../../src/core/day/waits.ts'),
    import('../../src/app/say-aloud.ts'),
    import('../../src/app/voice.ts'),
  ]);
