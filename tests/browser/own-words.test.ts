import { expect, it, vi } from 'vitest';
import { Baker } from './harness/baker.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, type ViewportName } from './harness/open-app.ts';

interface Spoken {
  readonly text: string;
  readonly voice: string;
  cancelled: boolean;
}
declare const spoken: Spoken[];

/** A tablet with a voice of its own that begins and never ends, beside one on a network. */
const VOICE = `
  window.spoken = [];
  window.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
  const voices = ['Cloud', 'Here'].map((name) => ({
    name, lang: 'en-GB', localService: name === 'Here', default: name === 'Cloud',
  }));
  Object.defineProperty(window, 'speechSynthesis', { value: Object.assign(new EventTarget(), {
    getVoices: () => voices,
    speak(words) {
      if (words.volume === 0) return;
      spoken.push({ text: words.text, voice: words.voice.name, cancelled: false });
      words.onstart();
    },
    cancel: () => spoken.forEach((one) => (one.cancelled = true)),
  }) });
`;

it('reads the baker’s own words by the tablet’s own voice once that is wanted, until a touch', async () => {
  const app = await openApp();
  await app.context.addInitScript(VOICE);
  await app.reopen();
  const baker = new Baker(app);
  const said = () => app.page.evaluate(() => spoken);
  await app.page.locator('.start-grid').waitFor();
  await baker.tap('.bench-controls .control:has-text("Kitchen")');
  for (const label of ['This tablet', 'Sound check', 'The voice']) await baker.press(label);
  await app.page.locator('.act-detail:has-text("No clip says a name you gave")').waitFor();
  expect(await said()).toEqual([]);
  for (const view of ['small', 'tall', 'wide'] as ViewportName[]) {
    await app.setViewport(view);
    await app.screenshot(`voice-${view}`);
  }
  await baker.press('Read my own words aloud');
  await vi.waitFor(
    async () => {
      await app.turn(1_000);
      expect(await said()).toHaveLength(1);
    },
    { timeout: 15_000, interval: 50 },
  );
  const [{ text, voice, cancelled }] = (await said()) as [Spoken];
  expect([voice, cancelled]).toEqual(['Here', false]);
  expect(text).toBe('Cherry and hazelnut');
  await baker.tap('.slab');
  expect(await said()).toMatchObject([{ cancelled: true }]);
  expectNoFaults(app.faults);
});
