import type { Order } from '../../../core/circle/circle.ts';
import type { DayKey } from '../../../core/circle/day-key.ts';

/** What a bake day still takes, told on the pages of orders; the baker may go on all the same. */
export interface CapSays {
  /** One line before the day is full; null: nothing limits it. */
  line(day: DayKey): string | null;
  /** Why an order as it would be does not go on its day, and what would do; none: it goes. */
  asks(order: Order): readonly string[];
}
