import { escaped, SVG_STYLE } from './chart/svg-text.ts';
import type { ChartTable } from './drawing.ts';

/** One part of a page file. */
export interface FilePart {
  readonly title: string;
  readonly lines?: readonly string[];
  readonly table?: ChartTable;
  /** SVG as `svgText` writes it. */
  readonly svg?: string;
}

export interface FilePhoto {
  readonly alt: string;
  readonly jpeg: Uint8Array;
}

/** What a page file of one bake holds. Everything in it is plain text, but for the drawing. */
export interface BakeFile {
  readonly title: string;
  readonly lines: readonly string[];
  readonly parts: readonly FilePart[];
  readonly photos: readonly FilePhoto[];
  readonly foot: string;
}

/** No script, no network, nothing out of it: what is not named here no browser fetches or runs. */
const POLICY =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

/** Light and dark as the reader's device has it; paper is light. Both at 7:1 and more. */
const STYLE = `:root{color-scheme:light dark;--ground:#fff;--ink:#172033;--ink-2:#3c4558}
@media screen and (prefers-color-scheme:dark){:root{--ground:#10151f;--ink:#f3f0e6;--ink-2:#b9c0cf}}
*{box-sizing:border-box}
body{margin:0 auto;padding:1.5rem;max-width:52rem;background:var(--ground);color:var(--ink);font:1.06rem/1.4 system-ui,sans-serif}
h1{margin:0 0 .5rem;font-size:1.9rem;line-height:1.15;overflow-wrap:anywhere}
h2{margin:2rem 0 .5rem;font-size:1.3rem}
p{margin:.3rem 0;overflow-wrap:anywhere}
.wide{overflow-x:auto}
table{width:100%;border-collapse:collapse;font-variant-numeric:tabular-nums}
th,td{padding:.25rem .8rem .25rem 0;border-top:1px solid var(--ink-2);text-align:start;vertical-align:top;overflow-wrap:anywhere}
thead th{border-top:0}
tbody th{font-weight:600}
img{display:block;max-width:100%;height:auto;margin:.8rem 0}
footer{margin-top:2rem;color:var(--ink-2)}
${SVG_STYLE}
@page{size:A4;margin:14mm}
@media print{body{padding:0;max-width:none;font-size:10pt}h2{break-after:avoid}tr,svg,img{break-inside:avoid}.wide{overflow:visible}}`;

/** Its own text by itself: signs that turn the writing do not reach out of it. */
const own = (text: string): string => `<bdi>${escaped(text)}</bdi>`;

const tableText = ({ heads, rows }: ChartTable, title: string): string =>
  [
    `<div class="wide" tabindex="0" role="region" aria-label="${escaped(title)}"><table>`,
    `<thead><tr>${heads.map((head) => `<th scope="col">${own(head)}</th>`).join('')}</tr></thead>`,
    '<tbody>',
    ...rows.map(
      ([first = '', ...rest]) =>
        `<tr><th scope="row">${own(first)}</th>${rest.map((cell) => `<td>${own(cell)}</td>`).join('')}</tr>`,
    ),
    '</tbody></table></div>',
  ].join('\n');

const linesText = (lines: readonly string[]): string[] =>
  lines.map((line) => `<p>${own(line)}</p>`);

const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/**
 * Bytes as Base64 (RFC 4648, section 4).
 *
 * @example
 * base64(new Uint8Array([77, 97])) // → 'TWE='
 */
export function base64(bytes: Uint8Array): string {
  const out: string[] = [];
  for (let i = 0; i < bytes.length; i += 3) {
    const [a, b = 0, c = 0] = [bytes[i]!, bytes[i + 1], bytes[i + 2]];
    const all = (a << 16) | (b << 8) | c;
    const signs = [18, 12, 6, 0].map((shift) => DIGITS[(all >> shift) & 63]!);
    const left = bytes.length - i;
    out.push(
      left >= 3
        ? signs.join('')
        : signs
            .slice(0, left + 1)
            .join('')
            .padEnd(4, '='),
    );
  }
  return out.join('');
}

/**
 * One bake as a page that stands by itself: opens anywhere, runs nothing, asks no network, prints on A4. No
 * text of it, whatever it is, becomes anything but text.
 */
export function bakeFileText({ title, lines, parts, photos, foot }: BakeFile): string {
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${POLICY}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="referrer" content="no-referrer">',
    `<title>${escaped(title)}</title>`,
    `<style>${STYLE}</style>`,
    '</head>',
    '<body>',
    '<main>',
    `<h1>${own(title)}</h1>`,
    ...linesText(lines),
    ...photos.map(
      ({ alt, jpeg }) => `<img alt="${escaped(alt)}" src="data:image/jpeg;base64,${base64(jpeg)}">`,
    ),
    ...parts.flatMap((part) => [
      `<section><h2>${own(part.title)}</h2>`,
      ...linesText(part.lines ?? []),
      ...(part.svg === undefined ? [] : [part.svg]),
      ...(part.table === undefined ? [] : [tableText(part.table, part.title)]),
      '</section>',
    ]),
    '</main>',
    `<footer><p>${own(foot)}</p></footer>`,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}
