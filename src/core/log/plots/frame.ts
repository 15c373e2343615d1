import { scaleOf, type Scale } from '../chart/axis.ts';
import { textWidth, thin, type Letters } from '../chart/labels.ts';
import type { DrawnPart } from '../drawing.ts';

/** A value of an axis with what is written at it. */
export interface Tick {
  readonly value: number;
  readonly label: string;
}

/** mm; top smaller than bottom. */
export interface Place {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** mm: from an axis to its labels; what a mark needs within the frame. */
const APART = 1;
const MARGIN = 2.2;

export interface Framed {
  /** All of the frame, and where values may stand in it. */
  readonly panel: Place;
  readonly inner: Place;
  readonly x: Scale;
  readonly y: Scale;
  readonly parts: readonly DrawnPart[];
}

export interface Axes {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  /** Those that matter most first: where labels have no room, the first stay. */
  readonly along: readonly Tick[];
  readonly up: readonly Tick[];
  /** Room for labels on the left, mm, where several frames are to stand alike; left out: its own need. */
  readonly gutter?: number;
  /** Of the frame's own lines; hair where left out. */
  readonly weight?: 'hair' | 'plain';
}

/** What a line of labels takes under a frame. */
export const footOf = ({ cap }: Letters): number => cap * 1.35 + APART;

/** What the labels of an upright axis take of the width. */
export const gutterOf = (up: readonly Tick[], letters: Letters): number =>
  Math.max(0, ...up.map(({ label }) => textWidth(label, letters))) + APART * 2;

/**
 * A frame with its hairlines and labels in a place: none over another, none out of it. Labels along stand
 * under it, their line is part of the place (`along` empty: none is kept free).
 */
export function frame(place: Place, axes: Axes, letters: Letters): Framed {
  const { cap } = letters;
  const foot = axes.along.length === 0 ? 0 : footOf(letters);
  const panel = {
    left: place.left + (axes.gutter ?? gutterOf(axes.up, letters)),
    right: place.right,
    top: place.top,
    bottom: place.bottom - foot,
  };
  // High enough that the label of a frame's topmost tick is no higher than the frame.
  const margin = Math.max(MARGIN, cap * 0.75);
  const inner = {
    left: panel.left + MARGIN,
    right: panel.right - MARGIN,
    top: panel.top + margin,
    bottom: panel.bottom - margin,
  };
  const x = scaleOf(axes.x, [inner.left, inner.right]);
  const y = scaleOf(axes.y, [inner.bottom, inner.top]);
  const ups = thin(
    axes.up.map(({ value }) => ({ at: y(value), width: cap * 1.4 })),
    [panel.top, panel.bottom],
    cap * 0.5,
  ).map((n) => axes.up[n]!);
  // A label at a corner is moved inward, its tick is not.
  const alongAt = axes.along.map(({ value, label }) => {
    const width = textWidth(label, letters);
    const at = Math.min(place.right - width / 2, Math.max(place.left + width / 2, x(value)));
    return { at, width, value, label };
  });
  const alongs = thin(alongAt, [place.left - 1e-9, place.right + 1e-9]).map((n) => alongAt[n]!);
  return {
    panel,
    inner,
    x,
    y,
    parts: [
      {
        kind: 'line',
        weight: axes.weight ?? 'hair',
        at: [
          [panel.left, panel.top],
          [panel.left, panel.bottom],
          [panel.right, panel.bottom],
        ],
      },
      ...ups.flatMap(({ value, label }): DrawnPart[] => [
        {
          kind: 'line',
          weight: 'hair',
          at: [
            [panel.left - APART, y(value)],
            [panel.left, y(value)],
          ],
        },
        {
          kind: 'text',
          at: [panel.left - APART * 1.6, y(value) + cap / 2],
          text: label,
          anchor: 'end',
        },
      ]),
      ...alongs.flatMap(({ at, value, label }): DrawnPart[] => [
        {
          kind: 'line',
          weight: 'hair',
          at: [
            [x(value), panel.bottom],
            [x(value), panel.bottom + APART],
          ],
        },
        {
          kind: 'text',
          at: [at, place.bottom - cap * 0.35],
          text: label,
          anchor: 'middle',
        },
      ]),
    ],
  };
}
