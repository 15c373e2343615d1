import { inTongue } from '../tongue.ts';
import type { countdown } from './running.ts';

/** Where more than one bake runs: whose act it is, and what the others wait for. */
export const several = inTongue('several', 'several', {
  place: '{bake} · {place}',
  /** The oven is at another bake’s loaf. */
  ovenOther: 'Oven · {bake} loaf',
  /** Two bakes of the same bread are told apart by the hour each began. */
  twin: '{bake} {time}',
  said: '{bake} bake',
  twinSaid: '{bake} bake of {time}',
  /** A sentence of its own, but never parted from the next: its blank does not break. */
  sentence: '{bake}.\u00a0{words}',
  /** What a call is about, and whose. */
  subject: '{name}, {bake}',
  /** For ears, on the press that goes to another bake: as it is shown, then what it does. */
  goTo: '{bake} {waits}: {stage}. Go there.',
  goToAt: '{time} {bake} {waits}: {stage}. Go there.',
  yourTurn: 'your turn',
  ovenNext: 'oven next',
  moved: '{bake}: {stage}.',
} as const);

/** What a bake waits for, by its mark, beside its clock time: one or two short words. */
export const waitsFor: Readonly<
  Record<Exclude<keyof typeof countdown, `hot${'Pots' | 'Stone' | 'Oven'}`>, string>
> = inTongue('several', 'waitsFor', {
  look: 'next look',
  touch: 'hands in',
  turn: 'needs you',
  end: 'time up',
  // With pots, a stone or nothing in it.
  hot: 'oven hot',
  poke: 'next check',
  lid: 'lid off',
  vent: 'let steam out',
  colour: 'look at crust',
});

/** Where it has called and nothing was done yet. */
export const callsNow = inTongue('several', 'callsNow', {
  look: 'look now',
  act: 'do it now',
  hot: 'hot, now',
} as const);

/** A short name does not end on one of these, with blanks between them: a tongue has as many as it has. */
export const joiners = inTongue('several', 'joiners', {
  all: 'and with of in on the for from & +',
} as const);
