/** Where a line of words or a press stands, from top to bottom, px. */
interface Band {
  readonly top: number;
  readonly bottom: number;
}

const bandsIn = (inner: Element): Band[] => {
  const words = document.createTreeWalker(inner, NodeFilter.SHOW_TEXT);
  const bands: Band[] = [...inner.querySelectorAll('button')].map((el) =>
    el.getBoundingClientRect(),
  );
  const range = document.createRange();
  for (let node = words.nextNode(); node !== null; node = words.nextNode()) {
    range.selectNodeContents(node);
    bands.push(...range.getClientRects());
  }
  return bands.filter(({ top, bottom }) => bottom > top);
};

/** Line boxes stand a little into each other: so much of one past the border is no cut, px. */
const SLACK = 2;

/**
 * Shows only whole lines of words that are longer than their box: half a line is not read, and looks
 * broken. What the border would cut is left for the next press.
 */
export function showWholeLines(box: HTMLElement, inner: HTMLElement, isLong: boolean): void {
  if (!isLong) {
    inner.style.clipPath = '';
    return;
  }
  const { top, bottom } = box.getBoundingClientRect();
  const bands = bandsIn(inner);
  const cut = (edge: number): Band[] =>
    bands.filter((one) => one.top < edge - SLACK && one.bottom > edge + SLACK);
  // At the very top a tight line's box reaches out of the border, and nothing of it is cut.
  const from = box.scrollTop > 0 ? Math.max(top, ...cut(top).map((one) => one.bottom)) : top;
  const to = Math.min(bottom, ...cut(bottom).map((one) => one.top));
  const all = inner.getBoundingClientRect();
  // A press taller than the box is better seen in part than not at all. Nothing is cut at the sides.
  inner.style.clipPath = from < to ? `inset(${from - all.top}px -99px ${all.bottom - to}px)` : '';
}
