/** A piece that is laid down whole, s: two or three waves of a voice. Longer ones blur a p or a t. */
const PIECE = 0.02;
/** How far a piece may be taken from where it is due, so that it goes on where the last one ended, s. */
const REACH = 0.01;
/** So many samples a second are compared. */
const COMPARED = 8_000;

/** How well two stretches of sound go on alike, −1…1: every `step`th sample is compared. */
function likeness(sound: Float32Array, a: number, b: number, long: number, step: number): number {
  let sum = 0;
  let one = 1e-4;
  let other = 1e-4;
  for (let i = 0; i < long; i += step) {
    const x = sound[a + i] ?? 0;
    const y = sound[b + i] ?? 0;
    sum += x * y;
    one += x * x;
    other += y * y;
  }
  return sum / Math.sqrt(one * other);
}

/**
 * Speech that takes `by` times as long, its pitch kept: overlapping pieces laid further apart or closer
 * together, each taken where it goes on most like the one before it (waveform similarity, Verhelst and
 * Roelands 1993).
 *
 * @param rate samples a second
 */
export function stretch(sound: Float32Array, rate: number, by: number): Float32Array<ArrayBuffer> {
  if (by === 1) return sound.slice();
  const half = Math.round((PIECE * rate) / 2);
  const reach = Math.round(REACH * rate);
  const step = Math.max(1, Math.round(rate / COMPARED));
  const made = new Float32Array(Math.round(sound.length * by));
  /** Where the sound would go on after the last piece. */
  let goesOn = 0;
  const mostAlike = (first: number, last: number, by: number): number => {
    let found = first;
    let highest = -Infinity;
    for (let at = first; at <= last; at += by) {
      const alike = likeness(sound, goesOn, at, half, step);
      if (alike > highest) [highest, found] = [alike, at];
    }
    return found;
  };
  for (let to = 0; to < made.length; to += half) {
    const due = Math.round(to / by);
    let from = due;
    if (to > 0) {
      const near = mostAlike(Math.max(0, due - reach), due + reach, step);
      from = mostAlike(Math.max(0, near - step), near + step, 1);
    }
    for (let i = 0; i < 2 * half && to + i < made.length; i += 1) {
      const weight = to === 0 && i < half ? 1 : 0.5 - 0.5 * Math.cos((Math.PI * i) / half);
      made[to + i]! += weight * (sound[from + i] ?? 0);
    }
    goesOn = from + half;
  }
  return made;
}
