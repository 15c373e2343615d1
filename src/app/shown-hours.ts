import { createSignal, type Accessor } from 'solid-js';
import type { Clock } from '../core/speech/show-time.ts';
import type { Instant } from '../core/units.ts';
import type { House } from '../screens/house.ts';
import { dateOf, dayOf, hourOf, sinceMidnight } from './hours.ts';
import type { KitchenTime, Moment } from './kitchen-time.ts';

export interface ShownHours {
  readonly shown: Pick<House, 'hour' | 'day' | 'date' | 'midnight' | 'wall'>;
  /** Once a beat, after the clock was read. True where all hours are others now. */
  beat(moment: Moment): boolean;
}

/**
 * Kitchen instants as hours on this tablet's wall. Whatever shows one is drawn anew where the clock was set
 * back, or the tablet came to another zone: one that is as far from Greenwich today may not be tomorrow.
 *
 * @param zone the wall's, an IANA name
 */
export function makeShownHours(
  time: Pick<KitchenTime, 'wallOf'>,
  zone: () => string,
  clock: Accessor<Clock>,
): ShownHours {
  const [standsBy, setStandsBy] = createSignal('');
  let before = '';
  const wall = (at: Instant): Instant => {
    standsBy();
    return time.wallOf(at);
  };
  return {
    shown: {
      wall,
      hour: (at) => hourOf(wall(at), clock()),
      day: (at) => dayOf(wall(at)),
      date: (at) => dateOf(wall(at)),
      midnight: (at) => at - sinceMidnight(wall(at)),
    },
    beat({ raw }) {
      const offset = new Date(raw).getTimezoneOffset();
      const is = before !== (before = time.wallOf(0) + zone() + offset);
      setStandsBy(before);
      return is;
    },
  };
}
