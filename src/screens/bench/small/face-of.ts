import { isGated } from '../../../core/small/guard.ts';
import type { Ways } from '../../house.ts';
import type { BenchView } from '../view.ts';

/** Whether a gate stands before it, child or no child. */
export const hasGate = (view: BenchView | null): boolean => isGated(view?.hazard ?? 'none');

/** Stages whose act is to answer: a grown-up reads the signs. */
const ANSWERED: readonly string[] = [
  'read.plan',
  'read.list',
  'levain.look',
  'bulk.look',
  'proof.look',
  'proof.poke',
  'cool.note',
  'poke',
  'before',
  'judge',
];

/** Whether its act is to answer what is asked. */
export const isAnswered = ({ stage, task }: Pick<BenchView, 'stage' | 'task'>): boolean =>
  task === null && ANSWERED.includes(stage);

/**
 * Whether the filling goes on: line by line as it is weighed, and yet with a child's picture, sentence and
 * sheet to scatter over.
 */
export const isScattered = ({ stage, task }: Pick<BenchView, 'stage' | 'task'>): boolean =>
  task === null && stage === 'bulk.scatter';

/**
 * Whose face a step has: the baker's alone; the child's own; or the baker's with the child's task
 * `beside` it, where something is asked, read, weighed or hot.
 */
export type Face = 'baker' | 'own' | 'beside';

export function faceOf(small: Ways['small'], view: BenchView): Face {
  if (small === 'off') return 'baker';
  const { slab, tiles, progress, hazard, third } = view;
  const asks =
    slab.deed === null ||
    (progress !== null && !isScattered(view)) ||
    third === 'clock' ||
    isAnswered(view) ||
    tiles.some(({ deed }) => deed.kind !== 'press' || deed.act !== 'taskDone');
  return asks || isGated(hazard) ? 'beside' : 'own';
}
