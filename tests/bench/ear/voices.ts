/** Who speaks in the corpus: made voices, each a way to say a text at some haste and pitch. No person is among them. */
export interface Voice {
  readonly name: string;
  /** Whether it is to sound like a child: higher, and of a smaller throat. */
  readonly child: boolean;
  readonly by:
    | { readonly tool: 'espeak-ng'; readonly voice: string; readonly pitch: number }
    | { readonly tool: 'flite'; readonly voice: string };
  /** Played so much faster after it was said: every formant moves up with the pitch. */
  readonly throat: number;
}

const robot = (name: string, voice: string, pitch: number, throat = 1): Voice => ({
  name,
  child: throat > 1.1,
  by: { tool: 'espeak-ng', voice, pitch },
  throat,
});
const flite = (voice: string, throat = 1): Voice => ({
  name: throat > 1.1 ? `${voice}, a child` : voice,
  child: throat > 1.1,
  by: { tool: 'flite', voice },
  throat,
});

/** Thresholds are found on these, and on no other. */
export const TUNING: readonly Voice[] = [
  robot('one', 'en-gb+m1', 40),
  robot('two', 'en-us+f2', 60),
  robot('three', 'en-gb-scotland+m3', 35),
  robot('four, a child', 'en-gb+f1', 80, 1.2),
  flite('kal16'),
  robot('five', 'en-029+f3', 55),
];

/** And the score is counted on these. */
export const SCORING: readonly Voice[] = [
  flite('slt'),
  flite('rms'),
  flite('awb'),
  flite('slt', 1.18),
  robot('six', 'en-gb-x-rp+m4', 45),
  robot('seven', 'en-us+m7', 30),
  robot('eight', 'en-gb-x-gbclan+f4', 55),
  robot('nine, a child', 'en-us+f5', 75, 1.22),
];
