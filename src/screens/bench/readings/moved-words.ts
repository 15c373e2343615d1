import type { Reading } from '../../../core/records/fact.ts';
import { movedBy, movedTo } from '../../../core/speech/words/moved.ts';
import { said } from '../../../core/speech/facts.ts';
import { fill } from '../../../core/speech/fill.ts';
import { MINUTE, type Instant } from '../../../core/units.ts';

type Marks = Readonly<Record<string, Instant>>;

/** A move is told in steps of this; less is none. Judgement: nobody bakes to the minute. */
const STEP = 5;

const causeOf = ({ what }: Reading, corrects: boolean): keyof typeof movedBy => {
  if (corrects) return 'correction';
  return what.endsWith('Temperature') ? 'temperature' : 'sign';
};

/**
 * One sentence of what changed and one of when to look, once a reading has moved the ready window by
 * five minutes or more; else null. `marks` before and after; without a look of its own the wait tells
 * when the dough is likely ready.
 */
export function movedWords(
  reading: Reading,
  corrects: boolean,
  before: Marks,
  after: Marks,
  hour: (at: Instant) => string,
): string | null {
  const [was, is] = [before['likely'], after['likely']];
  if (was === undefined || is === undefined) return null;
  const minutes = STEP * Math.round(Math.abs(is - was) / MINUTE / STEP);
  if (minutes < STEP) return null;
  const way = is < was ? 'sooner' : 'later';
  const { look } = after;
  const to =
    look === undefined
      ? { text: is < was ? movedTo.readySooner : movedTo.readyLater, time: hour(is) }
      : { text: movedTo[way], time: hour(look) };
  return `${movedBy[causeOf(reading, corrects)][way]} ${fill(to.text, said({ minutes, time: to.time }))}`;
}
