import { For, Show, type JSX } from 'solid-js';
import './SheetGrid.css';

export interface SheetGridProps {
  /** How many cells each row holds. */
  readonly rows: readonly number[];
  /** What stands in each cell, row by row: one line a filling, in the order of the key. */
  readonly cells: readonly (readonly string[])[];
  /** On the bare edge: "3 cm bare". Left out where the drawing is too small for words on it. */
  readonly edge?: string | undefined;
  /** The whole drawing in words. */
  readonly alt: string;
}

/** The sheet is drawn 3 wide and 2 deep; the units are the drawing's own. */
const WIDTH = 600;
const DEPTH = 400;
const EDGE = 36;
/** A letter is about this much of its size wide, a line this much deep. */
const LETTER = 0.56;
const LINE = 1.08;
/** Nothing is drawn larger than this: one cell alone need not shout. In a small drawing it may. */
const LARGEST = { whole: 54, small: 80 };

interface Cell {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly depth: number;
}

/** Every cell has the same area: a fuller row is deeper. */
const cellsOf = (rows: readonly number[]): readonly Cell[] => {
  const all = rows.reduce((sum, count) => sum + count, 0);
  const inner = DEPTH - 2 * EDGE;
  let y = EDGE;
  return rows.flatMap((count) => {
    const depth = (inner * count) / all;
    const width = (WIDTH - 2 * EDGE) / count;
    const top = y;
    y += depth;
    return Array.from({ length: count }, (_, i) => ({ x: EDGE + i * width, y: top, width, depth }));
  });
};

/** The marks of the fillings, told apart by shape: drawn in a square of 1. */
const MARKS = [
  'M.1.5a.4.4 0 1 0 .8 0a.4.4 0 1 0-.8 0',
  'M.5.1L.95.9H.05Z',
  'M.12.12H.88V.88H.12Z',
  'M.5 0L1 .5 .5 1 0 .5Z',
];

export const markOf = (i: number): string => MARKS[i % MARKS.length]!;

/** The sheet of dough as a grid to scatter over, its edge left bare. */
export function SheetGrid(props: SheetGridProps): JSX.Element {
  const cells = () => cellsOf(props.rows);
  const lines = (): number => Math.max(1, ...props.cells.map((cell) => cell.length));
  const longest = (): number => Math.max(1, ...props.cells.flat().map((text) => text.length));
  /** One size for all, so that the narrowest cell holds its longest line and its mark. */
  const size = (): number =>
    Math.min(
      props.edge === undefined ? LARGEST.small : LARGEST.whole,
      ...cells().map(({ width, depth }) =>
        Math.min((width - 8) / (longest() * LETTER + 1), (depth - 2) / (lines() * LINE)),
      ),
    );
  const lineAt = (cell: Cell, i: number) => ({
    x: cell.x + (cell.width - (longest() * LETTER + 0.9) * size()) / 2,
    y: cell.y + cell.depth / 2 + (i - (lines() - 1) / 2) * size() * LINE,
  });
  return (
    <svg
      class="sheet-cells"
      viewBox={`0 0 ${WIDTH} ${DEPTH}`}
      role="img"
      aria-label={props.alt}
      data-size={size().toFixed(1)}
    >
      <defs>
        <pattern id="bare" width="9" height="9" patternUnits="userSpaceOnUse">
          <path d="M-2 11L11-2" stroke="currentColor" stroke-width="1" opacity="0.6" />
        </pattern>
      </defs>
      <path
        d={`M1 1H${WIDTH - 1}V${DEPTH - 1}H1ZM${EDGE} ${EDGE}V${DEPTH - EDGE}H${WIDTH - EDGE}V${EDGE}Z`}
        fill="url(#bare)"
        fill-rule="evenodd"
        stroke="currentColor"
        stroke-width="2"
      />
      <Show when={props.edge}>
        <rect class="sheet-label" x="196" y="2" width="208" height={EDGE - 3} />
        <text
          x={WIDTH / 2}
          y={EDGE / 2}
          font-size="25"
          text-anchor="middle"
          dominant-baseline="central"
        >
          {props.edge}
        </text>
      </Show>
      <For each={cells()}>
        {(cell, n) => (
          <>
            <rect
              x={cell.x}
              y={cell.y}
              width={cell.width}
              height={cell.depth}
              fill="none"
              stroke="currentColor"
              stroke-width="1.5"
            />
            <For each={props.cells[n()] ?? []}>
              {(text, i) => (
                <>
                  <path
                    d={markOf(i())}
                    transform={`translate(${lineAt(cell, i()).x} ${
                      lineAt(cell, i()).y - size() * 0.33
                    }) scale(${size() * 0.66})`}
                    fill="currentColor"
                  />
                  <text
                    x={lineAt(cell, i()).x + size() * 0.9}
                    y={lineAt(cell, i()).y}
                    font-size={String(size())}
                    dominant-baseline="central"
                  >
                    {text}
                  </text>
                </>
              )}
            </For>
          </>
        )}
      </For>
    </svg>
  );
}
