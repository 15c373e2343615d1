import type { MarkShape } from '../drawing.ts';

/** The marks of a drawing, in mm about their middle; hollow ones hide what lies under them. */
export const MARK_PATHS: Readonly<
  Record<MarkShape, { readonly d: string; readonly hollow?: true }>
> = {
  dot: { d: 'M-1.3 0a1.3 1.3 0 1 0 2.6 0a1.3 1.3 0 1 0 -2.6 0z' },
  ring: { d: 'M-1.3 0a1.3 1.3 0 1 0 2.6 0a1.3 1.3 0 1 0 -2.6 0z', hollow: true },
  square: { d: 'M-1.2 -1.2h2.4v2.4h-2.4z' },
  triangle: { d: 'M0 -1.6l1.6 2.8h-3.2z', hollow: true },
  cross: { d: 'M-1.3 -1.3l2.6 2.6M1.3 -1.3l-2.6 2.6', hollow: true },
  diamond: { d: 'M0 -1.7l1.7 1.7l-1.7 1.7l-1.7 -1.7z' },
};

/** From its middle no mark reaches further, mm. */
export const MARK_REACH = 2;
