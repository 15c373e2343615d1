import { bakeInput } from '../../../machines/kitchen/pinned.ts';
import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { waitInput } from '../../../machines/kitchen/wait-input.ts';
import { slowedBy } from '../../core/day/filling-chill.ts';
import { bulkLines } from '../../core/speech/words/bulk.ts';
import { said, shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import type { Instant } from '../../core/units.ts';
import type { Focus } from '../focus.ts';
import type { BenchView } from './view.ts';

/** It is told in steps of this; less is none. Judgement. */
const STEP = 5;

/** Where the filling is scattered: how much longer the dough takes for it, if that can be told. */
export function slowedView(
  view: BenchView,
  kitchen: Kitchen,
  { bake }: Focus,
  now: Instant,
): BenchView {
  const start = kitchen.starts[bake.context.start];
  // Told with the first of several.
  if (view.progress?.done) return view;
  if (view.stage !== 'bulk.scatter' || start === undefined) return view;
  const by = slowedBy(
    waitInput(kitchen, bake, bakeInput(start).belief),
    Math.max(now, kitchen.now),
  );
  const minutes = STEP * Math.round(by / STEP);
  if (minutes < STEP) return view;
  return {
    ...view,
    detail: `${fill(bulkLines.fillingSlows, shown({ minutes }))} ${view.detail}`,
    spoken: `${view.spoken} ${fill(bulkLines.fillingSlows, said({ minutes }))}`,
  };
}
