import { nextMidnight, type DayClock } from '../../core/speech/tell-day.ts';
import type { House } from '../house.ts';

/** How instants are told on this tablet now. */
export const dayClockOf = (house: Pick<House, 'now' | 'hour' | 'day' | 'midnight'>): DayClock => ({
  now: house.now(),
  midnight: nextMidnight(house.now(), (at) => house.midnight(at)),
  hour: (at) => house.hour(at),
  day: (at) => house.day(at),
});
