import { inTongue } from '../tongue.ts';
import type { LoafCause, LoafChange } from '../../log/loaf-names.ts';
import type { NoteValue } from './note.ts';

/** What a cut loaf of the last bake looked like: of the bread, never of its baker, and no surer than a look. */
export const lastTimeLooked = inTongue('last-time', 'lastTimeLooked', {
  well: 'Last time it was a fine loaf.',
  under: 'Last time it looked under.',
  short: 'Last time it looked a little short of rise.',
  over: 'Last time it looked over.',
  cutHot: 'Last time it looked as if it was cut warm.',
  notBaked: 'Last time it looked not quite baked through.',
  skin: 'Last time its skin looked weak or dry.',
  benchFlour: 'Last time it showed streaks of bench flour.',
  ovenLow: 'Last time the oven looked too low.',
  ovenHot: 'Last time the oven looked too hot.',
  wetFilling: 'Last time the filling looked too wet.',
} as const satisfies Readonly<Record<LoafCause, string>>);

/** What was noted as the last bake was put away. */
export const lastTimeNoted = inTongue('last-time', 'lastTimeNoted', {
  good: 'Last time it was good.',
  under: 'Last time it was under.',
  over: 'Last time it was over.',
  dark: 'Last time the crust was too dark.',
  pale: 'Last time the crust was too pale.',
} as const satisfies Readonly<Record<NoteValue, string>>);

/** The one thing to change. Common practice, no source. */
export const thisTime = inTongue('last-time', 'thisTime', {
  warmerDough: 'This time start with a warmer dough.',
  longerBulk: 'This time wait for the dome.',
  longerProof: 'This time let the shaped loaf rise a little longer.',
  shorterBulk: 'This time end the bulk a little sooner.',
  coolerDough: 'This time start with a cooler dough.',
  shorterCold: 'This time leave it in the cold for less time.',
  coolLonger: 'This time let it cool two hours before you cut.',
  bakeLonger: 'This time bake it five to ten minutes longer.',
  tighterSkin: 'This time shape it a little tighter.',
  coverSkin: 'This time keep the loaf covered.',
  lessFlour: 'This time use less flour on the bench.',
  hotterOven: 'This time heat the oven for longer.',
  coolerOven: 'This time set the oven a little lower.',
  trayBelow: 'This time put a tray on the shelf below.',
  drierFilling: 'This time drain and dry the filling well.',
} as const satisfies Readonly<Record<LoafChange, string>>);

const theSameWay = 'Do it the same way.';

/** The baker's own words about the last bake, as they were written. */
const ownLastTime = 'Last time: “{words}”';

/** Of these, what is said by itself. */
export const lastTimeLines = inTongue('last-time', 'lastTimeLines', {
  theSameWay,
  ownLastTime,
});
