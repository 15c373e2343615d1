/**
 * The paper, the inks and the scissors: what every sketch is cut with. Shapes are SVG strings; a shape
 * later in a row lies on those before it. One picture is 240 by 180; the counter's far edge is at FAR.
 */
export const PAPER = 'var(--paper,#fbf6ef)';
export const LINE = 'var(--line,#2b1730)';
/** Fills only inside an outline: alone on paper it is too pale to be made out. */
export const OCHRE = 'var(--ochre,#d9952b)';
export const TEAL = 'var(--teal,#1f6f6b)';
export const CLAY = 'var(--clay,#c4583a)';

export const WIDE = 240;
export const HIGH = 180;
/** Where the counter ends, as the baker sees it. */
export const FAR = 64;
/** A circle that lies on the counter is so much wider than it is deep. */
export const FLAT = 2.6;
/** The outline. The root group holds it, so no shape need say it. */
export const STROKE = 3.2;

const short = (d: string): string =>
  d
    .replace(/-?\d+\.\d+/g, (n) => String(Number(Number(n).toFixed(1))))
    .replace(/\s+/g, ' ')
    .trim();

/** A shape with an outline. */
export const cut = (d: string, fill: string = PAPER): string =>
  `<path d="${short(d)}" fill="${fill}"/>`;

/** A line of ink, or of another paint, of its own width. */
export const line = (d: string, width = STROKE, ink: string = LINE): string =>
  `<path d="${short(d)}" fill="none"` +
  (ink === LINE ? '' : ` stroke="${ink}"`) +
  (width === STROKE ? '' : ` stroke-width="${width}"`) +
  '/>';

/** A spot of paint with no outline: for what lies inside a shape that has one. */
export const spot = (d: string, fill: string): string =>
  `<path d="${short(d)}" fill="${fill}" stroke="none"/>`;

/** The path of an ellipse round x, y. */
export const ring = (x: number, y: number, rx: number, ry: number = rx / FLAT): string =>
  `M${x - rx} ${y}a${rx} ${ry} 0 1 0 ${rx * 2} 0a${rx} ${ry} 0 1 0 ${-rx * 2} 0z`;

/** An ellipse with an outline; a circle on the counter if no second radius is told. */
export const oval = (x: number, y: number, rx: number, ry?: number, fill: string = PAPER): string =>
  cut(ring(x, y, rx, ry), fill);

/** A dot of ink or paint. */
export const dot = (x: number, y: number, r: number, fill: string = LINE): string =>
  spot(ring(x, y, r, r), fill);

export interface Place {
  readonly x: number;
  readonly y: number;
  /** Degrees, as the clock's hands turn. */
  readonly turn?: number;
  readonly scale?: number;
  /** Left and right change places. */
  readonly mirror?: boolean;
}

/** Shapes moved so that their 0, 0 comes to x, y; the outline keeps its width. */
export function place(
  shapes: string,
  { x, y, turn = 0, scale = 1, mirror = false }: Place,
): string {
  const steps = [`translate(${short(`${x}.0 ${y}.0`.replace(/(\.\d+)\.0/g, '$1'))})`];
  if (turn !== 0) steps.push(`rotate(${turn})`);
  if (mirror || scale !== 1) steps.push(mirror ? `scale(${-scale} ${scale})` : `scale(${scale})`);
  const stroke = scale === 1 ? '' : ` stroke-width="${Number((STROKE / scale).toFixed(2))}"`;
  return `<g transform="${steps.join(' ')}"${stroke}>${shapes}</g>`;
}

/** The far edge of the counter. */
export const bench = (): string => line(`M0 ${FAR}H${WIDE}`);

/** A whole picture as its file is written. */
export const scene = (...shapes: readonly string[]): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDE} ${HIGH}">` +
  `<g id="sketch" stroke="${LINE}" stroke-width="${STROKE}" stroke-linejoin="round" stroke-linecap="round">` +
  `${shapes.join('\n')}</g></svg>\n`;
