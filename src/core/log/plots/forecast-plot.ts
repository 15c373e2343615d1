import { logPlots } from '../../speech/words/log-plots.ts';
import { fill } from '../../speech/fill.ts';
import { sayLength, showLength } from '../../speech/lengths.ts';
import { sayNumber } from '../../speech/numbers.ts';
import { MINUTE, type Minutes } from '../../units.ts';
import { niceStep, ticksIn } from '../chart/axis.ts';
import { lineHeight } from '../chart/labels.ts';
import type { Chart, Drawing, DrawingRoom, DrawnPart, MarkShape } from '../drawing.ts';
import type { ForecastError } from '../forecast-error.ts';
import { dateTicks } from './date-ticks.ts';
import { flow, type FlowWord } from './flow.ts';
import { forecastTrust, isHeld, trustSays } from './forecast-trust.ts';
import { frame, type Tick } from './frame.ts';
import type { PastBake } from './past-bake.ts';
import type { ToldIn } from './told-in.ts';

const words = logPlots.forecast;

type Foretold = PastBake & { readonly forecast: ForecastError };

/** The least that is shown either way of the told hour, minutes, and how far beyond the marks a window is drawn. */
const LEAST: Minutes = 60;
const BEYOND = 1.15;

const SHAPES = { held: 'dot', missed: 'triangle', over: 'square' } as const satisfies Readonly<
  Record<string, MarkShape>
>;

/** One whose window nobody told is out of none: it counts as missed only where there was one. */
const shapeOf = ({ forecast }: Foretold): keyof typeof SHAPES =>
  forecast.over ? 'over' : isHeld(forecast) === false ? 'missed' : 'held';

const lateOf = (minutes: Minutes): string => {
  const text = minutes < 0 ? words.early : words.late;
  return Math.round(minutes) === 0
    ? words.likely
    : fill(text, { length: showLength(Math.abs(minutes)) });
};

/** Ticks by parts of an hour, the told hour first. */
function lateTicks([from, to]: readonly [Minutes, Minutes], most: number): readonly Tick[] {
  const hours = ticksIn([from / 60, to / 60], most).map((value) => Math.round(value * 60));
  return [0, ...hours.filter((value) => value !== 0)].map((value) => ({
    value,
    label: lateOf(value),
  }));
}

function spanOf(bakes: readonly Foretold[]): readonly [Minutes, Minutes] {
  const lates = bakes.map(({ forecast }) => forecast.late);
  const low = Math.min(-LEAST, ...lates) * BEYOND;
  const high = Math.max(LEAST, ...lates) * BEYOND;
  const step = niceStep((high - low) / 60, 6) * 60;
  return [Math.floor(low / step) * step, Math.ceil(high / step) * step];
}

function draw(bakes: readonly Foretold[], room: DrawingRoom, told: ToldIn): Drawing {
  const { width, height, cap } = room;
  const key = (['held', 'missed', 'over'] as const).flatMap((one): FlowWord[] => {
    const count = bakes.filter((bake) => shapeOf(bake) === one).length;
    return count === 0 ? [] : [{ text: `${words[one]} ${count}`, shape: SHAPES[one] }];
  });
  const head = flow(key, [0, cap], width, room);
  const at = bakes.map((bake) => bake.at);
  const y = spanOf(bakes);
  const framed = frame(
    { left: 0, right: width, top: head.lines * lineHeight(room), bottom: height },
    {
      x: [Math.min(...at), Math.max(...at)],
      y,
      along: dateTicks(at, told),
      up: lateTicks(y, 7),
    },
    room,
  );
  const order = bakes.toReversed();
  const within = (minutes: Minutes): number => framed.y(Math.min(y[1], Math.max(y[0], minutes)));
  return {
    width,
    height,
    parts: [
      ...head.parts,
      ...framed.parts,
      {
        kind: 'line',
        weight: 'hair',
        dashed: true,
        at: [
          [framed.inner.left, framed.y(0)],
          [framed.inner.right, framed.y(0)],
        ],
      },
      ...order.flatMap(({ at: when, forecast: { window, likely } }): DrawnPart[] =>
        window === null
          ? []
          : [
              {
                kind: 'line',
                weight: 'plain',
                at: [
                  [framed.x(when), within((window.earliest - likely) / MINUTE)],
                  [framed.x(when), within((window.latest - likely) / MINUTE)],
                ],
              },
            ],
      ),
      ...order.map((bake): DrawnPart => ({
        kind: 'mark',
        shape: SHAPES[shapeOf(bake)],
        at: [framed.x(bake.at), framed.y(bake.forecast.late)],
      })),
    ],
  };
}

const heldCell = (forecast: ForecastError): string => {
  const held = isHeld(forecast);
  if (forecast.over) return words.overCell;
  return held === null ? logPlots.unknown : held ? words.yes : words.no;
};

const windowCell = ({ window, likely }: ForecastError): string =>
  window === null
    ? logPlots.unknown
    : [window.earliest, window.latest].map((at) => lateOf((at - likely) / MINUTE)).join(' – ');

/**
 * By how much the first forecast of each bake missed, against the date, with the window it was told in: so
 * that a baker sees whether it deserves trust. `shown` is drawn and in the table, `all` is what the sentences
 * go by; both the latest first.
 */
export function forecastPlot(
  shown: readonly PastBake[],
  all: readonly PastBake[],
  told: ToldIn,
): Chart & { readonly marks: number; readonly plain: readonly string[] } {
  const isForetold = (bake: PastBake): bake is Foretold => bake.forecast !== null;
  const bakes = shown.filter(isForetold);
  const trust = forecastTrust(all.filter(isForetold).map(({ forecast }) => forecast));
  return {
    marks: bakes.length,
    draw: (room) =>
      bakes.length === 0
        ? { width: room.width, height: room.height, parts: [] }
        : draw(bakes, room, told),
    plain: trustSays(trust, { count: String, length: showLength }),
    says: trustSays(trust, {
      count: (n) => sayNumber(n, null),
      length: (minutes) => sayLength(minutes),
    }).join(' '),
    table: {
      heads: [
        logPlots.date,
        logPlots.bread,
        words.heads.miss,
        words.heads.window,
        words.heads.held,
      ],
      rows: bakes.map(({ at, name, forecast }) => [
        told.date(at),
        name,
        lateOf(forecast.late),
        windowCell(forecast),
        heldCell(forecast),
      ]),
    },
  };
}
