/** Who speaks in the corpus: made voices, each a way to say a text at some haste and pitch. No person is among them. */
export interface Voice {
  readonly name: string;
  readonly by:
    | { readonly tool: 'espeak-ng'; readonly voice: string; readonly pitch: number }
    | { readonly tool: 'flite'; readonly voice: string };
  /** Played so much faster after it was said: every formant moves up with the pitch, as a child's are higher. */
  readonly throat: number;
}

const robot = (name: string, voice: string, pitch: number, throat = 1): Voice => ({
  name,
  by: { tool: 'espeak-ng', voice, pitch },
  throat,
});
const flite = (voice: string, name = voice, throat = 1): Voice => ({
  name,
  by: { tool: 'flite', voice },
  throat,
});

/** Thresholds are found on these, and on no other. */
export const TUNING: readonly Voice[] = [
  robot('one', 'en-us+f2', 60),
  robot('two', 'en-gb-scotland+m3', 35),
  robot('three, a child', 'en-gb+f1', 80, 1.2),
  flite('kal16'),
  robot('four', 'en-gb+f2', 66),
];

/** And the score is counted on these. */
export const SCORING: readonly Voice[] = [
  flite('slt'),
  flite('rms'),
  flite('slt', 'slt, a child', 1.18),
  robot('five', 'en-gb-x-rp+m4', 45),
  robot('six, a child', 'en-us+f5', 75, 1.22),
];
