import type { DrawnPart, Spot } from '../drawing.ts';
import { niceSpan, scaleOf, ticksIn, type Scale } from './axis.ts';
import { cutTo, lineHeight, stack, textWidth, type Letters } from './labels.ts';
import { MARK_REACH } from './mark-paths.ts';
import { lastOf, valuesIn, type ChartPanel, type ChartSeries } from './panel.ts';

/** Where a panel lies, mm, and where its instants stand. */
export interface PanelPlace extends Letters {
  readonly left: number;
  readonly right: number;
  /** The drawing's own right: labels end there. */
  readonly rim: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: Scale;
}

/** From the last mark to its label, mm. */
const BESIDE = MARK_REACH + 1.5;

/** The labels of a panel, the most telling first: the lines, then what is wanted, then the band. */
const labelled = ({ series, level, band }: ChartPanel): { text: string; value: number }[] => [
  ...series.flatMap(({ label, points }) =>
    points.length > 0 ? [{ text: label, value: points.at(-1)!.value }] : [],
  ),
  ...(level ? [{ text: level.label, value: level.value }] : []),
  ...(band ? [{ text: band.label, value: band.points.at(-1)!.high }] : []),
];

/** No label takes more of a drawing's width. */
const MOST = 0.35;

/** What a panel's labels want right of its last mark, mm. */
export function labelRoom(panel: ChartPanel, width: number, letters: Letters): number {
  const widths = labelled(panel).map(({ text }) =>
    textWidth(cutTo(text, MOST * width, letters), letters),
  );
  return widths.length === 0 ? 0 : BESIDE + Math.max(...widths);
}

/** The pieces a panel's scale is rounded out to. */
const PIECES = 10;

/** The scale of a panel's values, with room for half a mark at its rims; and its labels, if they have room. */
function upward(
  panel: ChartPanel,
  { top, bottom, cap, letter }: PanelPlace,
): { y: Scale; ticks: readonly number[]; frame: readonly [number, number]; titled: boolean } {
  const line = lineHeight({ cap, letter });
  const height = bottom - top;
  const titled = panel.title !== '' && height >= 3 * line;
  const pad = Math.min(Math.max(MARK_REACH, cap * 0.9), height * 0.3);
  const first = top + (titled ? line : 0);
  const frame = [first + pad, bottom - pad] as const;
  const most = (frame[1] - frame[0]) / line + 1;
  // Close about its values: whole steps of a low panel would press them flat.
  const span = niceSpan(valuesIn(panel), PIECES, panel.least);
  const y = scaleOf(span, [frame[1], frame[0]]);
  const isTold = panel.title !== '' && frame[1] - frame[0] >= line;
  return { y, ticks: isTold ? ticksIn(span, most) : [], frame: [first, bottom], titled };
}

/** As few decimals as tell ticks apart. */
const told = (value: number): string => String(Number(value.toPrecision(6))).replace('-', '−');

/** What a panel's numbers want left of it, mm. */
export function tickRoom(panel: ChartPanel, place: Omit<PanelPlace, 'x'>): number {
  const { ticks } = upward(panel, { ...place, x: () => 0 });
  const widths = ticks.map((tick) => textWidth(told(tick), place));
  return widths.length === 0 ? 0 : Math.max(...widths) + 1.5;
}

const lineOf = (
  { points, line }: ChartSeries,
  { x, y, until }: { x: Scale; y: Scale; until: number | null },
): DrawnPart[] => {
  const true_ = points.filter(({ odd }) => !odd);
  const spots = true_.map(({ at, value }): Spot => [x(at), y(value)]);
  if (line === null) return [];
  const steps = spots.flatMap((spot, n): Spot[] => {
    const next = spots[n + 1];
    const end = next?.[0] ?? (until === null ? spot[0] : x(until));
    return [spot, [end, spot[1]]];
  });
  const at = line === 'steps' ? steps : spots;
  return at.length < 2
    ? []
    : [{ kind: 'line', at, weight: 'plain', ...(line === 'dashed' ? { dashed: true } : {}) }];
};

const bandOf = ({ band }: ChartPanel, x: Scale, y: Scale): DrawnPart[] => {
  if (!band) return [];
  const ends = band.points.map((_, n) => x(band.points[n + 1]?.at ?? band.until));
  const edge = (of: 'low' | 'high'): Spot[] =>
    band.points.flatMap((point, n): Spot[] => [
      [x(point.at), y(point[of])],
      [ends[n]!, y(point[of])],
    ]);
  return [{ kind: 'area', at: [...edge('high'), ...edge('low').toReversed()] }];
};

/** Direct labels right of the last mark, each with a hair to what it names. */
function labelsOf(
  panel: ChartPanel,
  place: PanelPlace,
  y: Scale,
  [top, bottom]: readonly [number, number],
): DrawnPart[] {
  const last = lastOf(panel);
  if (last === null) return [];
  const start = place.x(last) + BESIDE;
  const all = labelled(panel);
  const lines = stack(
    all.map(({ value }) => y(value)),
    [top, bottom],
    place,
  );
  return all.flatMap(({ text, value }, n): DrawnPart[] => {
    const at = lines[n] ?? null;
    const short = cutTo(text, place.rim - start, place);
    if (at === null || short === '') return [];
    const series = panel.series[n];
    const from = series?.points.at(-1)?.at ?? last;
    const middle = at - place.cap / 2;
    const isLevel = Math.abs(middle - y(value)) < place.cap / 2 && from === last;
    const hair: DrawnPart = {
      kind: 'line',
      at: [
        [place.x(from) + MARK_REACH * 0.8, y(value)],
        [start - 0.5, middle],
      ],
      weight: 'hair',
    };
    return [
      ...(isLevel ? [] : [hair]),
      { kind: 'text', at: [start, at], text: short, anchor: 'start', onGround: true },
    ];
  });
}

/** The parts of one panel, later ones over earlier ones. */
export function drawPanel(panel: ChartPanel, place: PanelPlace): DrawnPart[] {
  const { left, right, top, x, cap } = place;
  const { y, ticks, frame, titled } = upward(panel, place);
  const { series, level, band, title } = panel;
  const across = (at: number): readonly [Spot, Spot] => [
    [left, at],
    [right, at],
  ];
  const told_ = ticks.filter((tick) => textWidth(told(tick), place) + 1.5 <= left + 1e-9);
  return [
    ...bandOf(panel, x, y),
    ...ticks.map((tick): DrawnPart => ({ kind: 'line', at: across(y(tick)), weight: 'hair' })),
    ...(level
      ? [{ kind: 'line', at: across(y(level.value)), weight: 'plain', dashed: true } as const]
      : []),
    ...series.flatMap((one) => lineOf(one, { x, y, until: band?.until ?? null })),
    ...told_.map((tick): DrawnPart => ({
      kind: 'text',
      at: [left - 1.5, y(tick) + cap / 2],
      text: told(tick),
      anchor: 'end',
    })),
    ...(titled
      ? [
          {
            kind: 'text',
            at: [left, top + cap * 1.2],
            text: cutTo(title, place.rim - left, place),
            anchor: 'start',
            onGround: true,
          } as const,
        ]
      : []),
    ...labelsOf(panel, place, y, frame),
    ...series.flatMap(({ shape, points }) =>
      points.map(({ at, value, odd }): DrawnPart => ({
        kind: 'mark',
        shape: odd ? 'cross' : shape,
        at: [x(at), y(value)],
      })),
    ),
  ];
}
