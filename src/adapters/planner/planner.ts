import type { Planner } from '../../../machines/ports.ts';
import type { Answer, Question } from './messages.ts';

/** What the adapter asks of a thread; a Worker is one. */
export interface Thread {
  postMessage(question: Question): void;
  onmessage: ((event: MessageEvent<Answer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  terminate(): void;
}

const makeThread = (): Thread =>
  new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });

/**
 * A planner on a thread of its own. The thread is kept while it is idle and ended while it searches: a
 * search asks nobody whether it is still wanted. A thread that fails answers that nothing is decided.
 */
export function makePlanner(
  thread: () => Thread = makeThread,
  failed: (error: Error) => void = (error) => reportError(error),
): Planner {
  let idle: Thread | null = null;
  let stopLast: (() => void) | null = null;
  return {
    lay(input, onPlan) {
      stopLast?.();
      const mine = idle ?? thread();
      idle = null;
      let over = false;
      const end = (keep: boolean): void => {
        over = true;
        stopLast = null;
        mine.onmessage = null;
        mine.onerror = null;
        if (keep) idle = mine;
        else mine.terminate();
      };
      const fail = (message: string): void => {
        end(false);
        failed(new Error(`The planner failed: ${message}`));
        onPlan({ fits: null, bound: 0 }, true);
      };
      mine.onmessage = ({ data }) => {
        if (data.kind === 'failed') return fail(data.message);
        if (data.isLast) end(true);
        onPlan(data.result, data.isLast);
      };
      mine.onerror = ({ message }) => fail(message);
      mine.postMessage({ input });
      const stop = (): void => {
        if (!over) end(false);
      };
      stopLast = stop;
      return stop;
    },
  };
}
