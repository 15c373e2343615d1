import type { Seeded } from '../core/day/support/seeded.ts';
import { HOSTILE_TEXTS } from './texts.ts';

const BITS: readonly string[] = [
  ...HOSTILE_TEXTS,
  ...['{', '}', '[', ']', ':', ',', '"', '\\', '\\u0000', '\\ud800', 'null', 'true', '1e999', '-0'],
  ...['-', '.', '/', ';', '#', '=', '9'.repeat(600), ' '.repeat(3_000), '['.repeat(50_000)],
  '"__proto__":{"polluted":1},',
  'x'.repeat(1_000_000),
];

/** A text with one to three of its places cut, doubled, turned round or filled with what does not belong. */
export function breakText(text: string, chance: Seeded): string {
  let broken = text;
  for (let n = chance.whole(1, 3); n > 0; n -= 1) {
    const from = chance.whole(0, broken.length);
    const to = Math.min(broken.length, from + chance.of([1, 1, 2, 8, 60]));
    const [before, held, after] = [broken.slice(0, from), broken.slice(from, to), broken.slice(to)];
    const how = chance.whole(0, 7);
    if (how === 0) broken = before;
    else if (how === 1) broken = before + after;
    else if (how === 2) broken = before + held + held + after;
    else if (how === 3) broken = before + [...held].toReversed().join('') + after;
    else if (how === 4) broken = before + held.toUpperCase() + after;
    else if (how === 5) broken = before + String.fromCharCode(chance.whole(0, 0xffff)) + after;
    else broken = before + chance.of(BITS) + (how === 6 ? held : '') + after;
  }
  return broken;
}

/** Nothing that means anything. */
export const noise = (chance: Seeded, most: number): Uint8Array<ArrayBuffer> =>
  Uint8Array.from({ length: chance.whole(0, most) }, () => chance.whole(0, 255));

/** Bytes cut short, or with some of them turned, doubled or filled in; now and then only noise. */
export function breakBytes(
  bytes: Uint8Array<ArrayBuffer>,
  chance: Seeded,
): Uint8Array<ArrayBuffer> {
  if (chance.chance(0.05)) return noise(chance, 400);
  const cut = chance.chance(0.3) ? chance.whole(0, bytes.length) : bytes.length;
  const broken = bytes.slice(0, cut);
  for (let n = chance.whole(broken.length === bytes.length ? 1 : 0, 6); n > 0; n -= 1) {
    if (broken.length === 0) break;
    const at = chance.whole(0, broken.length - 1);
    const how = chance.whole(0, 2);
    if (how === 0) broken[at] = chance.whole(0, 255);
    else if (how === 1) broken[at] = broken[at]! ^ (1 << chance.whole(0, 7));
    else broken.fill(chance.of([0, 0xff]), at, at + chance.whole(1, 12));
  }
  return broken;
}
