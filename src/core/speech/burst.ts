/** One tone of a call's burst: when it begins, in seconds from the call, and how loud. */
export interface Tone {
  readonly at: number;
  readonly db: number;
}

type Kind = 'look' | 'act' | 'hot';

const SECONDS: Readonly<Record<Kind, { every: number; until: number; then: readonly number[] }>> = {
  look: { every: 20, until: 60, then: [300] },
  act: { every: 6, until: 60, then: [300] },
  hot: { every: 3, until: 60, then: [] },
};
/** A hot call does not go quiet by itself: after its first minute it comes every 20 s for an hour. */
const HOT_AFTER = { every: 20, until: 3600 } as const;

/** Loudness by how long the call has gone unanswered: −12, −6 and full; hot begins at −6. */
const loudness = (kind: Kind, at: number): number =>
  at >= 45 ? 0 : at >= 15 || kind === 'hot' ? -6 : -12;

const steps = (from: number, until: number, every: number): number[] =>
  Array.from({ length: Math.ceil((until - from) / every) }, (_, i) => from + i * every);

/**
 * All tones of one call, in order: one burst of at most 60 s, louder in three steps, one reminder at
 * five minutes, then quiet, safety excepted. Judgement, after alarm practice.
 */
export function burst(kind: Kind): readonly Tone[] {
  const { every, until, then } = SECONDS[kind];
  const later = kind === 'hot' ? steps(until, HOT_AFTER.until, HOT_AFTER.every) : then;
  return [...steps(0, until, every), ...later].map((at) => ({ at, db: loudness(kind, at) }));
}

/** The loudness a call has come to after `elapsed` seconds, dB. */
export const loudnessAt = loudness;
