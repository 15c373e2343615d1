import type { Planner, Stop } from '../../../machines/ports.ts';
import type { LaidAsk, LaidPlan } from '../../core/day/laid/lay-ask.ts';
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

const UNDECIDED: LaidPlan = { result: { fits: null, bound: 0 }, isLast: true };
const FAILED: LaidAsk = { troubles: [], input: null, result: null, isLast: true };

/**
 * A planner on a thread of its own. The thread is kept while it is idle and ended while it searches: a
 * search asks nobody whether it is still wanted. A thread that fails answers that nothing is decided.
 */
export function makePlanner(
  thread: () => Thread = makeThread,
  failed: (error: Error) => void = (error) => reportError(error),
): Planner {
  let idle: Thread | null = null;
  let stopLast: Stop | null = null;

  /** `undecided` is told where the thread fails. */
  const put = <T extends LaidPlan | LaidAsk>(
    question: Question,
    undecided: T,
    tell: (plan: T) => void,
  ): Stop => {
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
      tell(undecided);
    };
    mine.onmessage = ({ data }) => {
      if (data.kind === 'failed') return fail(data.message);
      if (data.plan.isLast) end(true);
      tell(data.plan as T);
    };
    mine.onerror = ({ message }) => fail(message);
    mine.postMessage(question);
    return (stopLast = () => {
      if (!over) end(false);
    });
  };

  return {
    lay: (input, onPlan, why) =>
      put(
        { kind: 'input', input, ...(why === false ? { why } : {}) },
        UNDECIDED,
        ({ result, isLast }) => onPlan(result, isLast),
      ),
    layAsk: (ask, world, onLaid) => put({ kind: 'ask', ask, world }, FAILED, onLaid),
  };
}
