import type { Instant } from '../../units.ts';
import type { DrawnPart } from '../drawing.ts';
import type { Scale } from './axis.ts';
import { lineHeight, textWidth, thin, type Letters } from './labels.ts';

/** A stage as it begins: told where its part does. */
export interface StageTick {
  readonly at: Instant;
  /** The part that begins with it; null: one of the same part went before. */
  readonly part: string | null;
}

/** Under the words there is so much room for the ticks, mm. */
export const STAGE_TICK = 1.5;

/** From a line to the word that stands at it, mm. */
const BESIDE = 0.8;

/**
 * Where stages begin, on one time with all panels: a line for each part, a tick for each stage. The words of
 * the parts stand in so many rows above; the part that lasts longest has the first say.
 */
export function stageTicks(
  stages: readonly StageTick[],
  {
    x,
    width,
    rows,
    bottom,
    until,
    ...letters
  }: Letters & {
    readonly x: Scale;
    /** Of the drawing. */
    readonly width: number;
    readonly rows: number;
    /** Of the lowest panel. */
    readonly bottom: number;
    readonly until: Instant;
  },
): DrawnPart[] {
  const line = lineHeight(letters);
  const head = rows * line;
  const parts = stages.filter(({ part }) => part !== null);
  const lasts = (n: number): number => (parts[n + 1]?.at ?? until) - parts[n]!.at;
  let left = parts.map((_, n) => n).toSorted((a, b) => lasts(b) - lasts(a));
  const texts: DrawnPart[] = [];
  const rowOf = new Map<number, number>();
  for (let row = 0; row < rows; row += 1) {
    const labels = left.map((n) => {
      const size = textWidth(parts[n]!.part!, letters);
      return { at: x(parts[n]!.at) + BESIDE + size / 2, width: size };
    });
    const kept = thin(labels, [0, width]).map((k) => left[k]!);
    for (const n of kept) {
      rowOf.set(n, row);
      texts.push({
        kind: 'text',
        at: [x(parts[n]!.at) + BESIDE, row * line + letters.cap * 1.2],
        text: parts[n]!.part!,
        anchor: 'start',
        onGround: true,
      });
    }
    left = left.filter((n) => !kept.includes(n));
  }
  const lines = parts.map(({ at }, n): DrawnPart => {
    const from = rowOf.get(n);
    return {
      kind: 'line',
      at: [
        [x(at), from === undefined ? head : from * line],
        [x(at), bottom],
      ],
      weight: 'hair',
    };
  });
  const ticks = stages
    .filter(({ part }) => part === null)
    .map(({ at }): DrawnPart => ({
      kind: 'line',
      at: [
        [x(at), head],
        [x(at), Math.min(bottom, head + STAGE_TICK)],
      ],
      weight: 'plain',
    }));
  return [...lines, ...ticks, ...texts];
}
