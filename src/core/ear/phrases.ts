/** What may be said while a bake is walked; each is enrolled by who says it. */
export const COMMANDS = [
  'done',
  'takeBack',
  'sayAgain',
  'longer',
  'hush',
  'reading',
  'notYet',
  'ready',
  'showMe',
  'lidOff',
] as const;
/** How a poked dent comes back. */
export const POKES = ['springs', 'slowly', 'stays'] as const;
export const ANSWERS = ['yes', 'no'] as const;
/** A reading is said digit by digit. */
export const DIGITS = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'point',
] as const;

export const EAR_PHRASES = [...COMMANDS, ...POKES, ...ANSWERS, ...DIGITS] as const;
export type EarPhrase = (typeof EAR_PHRASES)[number];
export type EarDigit = (typeof DIGITS)[number];

/** More than so many are told apart badly: a screen listens for no more, but for digits. */
export const MOST_ACTIVE = 4;
