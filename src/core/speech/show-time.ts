/** Which clock the baker reads. */
export type Clock = '24' | '12';

/** 'HH:MM', 24 hours. */
export const DAY = /^([01]\d|2[0-3]):([0-5]\d)$/;

/**
 * Clock time as it is shown.
 *
 * @param time 'HH:MM', 24 hours
 * @throws Error `A time to show looks like 13:40, not x.`
 * @example showTime('15:05', '12') // '3:05 pm'
 * @example showTime('15:05', '24') // '15:05'
 */
export function showTime(time: string, clock: Clock): string {
  const match = DAY.exec(time);
  if (match === null) throw new Error(`A time to show looks like 13:40, not ${time}.`);
  if (clock === '24') return time;
  const hour = Number(match[1]);
  // The blank does not break: an hour and its half of the day are one thing.
  return `${hour % 12 === 0 ? 12 : hour % 12}:${match[2]}\u00a0${hour < 12 ? 'am' : 'pm'}`;
}

/**
 * Minutes since midnight as a clock time.
 *
 * @example showMinute(1320, '12') // '10:00 pm'
 */
export const showMinute = (minute: number, clock: Clock): string => {
  const two = (n: number): string => String(n).padStart(2, '0');
  return showTime(`${two(Math.floor(minute / 60))}:${two(minute % 60)}`, clock);
};
