import type { Laid } from '../day/laid/came-up.ts';
import { touchesAhead } from '../day/laid/moved.ts';
import type { PlannedTouch } from '../day/plan/types.ts';
import type { Instant, Units } from '../units.ts';
import { waitNames, waysOn } from './words/live.ts';
import { fill } from './fill.ts';
import { showHeat } from './heats.ts';
import { showLength } from './lengths.ts';
import { touchWithin } from './tell-plan.ts';

/** The last instant bread is ready. */
const readyAt = ({ result }: Laid): Instant => Math.max(...result.ready.map(({ at }) => at));

const waits: Readonly<Record<string, string>> = waitNames;

/** What stands and waits: 'the levain'; of several that are not alike 'it'. */
function waiting({ live }: Laid): string {
  const [name, ...others] = new Set(Object.values(live.at).map(({ touch }) => waits[touch]));
  return others.length === 0 && name !== undefined ? name : waitNames.it;
}

function first(laid: Laid, time: (at: Instant) => string, units: Units): string[] {
  const { way, without = [], works, place, by = 0, ask } = laid;
  const length = showLength(by);
  switch (way) {
    case 'leaveFolds': {
      const touch = without.map(touchWithin).join(', ');
      return [fill(waysOn.leaveFolds, { touch })];
    }
    case 'coolRoom':
      return [fill(waysOn.coolRoom, { name: waiting(laid), time: time(place!.from) })];
    case 'fridge':
      return [
        fill(waysOn.fridge, { name: waiting(laid), time: time(place!.from) }),
        fill(waysOn.fridgeWorks, { length: showLength(Math.round((works ?? 0) / 5) * 5) }),
      ];
    case 'warmPlace':
      return [
        fill(waysOn.warmPlace, { name: waiting(laid), celsius: showHeat(place!.celsius, units) }),
      ];
    case 'backSooner':
      return [fill(waysOn.backSooner, { length, time: time(ask.away.at(-1)!.to) })];
    case 'later':
      return [fill(waysOn.later, { length, time: time(readyAt(laid)) })];
    default:
      return [waysOn[way]];
  }
}

/** A way on in sentences: what to do, and the next touch. `time` shows an instant. */
export function tellWay(laid: Laid, time: (at: Instant) => string, units: Units): string[] {
  const isAtOnce = ({ batch, name }: PlannedTouch): boolean =>
    batch === laid.atOnce?.batch && name === laid.atOnce.name;
  const [next] = touchesAhead(laid.live, laid.result).filter(
    (touch) => touch.hands > 0 && !isAtOnce(touch),
  );
  const then = next && { touch: touchWithin(next.name), time: time(next.at) };
  return [...first(laid, time, units), ...(then ? [fill(waysOn.then, then)] : [])];
}
