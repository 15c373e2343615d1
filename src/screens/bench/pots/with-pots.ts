import { deadlineOf } from '../../../../machines/kitchen/dues.ts';
import type { Kitchen } from '../../../../machines/kitchen/kitchen.ts';
import { metaOf, stageOf } from '../../../../machines/kitchen/stage-of.ts';
import { isLane } from '../../../core/records/lane.ts';
import { potsPage } from '../../../core/speech/words/pots-page.ts';
import { fill } from '../../../core/speech/fill.ts';
import type { Instant } from '../../../core/units.ts';
import type { Focus } from '../../focus.ts';
import { potTitle } from '../../pot-of.ts';
import type { BenchView } from '../view.ts';
import { potsInUse } from './pots-in-use.ts';

/** More of them beside one act are not read. */
const MOST = 2;
/** Where the caution fills what room there is, the page of the pots tells of the others. */
const LONG: readonly string[] = ['open', 'recover'];

/** What the other pots call for next, what has called first. */
const othersNext = (
  { lanes }: Kitchen,
  who: string,
  hour: (at: Instant) => string,
): readonly string[] =>
  Object.entries(lanes)
    .flatMap(([lane, machine]) => {
      const pot = potTitle(lane);
      if (lane === who || pot === null) return [];
      const stage = stageOf(machine);
      const at = deadlineOf(machine);
      const now = potsPage.nextNow[stage as keyof typeof potsPage.nextNow] as string | undefined;
      const next = potsPage.next[metaOf(machine).waits as keyof typeof potsPage.next] as
        string | undefined;
      if (now !== undefined) return [{ at: machine.context.entered[stage] ?? 0, words: now, pot }];
      return at === null || next === undefined
        ? []
        : [{ at, words: fill(next, { pot, time: hour(at) }), pot }];
    })
    .toSorted((a, b) => a.at - b.at)
    .slice(0, MOST)
    .map(({ words, pot }) => fill(words, { pot }));

/**
 * A wait at the oven, with what the other pots call for next, and the way to the page of all of them
 * in the place of a new reading: that one stands under More too.
 */
export function withPots(
  view: BenchView,
  kitchen: Kitchen,
  { who }: Focus,
  hour: (at: Instant) => string,
): BenchView {
  if ((who !== 'oven' && !isLane(who)) || view.deadline === null || !potsInUse(kitchen)) {
    return view;
  }
  const told = LONG.includes(view.stage) ? [] : othersNext(kitchen, who, hour);
  const lines = told.map((label) => ({ label, state: 'told' as const }));
  const third = view.third === 'reading' && view.stage !== 'open' ? 'pots' : view.third;
  return { ...view, third, lines: view.lines.length > 0 ? view.lines : lines };
}
