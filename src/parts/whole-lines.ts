/** Where the letters of a line stand from top to bottom, px. */
export interface Band {
  readonly top: number;
  readonly bottom: number;
}

/** Of the height of a line's box, what stands empty over its letters and under them: Overpass, measured. */
const OVER = 0.1;
const UNDER = 0.14;

/** All lines of words in there that stand on no press, or on one as high as `most`: it is never seen whole. */
export const bandsIn = (inner: Element, most = Infinity): readonly Band[] => {
  const words = document.createTreeWalker(inner, NodeFilter.SHOW_TEXT);
  const bands: Band[] = [];
  const range = document.createRange();
  for (let node = words.nextNode(); node !== null; node = words.nextNode()) {
    const press = node.parentElement?.closest('button');
    if (press && press.getBoundingClientRect().height < most) continue;
    // Words for ears alone stand in one pixel, letter under letter: nobody sees them cut.
    if (node.parentElement?.offsetWidth === 1) continue;
    range.selectNodeContents(node);
    // The bar beside words reaches over its first line: without it a stub of the bar would stand there alone.
    const bar = node.parentElement?.closest('.barred')?.getBoundingClientRect().top ?? Infinity;
    for (const { top, bottom, height } of range.getClientRects()) {
      const ink = top + OVER * height;
      const first = bar < bottom && bar > top - height / 2;
      bands.push({ top: first ? Math.min(ink, bar) : ink, bottom: bottom - UNDER * height });
    }
  }
  return bands.filter(({ top, bottom }) => bottom > top);
};

/** So much past the border is no cut, px. */
const SLACK = 1;
const isCut = (one: Band, edge: number): boolean =>
  one.top < edge - SLACK && one.bottom > edge + SLACK;

/**
 * The border moved up over all lines that it would cut, or with `down` under them; those of one column
 * may be cut where the ones of another end.
 *
 * @example
 * clearOf([{ top: 0, bottom: 10 }, { top: 8, bottom: 20 }], 15) // → 0
 */
export function clearOf(bands: readonly Band[], edge: number, down = false): number {
  const cut = bands.filter((one) => isCut(one, edge));
  if (cut.length === 0) return edge;
  const next = down
    ? Math.max(...cut.map(({ bottom }) => bottom))
    : Math.min(...cut.map(({ top }) => top));
  return clearOf(bands, next, down);
}

/** What is read as one: a press, a table's row of several lines, an hour of the tape with its name, a row of presses. */
const WHOLE = 'button, tr, .tape-row, .whole-row';

/**
 * Hides presses and rows that stand in part: each by itself, for they stand in columns. A press as high
 * as the box, and a row that would leave half of it empty, is better seen in part than not at all.
 */
const hideCut = (inner: Element, edges: readonly number[], most = 0): void => {
  for (const one of inner.querySelectorAll(WHOLE)) {
    // A sheet that was opened out of this one has its own border.
    if (one.closest('.sheet') !== inner.closest('.sheet')) continue;
    const box = one.getBoundingClientRect();
    const room = one.matches('button, .whole-row') ? most : most / 2;
    const hides = box.height < room && edges.some((edge) => isCut(box, edge));
    one.toggleAttribute('data-cut', hides);
  }
};

/**
 * Shows only whole lines of words, whole rows and whole presses, where they are longer than their box: half a
 * line is not read, and looks broken. What the border would cut is left for the next press.
 */
export function showWholeLines(box: HTMLElement, inner: HTMLElement, isLong: boolean): void {
  if (!isLong) {
    inner.style.clipPath = '';
    hideCut(inner, []);
    return;
  }
  const { top, bottom, height } = box.getBoundingClientRect();
  const most = height - 2 * SLACK;
  const bands = bandsIn(inner, most);
  // What begins and ends there is whole, however close to the border it stands.
  const isEnd = box.scrollTop + box.clientHeight >= box.scrollHeight - 1;
  const from = box.scrollTop <= 0 ? top : clearOf(bands, top, true);
  const to = isEnd ? bottom : clearOf(bands, bottom);
  const all = inner.getBoundingClientRect();
  // Lines of columns that end nowhere together are better seen in part than not at all. Nothing is cut
  // at the sides.
  const isMost = to - from > height / 2;
  inner.style.clipPath = isMost ? `inset(${from - all.top}px -99px ${all.bottom - to}px)` : '';
  hideCut(inner, isMost ? [from, to] : [top, bottom], most);
}
