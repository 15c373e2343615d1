import type { Belief } from '../../readiness/belief.ts';
import { logPlots } from '../../speech/words/log-plots.ts';
import { fill } from '../../speech/fill.ts';
import { sayHeat, showHeat } from '../../speech/heats.ts';
import { sayNumber, showNumber } from '../../speech/numbers.ts';
import type { Celsius } from '../../units.ts';
import { niceSpan, ticksIn } from '../chart/axis.ts';
import { lineHeight } from '../chart/labels.ts';
import type { Chart, Drawing, DrawingRoom, DrawnPart, Spot } from '../drawing.ts';
import { dateTicks } from './date-ticks.ts';
import { flow } from './flow.ts';
import { frame, gutterOf, type Framed, type Tick } from './frame.ts';
import type { PastBake } from './past-bake.ts';
import { wholly, type ToldIn } from './told-in.ts';

const words = logPlots.vigour;

type Believed = PastBake & { readonly belief: Belief };

/** Share of the height that the starter's panel has; the kitchen's has the rest. */
const STARTER = 0.48;
/** Cap heights that both panels need; in less the kitchen is left to the table. */
const BOTH = 14;
/** What a speed may be marked at: the usual one first. */
const SPEEDS = [1, 0.5, 2, 0.75, 1.5, 0.25, 4, 0.6, 1.25, 0.9, 1.1] as const;
/** No bar is drawn beyond these, of the usual speed: the clock knows no such starter. Judgement. */
const FURTHEST = { least: 0.1, most: 10 } as const;

const held = (speed: number): number => Math.min(FURTHEST.most, Math.max(FURTHEST.least, speed));
const speedOf = ({ mean }: Belief): number => held(Math.exp(mean));
const lowOf = ({ mean, sd }: Belief): number => held(Math.exp(mean - sd));
const highOf = ({ mean, sd }: Belief): number => held(Math.exp(mean + sd));
/** To the nearest twentieth: nobody knows a living thing better. */
const nearly = (speed: number): number => Math.max(0.05, Math.round(speed * 20) / 20);
const shown = (speed: number): string => fill(words.times, { value: showNumber(nearly(speed), 2) });

/** Where the two panels stand, one over the other on the same dates; `below` null: there is room for one. */
interface Panels {
  readonly above: Framed;
  readonly below: Framed | null;
  readonly words: readonly DrawnPart[];
}

function panelsIn(bakes: readonly Believed[], room: DrawingRoom, told: ToldIn): Panels {
  const { width, height, cap } = room;
  const line = lineHeight(room);
  const head = flow(
    [
      { text: words.speed },
      { text: words.taught, shape: 'dot' },
      ...(bakes.some(({ taught }) => !taught)
        ? [{ text: words.carried, shape: 'ring' as const }]
        : []),
    ],
    [0, cap],
    width,
    room,
  );
  const top = head.lines * line;
  const both = height - top >= BOTH * cap;
  const middle = both ? top + (height - top) * STARTER : height;
  const at = bakes.map((bake) => bake.at);
  const x = [Math.min(...at), Math.max(...at)] as const;
  const dates = dateTicks(at, told);
  const all = bakes.flatMap(({ belief }) => [lowOf(belief), highOf(belief)]);
  const speeds = [Math.min(0.8, ...all), Math.max(1.25, ...all)] as const;
  const up = SPEEDS.filter((one) => one >= speeds[0] && one <= speeds[1]).map((one): Tick => ({
    value: Math.log(one),
    label: shown(one),
  }));
  const heats = niceSpan(
    bakes.map(({ kitchen }) => kitchen),
    4,
    2,
  );
  const warm = [...new Set([...heats, ...ticksIn(heats, 5)])].map((value): Tick => ({
    value,
    label: showHeat(value, told.units),
  }));
  const gutter = Math.max(gutterOf(up, room), gutterOf(warm, room));
  const logs = [Math.log(speeds[0]), Math.log(speeds[1])] as const;
  const place = { left: 0, right: width };
  if (!both) {
    const axes = { x, y: logs, along: dates, up, gutter };
    const above = frame({ ...place, top, bottom: height }, axes, room);
    return { above, below: null, words: head.parts };
  }
  const name = flow([{ text: words.kitchen, shape: 'diamond' }], [0, middle + cap], width, room);
  return {
    above: frame(
      { ...place, top, bottom: middle - cap * 0.4 },
      { x, y: logs, along: [], up, gutter },
      room,
    ),
    below: frame(
      { ...place, top: middle + name.lines * line, bottom: height },
      { x, y: heats, along: dates, up: warm, gutter },
      room,
    ),
    words: [...head.parts, ...name.parts],
  };
}

function draw(bakes: readonly Believed[], room: DrawingRoom, told: ToldIn): Drawing {
  const { above, below, words: written } = panelsIn(bakes, room, told);
  const y = (speed: number): number => above.y(Math.log(speed));
  const order = bakes.toReversed();
  const bars = order.map(({ at, belief }): DrawnPart => ({
    kind: 'line',
    weight: 'hair',
    at: [
      [above.x(at), y(lowOf(belief))],
      [above.x(at), y(highOf(belief))],
    ],
  }));
  const marks = order.map(({ at, belief, taught }): DrawnPart => ({
    kind: 'mark',
    shape: taught ? 'dot' : 'ring',
    at: [above.x(at), y(speedOf(belief))],
  }));
  const rooms = below ? order.map(({ at, kitchen }): Spot => [below.x(at), below.y(kitchen)]) : [];
  const { left, right } = above.inner;
  return {
    width: room.width,
    height: room.height,
    parts: [
      ...written,
      ...above.parts,
      ...(below?.parts ?? []),
      {
        kind: 'line',
        weight: 'hair',
        dashed: true,
        at: [
          [left, y(1)],
          [right, y(1)],
        ],
      },
      ...bars,
      ...marks,
      ...(rooms.length > 1 ? [{ kind: 'line', weight: 'plain', at: rooms } as const] : []),
      ...rooms.map((spot): DrawnPart => ({ kind: 'mark', shape: 'diamond', at: spot })),
    ],
  };
}

const kitchenSays = (kitchens: readonly Celsius[], { units }: ToldIn): string => {
  const [least, most] = [wholly(Math.min(...kitchens)), wholly(Math.max(...kitchens))];
  return least === most
    ? fill(words.saysOneKitchen, { celsius: sayHeat(least, units) })
    : fill(words.saysKitchen, { least: sayHeat(least, units), most: sayHeat(most, units) });
};

function says(bakes: readonly Believed[], told: ToldIn): string {
  const last = bakes[0];
  if (last === undefined) return words.none;
  const say = (speed: number): string => sayNumber(nearly(speed), null, 2);
  const speeds = bakes.map(({ belief }) => nearly(speedOf(belief)));
  const [least, most] = [Math.min(...speeds), Math.max(...speeds)];
  return [
    fill(words.says, { value: say(speedOf(last.belief)) }),
    ...(least === most ? [] : [fill(words.saysSpan, { least: say(least), most: say(most) })]),
    kitchenSays(
      bakes.map(({ kitchen }) => kitchen),
      told,
    ),
  ].join(' ');
}

/**
 * What was believed of the starter as each bake ended, likely and one sd either way (two of three), against
 * the date, with the kitchen's temperature under it on the same dates. `bakes` the latest first; one that
 * said nothing of the starter is left out.
 */
export function vigourPlot(
  bakes: readonly PastBake[],
  told: ToldIn,
): Chart & { readonly marks: number } {
  const believed = bakes.filter((bake): bake is Believed => bake.belief !== null);
  return {
    marks: believed.length,
    draw: (room) =>
      believed.length === 0
        ? { width: room.width, height: room.height, parts: [] }
        : draw(believed, room, told),
    says: says(believed, told),
    table: {
      heads: [logPlots.date, logPlots.bread, words.speedHead, words.span, words.kitchenHead],
      rows: believed.map(({ at, name, belief, kitchen }) => [
        told.date(at),
        name,
        shown(speedOf(belief)),
        fill(words.fromTo, { least: shown(lowOf(belief)), most: shown(highOf(belief)) }),
        showHeat(kitchen, told.units),
      ]),
    },
  };
}
