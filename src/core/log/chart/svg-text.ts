import type { Drawing, DrawingRoom, DrawnPart, Spot } from '../drawing.ts';
import { MARK_PATHS } from './mark-paths.ts';

/** A text of anybody's where HTML is written: no sign of it is one of the page's own. */
export const escaped = (text: string): string =>
  text
    // Signs that no page may hold, and those that turn the writing of what follows.
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');

const mm = (value: number): string => String(Number(value.toFixed(2)));
const points = (spots: readonly Spot[]): string =>
  spots.map(([x, y]) => `${mm(x)},${mm(y)}`).join(' ');

const partText = (part: DrawnPart, hatch: string): string => {
  switch (part.kind) {
    case 'line':
      return `<polyline class="${part.weight}${part.dashed ? ' dashed' : ''}" points="${points(part.at)}"/>`;
    case 'area':
      return `<polygon class="hair" fill="url(#${hatch})" points="${points(part.at)}"/>`;
    case 'mark': {
      const { d, hollow } = MARK_PATHS[part.shape];
      const [x, y] = part.at;
      return `<path class="mark${hollow ? ' hollow' : ''}" transform="translate(${mm(x)} ${mm(y)})" d="${d}"/>`;
    }
    case 'text': {
      const [x, y] = part.at;
      const ground = part.onGround ? ' class="on-ground"' : '';
      return `<text${ground} x="${mm(x)}" y="${mm(y)}" text-anchor="${part.anchor}">${escaped(part.text)}</text>`;
    }
  }
};

/**
 * A drawing as the SVG of a page that stands by itself; its strokes are the page's style (`SVG_STYLE`).
 *
 * @param alt for ears
 * @param id no other drawing of the page has
 */
export const svgText = (
  { width, height, parts }: Drawing,
  { size, alt, id }: { readonly size: number; readonly alt: string; readonly id: string },
): string =>
  [
    `<svg role="img" aria-label="${escaped(alt)}" viewBox="0 0 ${mm(width)} ${mm(height)}" font-size="${mm(size)}">`,
    `<defs><pattern id="${id}" width="1.6" height="1.6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hair" d="M0 0V1.6"/></pattern></defs>`,
    ...parts.map((part) => partText(part, id)),
    '</svg>',
  ].join('\n');

/** A usual page's letters: capitals of 0.72 em, and the widest of usual digits. */
const CAP = 0.72;
const LETTER = 0.66;

/** A place for a drawing on a page whose letters are so large, mm. */
export const roomOnPage = (width: number, height: number, size: number): DrawingRoom => ({
  width,
  height,
  cap: size * CAP,
  letter: size * LETTER,
});

/** How a drawing looks on such a page: two inks of the page's own, `--ink` and `--ground`. */
export const SVG_STYLE = `svg{display:block;width:100%;height:auto}
svg text{fill:var(--ink)}
svg .on-ground{stroke:var(--ground);stroke-width:.8;paint-order:stroke}
svg polyline{fill:none;stroke-linejoin:round}
svg .hair{stroke:var(--ink-2);stroke-width:.2}
svg .plain{stroke:var(--ink);stroke-width:.45}
svg .bold{stroke:var(--ink);stroke-width:.8}
svg .dashed{stroke-dasharray:1.6 1.2}
svg .mark{fill:var(--ink);stroke:var(--ink);stroke-width:.5}
svg .hollow{fill:var(--ground)}`;
