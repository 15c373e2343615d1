/** Corners of one outline on a grid of 24 by 24, filled by the even-odd rule. */
export type Outline = readonly (readonly [number, number])[];

/** A drawn mark: its outer shape, then the notches cut into it, as many as its number. */
export interface MarkShape {
  /** For ears: "arch, 1 notch". */
  readonly name: 'arch' | 'tent' | 'cross' | 'waist' | 'arrow' | 'fork';
  readonly outlines: readonly Outline[];
}

const box = (x: number, y: number, width: number, height: number): Outline => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

/** `n` notches of width `w`, `w` apart, around x = `middle`. */
const notches = (n: number, w: number, middle: number, y: number, height: number): Outline[] =>
  Array.from({ length: n }, (_, i) => box(middle - (n - 0.5) * w + 2 * w * i, y, w, height));

/**
 * Six shapes of straight lines, none like a call's ring, square or diamond. They are told apart by
 * their outline alone, so without colour and from 2 m; the notches count them for who stands near.
 */
const SHAPES: readonly MarkShape[] = [
  {
    name: 'arch',
    outlines: [
      [
        [1, 24],
        [1, 9],
        [7, 2],
        [17, 2],
        [23, 9],
        [23, 24],
      ],
      ...notches(1, 4, 12, 15, 9),
    ],
  },
  {
    name: 'tent',
    outlines: [
      [
        [12, 0],
        [24, 24],
        [0, 24],
      ],
      ...notches(2, 3.4, 12, 17, 7),
    ],
  },
  {
    name: 'cross',
    outlines: [
      [
        [8, 0],
        [16, 0],
        [16, 8],
        [24, 8],
        [24, 16],
        [16, 16],
        [16, 24],
        [8, 24],
        [8, 16],
        [0, 16],
        [0, 8],
        [8, 8],
      ],
      ...notches(3, 2.6, 12, 10, 4),
    ],
  },
  {
    name: 'waist',
    outlines: [
      [
        [0, 0],
        [24, 0],
        [15, 12],
        [24, 24],
        [0, 24],
        [9, 12],
      ],
      ...notches(4, 1.9, 12, 19, 5),
    ],
  },
  {
    name: 'arrow',
    outlines: [
      [
        [0, 6],
        [12, 6],
        [12, 0],
        [24, 12],
        [12, 24],
        [12, 18],
        [0, 18],
      ],
      ...notches(5, 1.6, 9, 10, 4),
    ],
  },
  {
    name: 'fork',
    outlines: [
      [
        [0, 0],
        [7, 0],
        [7, 15],
        [17, 15],
        [17, 0],
        [24, 0],
        [24, 24],
        [0, 24],
      ],
      ...notches(6, 1.5, 12, 19, 5),
    ],
  },
];

/** How many marks differ; a seventh bake at once takes the first shape again. */
export const MARKS = SHAPES.length;

/** The shape of a mark, from 1. */
export const markShape = (mark: number): MarkShape => SHAPES[(mark - 1) % MARKS]!;

/** All outlines as one path. */
export const pathOf = ({ outlines }: MarkShape): string =>
  outlines.map((points) => `M${points.map(([x, y]) => `${x} ${y}`).join('L')}Z`).join('');
