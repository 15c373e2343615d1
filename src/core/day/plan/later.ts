import { MINUTE, type Minutes } from '../../units.ts';
import { boardOf } from './board.ts';
import { minutesOf } from './grid.ts';
import { layersOf } from './layers.ts';
import { forward, type Effort } from './shortest.ts';
import type { PlanInput } from './types.ts';

/** Later than so much is another day's bread. */
const LATEST: Minutes = 1440;

/** The question with one batch due later. */
export const dueLater = (input: PlanInput, index: number, by: Minutes): PlanInput => ({
  ...input,
  batches: input.batches.map((batch, i) =>
    i === index && batch.due !== null ? { ...batch, due: batch.due + by * MINUTE } : batch,
  ),
});

/** Minutes by which a batch, the others left aside, could be due later, the least first, `most` at most. */
export function reachableLater(
  input: PlanInput,
  index: number,
  effort: Effort,
  most: Minutes = LATEST,
): Minutes[] {
  const board = boardOf(dueLater(input, index, most));
  const chain = board.chains[index]!;
  const [last] = chain.ready;
  const first = last - most / minutesOf(1);
  const open = board.chains.with(index, { ...chain, ready: [first + 1, last] });
  const layers = layersOf({ ...board, chains: open }, index, { forbid: null, room: board.room });
  if (layers === null) return [];
  const reached = forward(layers, effort).at(-1)!;
  return Array.from(reached.keys())
    .filter((i) => reached[i]! < Infinity)
    .map((i) => minutesOf(layers.ends[0] + i - first));
}
