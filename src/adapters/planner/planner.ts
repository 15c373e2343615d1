import type { Planner, Stop } from '../../../machines/ports.ts';
import type { LaidAsk } from '../../core/day/laid/lay-ask.ts';
import { unanswered } from '../../core/day/laid/live-question.ts';
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

  /** `undecided` is heard where the thread fails. */
  const put = (question: Question, hear: (answer: Answer) => unknown, undecided: Answer): Stop => {
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
      hear(undecided);
    };
    mine.onmessage = ({ data }) => {
      if (data.kind === 'failed') return fail(data.message);
      if (data.kind === 'live' || data.plan.isLast) end(true);
      hear(data);
    };
    mine.onerror = ({ message }) => fail(message);
    mine.postMessage(question);
    return (stopLast = () => {
      if (!over) end(false);
    });
  };

  return {
    layAsk: (ask, world, onLaid) =>
      put({ kind: 'ask', ask, world }, (told) => told.kind === 'plan' && onLaid(told.plan), {
        kind: 'plan',
        plan: FAILED,
      }),
    layLive: (question, onAnswer) =>
      put({ kind: 'live', question }, (told) => told.kind === 'live' && onAnswer(told.answer), {
        kind: 'live',
        answer: unanswered(question),
      }),
  };
}
