import type { Move, Why } from '../day/laid/moved.ts';
import type { Instant } from '../units.ts';
import { live, movedWhy, touchNouns, waitNames } from './words/live.ts';
import { fill } from './fill.ts';
import { showLength } from './lengths.ts';
import { NUMBERED, tellTouch, touchWithin } from './tell-plan.ts';
import { showBread } from './show-bread.ts';

const names: Readonly<Record<string, string>> = waitNames;
const nouns: Readonly<Record<string, string>> = touchNouns;

/** A touch's name, with its bread's where there are several. */
const nameOf = (name: string, batch: string | null = null): string => {
  const its = name === 'ready' ? live.bread : tellTouch(name);
  return batch === null ? its : fill(live.ofBake, { bake: showBread(batch), part: its });
};

/** 'fold 2' → 'fold 2', 'divide' → 'the dividing': a touch as what a sentence is about. */
function nounOf(touch: string): string {
  const [, kind = touch, count = ''] = NUMBERED.exec(touch) ?? [];
  const noun = nouns[kind];
  return noun === undefined ? touchWithin(touch) : fill(noun, { count });
}

function because({ why, touch, by }: Why): string {
  const length = showLength(Math.abs(by));
  const its = nounOf(touch);
  if (why === 'overdue') return fill(movedWhy.overdue, { name: its, length });
  if (why === 'done')
    return fill(by < 0 ? movedWhy.soonerDone : movedWhy.laterDone, { name: its, length });
  const name = names[touch] ?? its;
  return fill(by < 0 ? movedWhy.soonerWait : movedWhy.laterWait, { name, length });
}

/**
 * What moves in a fresh plan and why, in one sentence of the first that does; null where nothing does.
 * `time` shows an instant, its day with it where that is needed; `many`: of several breads each is named.
 */
export function tellMoved(
  moves: readonly Move[],
  whys: readonly Why[],
  time: (at: Instant) => string,
  many = false,
): string | null {
  const [first] = moves;
  if (first === undefined) return null;
  const touch = nameOf(first.name, many ? first.batch : null);
  const why = whys.find(({ batch }) => batch === first.batch) ?? whys[0];
  if (why === undefined && first.from === null)
    return fill(movedWhy.fresh, { touch, time: time(first.to) });
  if (why === undefined)
    return fill(movedWhy.plain, { touch, time: time(first.to), until: time(first.from!) });
  return fill(movedWhy.because, { touch, time: time(first.to), part: because(why) });
}

/** Which bakes that stood as planned move as well; none where no other does. */
export const tellOthers = (others: readonly string[]): string[] =>
  others.length > 0 ? [fill(live.others, { name: others.map(showBread).join(', ') })] : [];

/** A line of what moves: its name, where it was and where it is. */
export const tellMove = (
  { batch, name, from, to }: Move,
  time: (at: Instant) => string,
  many = false,
): { readonly name: string; readonly was: string; readonly now: string } => ({
  name: nameOf(name, many ? batch : null),
  was: from === null ? '' : time(from),
  now: time(to),
});
