import { weighInsOf } from '../../../../machines/kitchen/weigh-ins.ts';
import type { DayKey } from '../../../core/circle/day-key.ts';
import type { RoomAsk } from '../../../core/circle/day-room.ts';
import type { Formula } from '../../../core/formula/formula.ts';
import type { HouseCircle } from '../../house-circle.ts';
import type { House } from '../../house.ts';
import { breadsOf } from '../orders/order-words.ts';

/** Breads that can be ordered: the Book's list. */
export const listedBreads = ({ formulas }: Pick<House, 'formulas'>): readonly Formula[] =>
  formulas().flatMap(({ formula }) => formula ?? []);

/** What the room of a day is reckoned from in this kitchen. `but`: an order that is being changed. */
export const roomAskOf = (
  house: Pick<House, 'book' | 'formulas' | 'equipment' | 'kitchen'>,
  { circle }: Pick<HouseCircle, 'circle'>,
  day: DayKey,
  but: string | null = null,
): RoomAsk => ({
  circle: circle(),
  day,
  breads: breadsOf(house),
  weighIns: weighInsOf(house.kitchen()),
  kitchen: house.equipment(),
  but,
});
