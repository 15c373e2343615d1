import { proofCourse } from '../day/proof-course.ts';
import { proofDough } from '../day/proof-dough.ts';
import type { WaitInput } from '../day/waits.ts';
import { refed } from '../formula/refed.ts';
import type { Fact } from '../records/fact.ts';
import { HOUR, type Instant } from '../units.ts';
import type { BakePage } from './bake-page.ts';
import type { BakeRows } from './bake-rows.ts';
import { coldHours } from './bulk-end.ts';

type Press = Extract<Fact, { kind: 'press' }>;

/** Where a loaf stood as it went into the oven: its proof index, and the sd of it. */
export interface DoorIndex {
  readonly q: number;
  readonly doubt: number;
}

/** Sds to either side of the middle that four of five lie between. */
const OF_INTERVAL = 1.2816;

/** How warm it was and how a cold loaf had grown. Rise and dome are in the belief, a dent weighs by itself. */
const isMeasured = ({ reading }: WaitInput['seen'][number]): boolean =>
  !['rise', 'edge', 'poke'].includes(reading.what) && !reading.odd;

/** What a bake's facts tell the dough clock of its loaf; null where it stands in no position. */
function asked(
  { start, rows, standing }: BakeRows,
  page: BakePage,
  door: Instant,
): WaitInput | null {
  const place = rows.findLast(({ position }) => position.bakes[start.bake])?.position.bakes[
    start.bake
  ];
  if (place === undefined) return null;
  const presses = standing.filter(
    (fact): fact is Press => fact.kind === 'press' && fact.who === start.bake,
  );
  const at = (act: Press['act']): Instant | undefined =>
    presses.findLast((press) => press.act === act)?.at;
  const chilled = at('inFridge') ?? (start.from === 'proof.retard' ? start.at : undefined);
  const takenOut = at('standOut');
  const seed = presses.findLast(({ act, item }) => act === 'answer' && item === 'seed');
  return {
    stage: 'oven.queued',
    now: door,
    recipe: refed(start.recipe, Number(seed?.value)),
    kitchen: start.kitchen,
    entered: place.entered,
    touches: place.touches,
    prior: place.belief,
    seen: [...page.readings, ...page.looks].filter((one) => one.at <= door && isMeasured(one)),
    done: presses.flatMap(({ act, item }) => (act === 'taskDone' && item ? [item] : [])),
    again: false,
    ...(chilled === undefined ? {} : { chilled }),
    ...(takenOut === undefined ? {} : { takenOut }),
  };
}

/**
 * The proof index of a bake's loaves as the first of them went into the oven. No fact carries it: it is walked
 * along the dough clock from the vigour that the facts carried last, for which nothing is weighed anew. Null
 * where no loaf went in, nobody saw the dough shaped, or nobody knows how long it had been cold; a spooned dough
 * has no index that anyone fitted.
 */
export function doorIndex(found: BakeRows, page: BakePage): DoorIndex | null {
  const at = page.loads[0]?.in;
  const input = at === undefined ? null : asked(found, page, at);
  if (at === undefined || input?.recipe.process.shaping !== 'round') return null;
  const { entered, chilled } = input;
  const shaped = 'shape.divide' in entered || 'shape.scoop' in entered;
  if (chilled === undefined ? !shaped : coldHours(page) === null) return null;
  const dough = proofDough(input);
  const hours = Math.max(0, (at - dough.begin) / HOUR);
  const { low, likely, high } = proofCourse(dough, hours, hours, 1)[0]!;
  return { q: likely, doubt: (high - low) / 2 / OF_INTERVAL };
}
