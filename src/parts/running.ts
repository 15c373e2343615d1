/** How a running time is written: hours and minutes, minutes and seconds, or past with a plus. */

const two = (n: number): string => String(n).padStart(2, '0');

const lengthText = (seconds: number): string => {
  const minutes = Math.floor(seconds / 60);
  if (minutes >= 6000) return `${Math.round(minutes / 1440)} days`;
  return seconds >= 3600
    ? `${Math.floor(minutes / 60)} h ${two(minutes % 60)}`
    : `${minutes}:${two(seconds % 60)}`;
};

/**
 * The time left of `left` milliseconds: "1 h 12", "12:05" under an hour, "30 days" past a hundred hours, "+0:20" when past. Begun
 * seconds count as whole ones, so that zero stands exactly at the deadline.
 * @example runningText(725_000) // '12:05'
 */
export function runningText(left: number): string {
  if (left > 0) return lengthText(Math.ceil(left / 1000));
  const past = Math.floor(-left / 1000);
  return past === 0 ? '0:00' : `+${lengthText(past)}`;
}

/** The same length for a `datetime` attribute: "PT1H12M". Shorter than a second is "PT0S". */
export function durationAttribute(left: number): string {
  const seconds = Math.ceil(Math.abs(left) / 1000);
  return `PT${Math.floor(seconds / 3600)}H${Math.floor((seconds % 3600) / 60)}M${seconds % 60}S`;
}
