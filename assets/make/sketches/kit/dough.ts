/** Dough, loaves and what is put in them. Raw dough is ochre, a baked crust clay. */
import { CLAY, OCHRE, PAPER, TEAL, cut, line, ring } from './ink.ts';

/** A soft lump on the counter: its foot is round x, y. */
export const lump = (x: number, y: number, rx = 46, high = 40, paint: string = OCHRE): string =>
  cut(
    `M${x - rx} ${y}C${x - rx} ${y - high * 0.66} ${x - rx * 0.62} ${y - high} ${x} ${y - high}` +
      `S${x + rx} ${y - high * 0.66} ${x + rx} ${y}C${x + rx * 0.8} ${y + rx * 0.3} ${x - rx * 0.8} ${y + rx * 0.3} ${x - rx} ${y}z`,
    paint,
  );

/** A sheet of dough spread on the counter, narrower far away; its middle is at x, y. */
export const sheet = (x: number, y: number, w = 190, deep = 84, paint: string = OCHRE): string => {
  const n = w * 0.41;
  const h = w / 2;
  const d = deep / 2;
  return cut(
    `M${x - n} ${y - d + 4}Q${x - n + 3} ${y - d} ${x - n + 12} ${y - d + 1}Q${x} ${y - d - 5} ${x + n - 12} ${y - d}` +
      `Q${x + n - 2} ${y - d} ${x + n} ${y - d + 6}L${x + h} ${y + d - 10}Q${x + h} ${y + d} ${x + h - 12} ${y + d}` +
      `Q${x} ${y + d + 6} ${x - h + 14} ${y + d}Q${x - h} ${y + d} ${x - h} ${y + d - 9}z`,
    paint,
  );
};

/** A round loaf, baked, with its cut open: its foot is round x, y. */
export const loaf = (
  x: number,
  y: number,
  rx = 44,
  paint: string = CLAY,
  gash: string = OCHRE,
): string =>
  lump(x, y, rx, rx * 0.82, paint) +
  cut(
    `M${x - rx * 0.5} ${y - rx * 0.36}C${x - rx * 0.2} ${y - rx * 0.72} ${x + rx * 0.3} ${y - rx * 0.7} ${x + rx * 0.55} ${y - rx * 0.4}` +
      `C${x + rx * 0.2} ${y - rx * 0.46} ${x - rx * 0.2} ${y - rx * 0.44} ${x - rx * 0.5} ${y - rx * 0.36}z`,
    gash,
  );

/** One bit of filling. */
export const bit = (x: number, y: number, kind: 'olive' | 'cheese' | 'nut', size = 6): string => {
  if (kind === 'cheese')
    return cut(
      `M${x - size} ${y - size * 0.7}l${size * 1.9} ${-size * 0.3}v${size * 1.5}l${-size * 1.9} ${size * 0.3}z`,
      PAPER,
    );
  return cut(
    ring(x, y, size, size * (kind === 'olive' ? 0.8 : 0.65)),
    kind === 'olive' ? TEAL : CLAY,
  );
};

/** Bits of filling at these places, the kinds taking turns. */
export const bits = (
  at: readonly (readonly [number, number])[],
  size = 6,
  kinds: readonly ('olive' | 'cheese' | 'nut')[] = ['olive', 'nut', 'cheese'],
): string => at.map(([x, y], no) => bit(x, y, kinds[no % kinds.length] ?? 'nut', size)).join('');

/** A crease in dough. */
export const crease = (d: string): string => line(d, 2.6);
