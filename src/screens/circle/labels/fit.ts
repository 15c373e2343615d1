import type { LabelPaper } from '../../../core/circle/circle.ts';

/** Millimetres on paper throughout. */
type Mm = number;

/** How a label stands on its paper. */
export interface Fit {
  readonly paper: LabelPaper;
  readonly columns: number;
  readonly rows: number;
  /** Of one label, its padding within. */
  readonly width: Mm;
  readonly height: Mm;
  /** Size of its letters, 1 em. */
  readonly em: Mm;
}

/** How high a label of a width and a size of letters comes out. */
export type Measure = (width: Mm, em: Mm) => Mm;

/** Inside the 12 mm margins that parts/PrintedPage.css leaves: of A4 and of Letter. */
const PAGE = { a4: { width: 186, height: 273 }, letter: { width: 191.9, height: 255.4 } } as const;
/** Between labels of a sheet, so that a knife passes. Judgement. */
const GAP = { across: 4, down: 3 } as const;
/** Our own grids, the most labels first. */
const GRIDS = [
  [2, 4],
  [2, 3],
  [2, 2],
  [1, 2],
  [1, 1],
] as const;

/** A roll of 62 mm; its printable width, and how far one label may go. Labels.css has a page for each. */
const ROLL_WIDTH = 56;
export const ROLL_LENGTHS = [60, 80, 100, 140, 200, 300] as const;
export const ROLL_RIM = 6;
/** Up to here letters are made smaller rather than the label longer. Judgement. */
const ROLL_USUAL = 100;

/**
 * Letters by the height of a small x: from easy to read down to 1.2 mm, the least that EU 1169/2011
 * Art. 13(2) has (from memory). Overpass has an x of 0.51 em (measured); reckoned with 0.5.
 */
export const X_HEIGHTS = [1.7, 1.5, 1.35, 1.2] as const;
const emFor = (x: Mm): Mm => x / 0.5;

const tenth = (mm: Mm): Mm => Math.floor(mm * 10) / 10;

function grids(paper: 'a4' | 'letter'): readonly Fit[] {
  const { width, height } = PAGE[paper];
  return GRIDS.flatMap(([columns, rows]) =>
    X_HEIGHTS.map((x) => ({
      ...{ paper, columns, rows },
      width: tenth((width - (columns - 1) * GAP.across) / columns),
      // A last millimetre is left over, or a printer begins another page.
      height: tenth((height - 1 - (rows - 1) * GAP.down) / rows),
      em: emFor(x),
    })),
  );
}

function lengths(): readonly Fit[] {
  const fit = (x: Mm, length: Mm): Fit => ({
    ...{ paper: 'roll', columns: 1, rows: 1 },
    ...{ width: ROLL_WIDTH, height: length - ROLL_RIM, em: emFor(x) },
  });
  const usual = ROLL_LENGTHS.filter((length) => length <= ROLL_USUAL);
  const long = ROLL_LENGTHS.filter((length) => length > ROLL_USUAL);
  return [
    ...X_HEIGHTS.flatMap((x) => usual.map((length) => fit(x, length))),
    ...long.map((length) => fit(X_HEIGHTS.at(-1)!, length)),
  ];
}

/**
 * How a label fits its paper: with letters as large as may be, so many to a sheet; smaller letters before
 * fewer labels, and none under the least. Null: not even one fills a sheet, or the longest of a roll.
 *
 * @example
 * fitLabel('a4', (width, em) => (em * em * 300) / width)?.rows // → 4
 */
export function fitLabel(paper: LabelPaper, measure: Measure): Fit | null {
  const ways = paper === 'roll' ? lengths() : grids(paper);
  const known = new Map<string, Mm>();
  const heightOf = ({ width, em }: Fit): Mm => {
    const key = `${width} ${em}`;
    const height = known.get(key) ?? measure(width, em);
    known.set(key, height);
    return height;
  };
  return ways.find((fit) => heightOf(fit) <= fit.height) ?? null;
}

/** One page of paper: labels that stand on it in the same way. */
export interface LabelPage<T> {
  readonly fit: Fit;
  readonly labels: readonly T[];
}

const sameWay = (a: Fit, b: Fit): boolean =>
  a.paper === b.paper && a.columns === b.columns && a.rows === b.rows && a.height === b.height;

/**
 * Labels on pages, in their order as far as it goes: each page full of those that stand on it in the same
 * way, whatever the size of their letters.
 */
export function labelPages<T extends { readonly fit: Fit }>(
  labels: readonly T[],
): readonly LabelPage<T>[] {
  const pages: { fit: Fit; labels: T[] }[] = [];
  for (const label of labels) {
    const open = pages.find(
      (page) =>
        sameWay(page.fit, label.fit) && page.labels.length < page.fit.columns * page.fit.rows,
    );
    if (open) open.labels.push(label);
    else pages.push({ fit: label.fit, labels: [label] });
  }
  return pages;
}
