import type { CutRead } from '../../records/cut-read.ts';
import type { MarkShape } from '../drawing.ts';
import type { TurnedOut } from '../turned-out.ts';

/** How bakes are told apart on a plot. `other`: something else was the matter; `untold`: nobody said. */
export const PLOT_TURNS = ['good', 'under', 'over', 'other', 'untold'] as const;
export type PlotTurn = (typeof PLOT_TURNS)[number];

/** Each in a shape of its own: no colour is needed. */
export const TURN_SHAPES: Readonly<Record<PlotTurn, MarkShape>> = {
  good: 'dot',
  under: 'triangle',
  over: 'square',
  other: 'cross',
  untold: 'ring',
};

const PLOTTED: Readonly<Record<TurnedOut, PlotTurn>> = {
  good: 'good',
  under: 'under',
  over: 'over',
  dark: 'other',
  pale: 'other',
  done: 'untold',
  early: 'untold',
  open: 'untold',
};

/** A cut loaf that showed a cause without a mark of its own in the list. */
const showsOther = ({ says, causes }: CutRead): boolean =>
  says === 'causes' && causes[0] !== undefined && causes[0].sure !== 'hard';

/**
 * How a bake that the list tells of turned out, in the fewer kinds that a plot keeps apart.
 *
 * @example
 * plotTurn('dark', null) // → 'other'
 * plotTurn('done', null) // → 'untold'
 */
export const plotTurn = (turned: TurnedOut, cut: CutRead | null): PlotTurn =>
  turned === 'done' && cut !== null && showsOther(cut) ? 'other' : PLOTTED[turned];
