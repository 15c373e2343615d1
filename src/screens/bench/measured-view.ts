import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import type { LogRecord } from '../../core/records/record.ts';
import type { Instant, Units } from '../../core/units.ts';
import type { Focus } from '../focus.ts';
import { filledView } from './filled-view.ts';
import { withLastTime } from './last-time.ts';
import { slowedView } from './slowed-view.ts';
import { standView } from './stand-view.ts';
import { withPots } from './pots/with-pots.ts';
import { withRipeHour } from './feed-view.ts';
import type { BenchView } from './view.ts';
import { withWater } from './water-view.ts';

export { fedFocus } from './feed-view.ts';

/**
 * The bench's view with the number to hit at a weigh card, what the filling does, how long a loaf stands
 * out, and what the last bake left. `records`: the log, where there is one.
 */
export const withTarget = (
  view: BenchView,
  kitchen: Kitchen,
  focus: Focus,
  units: Units,
  hour: (at: Instant) => string,
  now: Instant,
  records: readonly LogRecord[] = [],
): BenchView =>
  view.task === null
    ? withLastTime(
        standView(
          slowedView(
            withRipeHour(
              withWater(
                withPots(filledView(view, focus, units), kitchen, focus, hour),
                kitchen,
                focus,
                units,
              ),
              kitchen,
              focus,
              hour,
              now,
            ),
            kitchen,
            focus,
            now,
          ),
          kitchen,
          now,
        ),
        kitchen,
        focus,
        records,
      )
    : view;
