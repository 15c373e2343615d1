import type { Minutes } from '../units.ts';
import type { QuietHours, MinuteOfDay } from './equipment.ts';

/** A night as most keep it. Judgement. */
export const USUAL_NIGHT: QuietHours = { from: 22 * 60, to: 6 * 60 };

const DAY: Minutes = 24 * 60;

/**
 * Stages whose call may wait for the morning: a levain past its peak can be fed again, a loaf in the
 * fridge and a cool one on its rack lose nothing overnight. Judgement. Dough that rises, whatever is
 * hot, an oven that is on and a timer never wait.
 */
const CAN_WAIT: readonly string[] = ['levain.look', 'proof.look', 'cool.handOver'];

export const canWait = (stage: string): boolean => CAN_WAIT.includes(stage);

/**
 * Minutes from a minute of the day to the end of the quiet hours, over midnight too; null outside them.
 * The first minute is quiet, the last one is not. Hours that end where they begin are none.
 */
export function minutesLeft(minute: MinuteOfDay, { from, to }: QuietHours): Minutes | null {
  const since = (other: MinuteOfDay): Minutes => (other - from + DAY) % DAY;
  const left = since(to) - since(minute);
  return left > 0 ? left : null;
}
