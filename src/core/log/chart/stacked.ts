import type { Instant } from '../../units.ts';
import type { Drawing, DrawingRoom, DrawnPart } from '../drawing.ts';
import type { LogClock } from '../when.ts';
import { scaleOf } from './axis.ts';
import { drawPanel, labelRoom, tickRoom } from './draw-panel.ts';
import { lineHeight } from './labels.ts';
import { MARK_REACH } from './mark-paths.ts';
import { lastOf, type ChartPanel } from './panel.ts';
import { STAGE_TICK, stageTicks, type StageTick } from './stage-ticks.ts';
import { timeAxis } from './time-axis.ts';

/** Panels one under the other on one time. */
export interface Stacked {
  readonly span: readonly [Instant, Instant];
  readonly panels: readonly ChartPanel[];
  /** Without a scale, in a strip of its own; null: there is none. */
  readonly strip: ChartPanel | null;
  readonly stages: readonly StageTick[];
  readonly clock: LogClock;
}

/** Between two panels, mm. */
const APART = 1.5;
/** Lines of text that a panel wants: its title, and two for its scale. */
const WANTS = 3;
/** Room under a line of time for its ticks, mm. */
const TICKS = 1.5;

/** How a height is parted. */
function heights(
  { panels, strip, stages }: Stacked,
  { height, cap, letter }: DrawingRoom,
  most: number,
) {
  const line = lineHeight({ cap, letter });
  const wanted = strip ? Math.max(line, 2 * MARK_REACH + 1) : 0;
  const band = Math.min(wanted, height * 0.2);
  const over = stages.length === 0 ? 0 : Math.min(STAGE_TICK, height * 0.05);
  const left = height - band - over - TICKS;
  const told = left - line >= panels.length * line * 1.5;
  const under = TICKS + (told ? line + 0.6 : 0);
  const fits = (rows: number): boolean =>
    height - band - over - under - rows * line >= panels.length * (WANTS * line + APART);
  const rows = stages.length === 0 ? 0 : ([2, 1].find((n) => n <= most && fits(n)) ?? 0);
  const each = (height - band - over - under - rows * line) / panels.length;
  return { rows, band, told, under, each, head: rows * line + over };
}

/** Lines of text of a panel that is read with ease. Judgement. */
const EASY = 5;

/** How many panels have room enough one under the other; never none. */
export function panelsThatFit({ height, cap, letter }: Omit<DrawingRoom, 'width'>): number {
  const line = lineHeight({ cap, letter });
  // Two rows of steps, a strip of calls, the hours.
  return Math.max(1, Math.floor((height - 4 * line) / (EASY * line)));
}

/** Draws panels, a strip, the stages above and the time below, for any room; nothing runs out of it. */
export function drawStacked(of: Stacked, room: DrawingRoom, most = 2): Drawing {
  const { span, panels, strip, stages, clock } = of;
  const { width, height, cap, letter } = room;
  const { rows, band, told, under, each, head } = heights(of, room, most);
  const tops = panels.map((_, n) => ({
    top: head + n * each,
    bottom: head + (n + 1) * each - (n < panels.length - 1 || strip ? APART : 0),
  }));
  const all = [
    ...panels.map((panel, n) => ({ panel, ...tops[n]! })),
    ...(strip ? [{ panel: strip, top: height - under - band, bottom: height - under }] : []),
  ];
  const whole = { left: 0, right: width, rim: width, cap, letter };
  const widest = Math.max(
    ...all.map(({ panel, top, bottom }) => tickRoom(panel, { ...whole, top, bottom })),
  );
  const left = widest <= width * 0.3 ? widest : 0;
  const share = (at: Instant): number => (at - span[0]) / Math.max(1, span[1] - span[0]);
  // The scale ends where the labels of the last marks have room behind them.
  const right = Math.min(
    width,
    ...all.map(({ panel }) => {
      const last = lastOf(panel);
      if (last === null || share(last) <= 0) return width;
      const room = width - labelRoom(panel, width, { cap, letter }) - left - MARK_REACH;
      return left + 2 * MARK_REACH + Math.max(0, room) / share(last);
    }),
  );
  const x = scaleOf(span, [left + MARK_REACH, right - MARK_REACH]);
  const bottom = height - under;
  const steps = stageTicks(stages, { x, width, rows, bottom, until: span[1], cap, letter });
  // All of their words stand in one row: the panels have the other.
  const inSecond = steps.some(({ kind, at }) => kind === 'text' && at[1] > lineHeight(room));
  if (rows === 2 && !inSecond) return drawStacked(of, room, 1);
  const parts: DrawnPart[] = [
    ...steps,
    ...timeAxis(span, { clock, x, left, right, rim: width, at: bottom, told, cap, letter }),
    ...all.flatMap(({ panel, top, bottom: low }) =>
      drawPanel(panel, { left, right, rim: width, top, bottom: low, x, cap, letter }),
    ),
  ];
  return { width, height, parts };
}
