/** Reads a small QR code back, written apart from the library that draws them. */

/** Data codewords of versions 1 to 5 at each correction level, where one block holds them all. */
const DATA: Readonly<Record<number, Readonly<Record<string, number>>>> = {
  1: { L: 19, M: 16, Q: 13, H: 9 },
  2: { L: 34, M: 28, Q: 22, H: 16 },
  3: { L: 55, M: 44 },
  4: { L: 80 },
  5: { L: 108 },
};

/** Which modules the mask turns over; row i, column j (ISO/IEC 18004, table 10, from memory). */
const MASKS: readonly ((i: number, j: number) => boolean)[] = [
  (i, j) => (i + j) % 2 === 0,
  (i) => i % 2 === 0,
  (_, j) => j % 3 === 0,
  (i, j) => (i + j) % 3 === 0,
  (i, j) => (Math.floor(i / 2) + Math.floor(j / 3)) % 2 === 0,
  (i, j) => ((i * j) % 2) + ((i * j) % 3) === 0,
  (i, j) => (((i * j) % 2) + ((i * j) % 3)) % 2 === 0,
  (i, j) => (((i + j) % 2) + ((i * j) % 3)) % 2 === 0,
];

/** Block characters to modules, dark true; full blocks are light. The border is cut off. */
function modules(drawn: string): boolean[][] {
  const dark: Record<string, [boolean, boolean]> = {
    '\u2588': [false, false],
    '\u2580': [false, true],
    '\u2584': [true, false],
    ' ': [true, true],
  };
  const rows = drawn.split('\n').flatMap((line) => {
    const pairs = [...line].map((char) => {
      const pair = dark[char];
      if (!pair) throw new Error(`This is not a block of a QR code: ${JSON.stringify(char)}.`);
      return pair;
    });
    return [pairs.map(([upper]) => upper), pairs.map(([, lower]) => lower)];
  });
  const top = rows.findIndex((row) => row.some(Boolean));
  const left = rows[top]?.indexOf(true) ?? 0;
  const size = (rows[top]?.lastIndexOf(true) ?? 0) - left + 1;
  return rows.slice(top, top + size).map((row) => row.slice(left, left + size));
}

/** Finder patterns, timing, format bits and the one alignment pattern hold no data. */
function isFunction(size: number, i: number, j: number): boolean {
  const inCorner = (i < 9 && j < 9) || (i < 9 && j >= size - 8) || (i >= size - 8 && j < 9);
  const inAlignment = size > 21 && Math.abs(i - (size - 7)) <= 2 && Math.abs(j - (size - 7)) <= 2;
  return inCorner || inAlignment || i === 6 || j === 6;
}

/** Data bits in their order: pairs of columns from the right, up and down in turn. */
function bits(grid: boolean[][], mask: number): number[] {
  const size = grid.length;
  const read: number[] = [];
  let up = true;
  for (let right = size - 1; right > 0; right -= 2) {
    if (right === 6) right = 5;
    for (let step = 0; step < size; step += 1) {
      const i = up ? size - 1 - step : step;
      for (const j of [right, right - 1])
        if (!isFunction(size, i, j)) read.push(grid[i]?.[j] !== MASKS[mask]?.(i, j) ? 1 : 0);
    }
    up = !up;
  }
  return read;
}

/**
 * The text of a drawn QR code in byte mode, versions 1 to 5.
 *
 * @throws on a code that this small reader can't read
 */
export function readQr(drawn: string): string {
  const grid = modules(drawn);
  const version = (grid.length - 17) / 4;
  // Format bits lie in row 8, under a fixed mask of their own: two for the level, three for the mask.
  const format = [0, 1, 2, 3, 4].map((j) => (grid[8]?.[j] ? 1 : 0) ^ ([1, 0, 1, 0, 1][j] ?? 0));
  const level = ['M', 'L', 'H', 'Q'][(format[0] ?? 0) * 2 + (format[1] ?? 0)] ?? '';
  const mask = (format[2] ?? 0) * 4 + (format[3] ?? 0) * 2 + (format[4] ?? 0);
  const count = DATA[version]?.[level];
  if (count === undefined) throw new Error(`No reader for version ${version}-${level}.`);
  const stream = bits(grid, mask);
  const take = (from: number, length: number) =>
    stream.slice(from, from + length).reduce((sum, bit) => sum * 2 + bit, 0);
  if (take(0, 4) !== 4) throw new Error('This code is not in byte mode.');
  const length = take(4, 8);
  if (length + 2 > count) throw new Error('This code says it is longer than it can be.');
  return Buffer.from(Array.from({ length }, (_, k) => take(12 + 8 * k, 8))).toString('utf8');
}
