import { metaOf } from '../../../machines/kitchen/stage-of.ts';
import { doubts } from '../../core/speech/en/doubts.ts';
import type { Focus } from '../focus.ts';

/** The detail of a wait whose window is in doubt: when to look, and then why it is rough. */
export const doubtful = (detail: string, { machine }: Focus): string => {
  const doubt = 'doubt' in machine.context ? machine.context.doubt : undefined;
  if (!doubt || doubt === 'coldProof' || metaOf(machine).waits === undefined) return detail;
  const [first = ''] = detail.split(/(?<=\.) /);
  return `${first} ${doubts[doubt]}`;
};
