import { bakeBeliefs } from '../../../core/log/bake-beliefs.ts';
import { bakePage, type BakePage } from '../../../core/log/bake-page.ts';
import { bakeRows } from '../../../core/log/bake-rows.ts';
import type { ChartedAs } from '../../../core/log/chart/bake-chart.ts';
import type { ChartedBake } from '../../../core/log/chart/bake-panels.ts';
import { cutOf, type CutFact } from '../../../core/log/cut-of.ts';
import { doughHours } from '../../../core/log/dough-hours.ts';
import { whenIn } from '../../../core/log/when.ts';
import { isLane } from '../../../core/records/lane.ts';
import type { Instant } from '../../../core/units.ts';
import type { House } from '../../house.ts';
import type { Heats } from '../../heats-in.ts';
import { nameOf, placedName } from '../../stage-names.ts';
import type { RecordsOf } from '../records-of.ts';

/** One bake with all that its pages and its file tell, and how it is told here. */
export interface Telling extends ChartedAs {
  readonly page: BakePage;
  readonly charted: ChartedBake;
  /** What its cut loaf showed; null: nobody said. */
  readonly cut: CutFact | null;
  /** A step's name in words that the voice has: without the pot it is at. */
  saidOf(who: string, stage: string): string;
  /** An instant of it, with the day where the hour alone does not say which. */
  when(at: Instant): string;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The last instant that is told of a bake. */
const lastOf = ({ from, to, stages, calls, loads, readings }: BakePage): Instant =>
  Math.max(
    from,
    to ?? from,
    ...stages.map((stay) => stay.from),
    ...readings.map(({ at }) => at),
    ...calls.flatMap(({ due, heard, acted }) => [due, heard ?? due, acted ?? due]),
    ...loads.flatMap((load) => [load.in, load.out ?? load.in]),
  );

/** What is told of a bake by the id of its start; null: its log has none of it. */
export function tellingOf(
  house: Pick<House, 'ways' | 'hour' | 'day' | 'date' | 'midnight'>,
  { records, bake, live }: RecordsOf,
  start: string,
): Telling | null {
  const beside = { begun: start, ...(live ? { live } : {}) };
  const rows = bakeRows(records, bake, beside);
  const page = bakePage(records, bake, beside);
  if (rows === null || page === null) return null;
  const { process } = rows.start.recipe.formula;
  const heats = (who: string): Heats => {
    const load = isLane(who) ? page.loads.find(({ lane }) => lane === who) : undefined;
    return load?.vessel ?? process.vessel;
  };
  return {
    page,
    charted: { page, wanted: process.rise, beliefs: bakeBeliefs(rows), lived: doughHours(page) },
    cut: cutOf(records, start),
    units: house.ways(),
    clock: house,
    // A task's subject follows a call word elsewhere: here it stands by itself.
    nameOf: (who, stage) =>
      capital(isLane(who) ? placedName(who, stage, heats(who)) : nameOf(who, stage, heats(who))),
    saidOf: (who, stage) => capital(nameOf(who, stage, heats(who))),
    when: whenIn([page.from, lastOf(page)], house),
  };
}
