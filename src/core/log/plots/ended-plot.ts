import { logPlots } from '../../speech/words/log-plots.ts';
import { fill } from '../../speech/fill.ts';
import { sayNumber, showNumber } from '../../speech/numbers.ts';
import { niceSpan, ticksIn } from '../chart/axis.ts';
import { lineHeight } from '../chart/labels.ts';
import type { Chart, Drawing, DrawingRoom, DrawnPart, Spot } from '../drawing.ts';
import { besideMarks } from './beside-marks.ts';
import { flow } from './flow.ts';
import { frame, type Tick } from './frame.ts';
import type { PastBake } from './past-bake.ts';
import { sideBySide } from './side-by-side.ts';
import type { ToldIn } from './told-in.ts';
import { PLOT_TURNS, TURN_SHAPES } from './plot-turn.ts';

const words = logPlots.ended;

/** From so much doubt on, % points, a rise is too old to be one at the end. Judgement. */
const TOO_OLD = 30;

/** A bake that has a place on the plot. */
type Placed = PastBake & {
  readonly rise: NonNullable<PastBake['rise']>;
  readonly coldHours: number;
};

const isPlaced = (bake: PastBake): bake is Placed =>
  bake.rise !== null && bake.rise.doubt <= TOO_OLD && bake.coldHours !== null;

const hours = (of: number): string => `${showNumber(of)} h`;

const ticks = (span: readonly [number, number], most: number): readonly Tick[] =>
  ticksIn(span, most).map((value) => ({ value, label: showNumber(value) }));

function draw(placed: readonly Placed[], room: DrawingRoom, { date }: ToldIn): Drawing {
  const { width, height, cap } = room;
  const line = lineHeight(room);
  const key = flow(
    [
      { text: words.axes },
      ...PLOT_TURNS.flatMap((turn) => {
        const count = placed.filter(({ turned }) => turned === turn).length;
        const text = `${logPlots.turns[turn]} ${count}`;
        return count === 0 ? [] : [{ text, shape: TURN_SHAPES[turn] }];
      }),
    ],
    [0, cap],
    width,
    room,
  );
  const place = { left: 0, right: width, top: key.lines * line, bottom: height };
  const x = niceSpan([0, ...placed.map(({ coldHours }) => coldHours)], 8, 1);
  const y = niceSpan(
    placed.length === 0 ? [0, 100] : placed.map(({ rise }) => rise.percent),
    4,
    40,
  );
  const framed = frame(
    place,
    {
      x: [0, x[1]],
      y,
      along: ticks([0, x[1]], 9).map(({ value, label }) => ({ value, label: `${label} h` })),
      up: ticks(y, 5).map(({ value, label }) => ({ value, label: `${label} %` })),
    },
    room,
  );
  const spotOf = ({ coldHours, rise }: Placed): Spot => [
    framed.x(coldHours),
    framed.y(rise.percent),
  ];
  const spots = sideBySide(placed.map(spotOf), framed.inner);
  // The latest lies on top.
  const marks = placed
    .map((bake, n): DrawnPart => ({ kind: 'mark', shape: TURN_SHAPES[bake.turned], at: spots[n]! }))
    .toReversed();
  const names = placed.map((bake, n) => ({ at: spots[n]!, text: date(bake.at) }));
  return {
    width,
    height,
    parts: [
      ...key.parts,
      ...framed.parts,
      ...marks,
      ...besideMarks(names, spots, framed.panel, room),
    ],
  };
}

function says(placed: readonly Placed[]): string {
  if (placed.length === 0) return words.none;
  const good = placed.flatMap(({ turned, rise }) => (turned === 'good' ? [rise.percent] : []));
  const percent = (of: number): string => sayNumber(Math.max(0, Math.round(of)), 'percent');
  const [least, most] = [Math.min(...good), Math.max(...good)];
  const told =
    good.length === 0
      ? []
      : least === most
        ? [fill(words.saysOneGood, { percent: percent(least) })]
        : [fill(words.saysGood, { least: percent(least), most: percent(most) })];
  const count = sayNumber(placed.length, null);
  return [words.says, fill(words.saysMarks, { count }), ...told].join(' ');
}

/**
 * Each bake a mark for how it turned out, over its rise at the end of bulk and its hours of cold: where the
 * good ones lie. `bakes` the latest first; those with no rise near the end or no known cold are left out.
 */
export function endedPlot(
  bakes: readonly PastBake[],
  told: ToldIn,
): Chart & { readonly left: number } {
  const placed = bakes.filter(isPlaced);
  return {
    draw: (room) => draw(placed, room, told),
    left: bakes.length - placed.length,
    says: says(placed),
    table: {
      heads: [logPlots.date, logPlots.bread, words.rise, words.cold, logPlots.turned],
      rows: placed.map(({ at, name, rise, coldHours, turned }) => {
        const percent = `${showNumber(rise.percent)} %`;
        return [
          told.date(at),
          name,
          rise.atLeast ? fill(words.atLeast, { percent }) : percent,
          hours(coldHours),
          logPlots.turns[turned],
        ];
      }),
    },
  };
}
