import { describe, expect, it } from 'vitest';
import type { PlanResult } from '../../src/core/day/plan/types.ts';
import type { Answer, Question } from '../../src/adapters/planner/messages.ts';
import { makePlanner, type Thread } from '../../src/adapters/planner/planner.ts';
import { tellEach } from '../../src/adapters/planner/tell-each.ts';
import { askedBake, askWorld, dayAsk, inputOf } from '../fakes/laid-day.ts';

interface FakeThread extends Thread {
  readonly asked: Question[];
  ended: boolean;
  answer(answer: Answer): void;
  fail(message: string): void;
}

function makeThreads(): { readonly made: FakeThread[]; make(): Thread } {
  const made: FakeThread[] = [];
  return {
    made,
    make() {
      const thread: FakeThread = {
        asked: [],
        ended: false,
        onmessage: null,
        onerror: null,
        postMessage: (question) => void thread.asked.push(question),
        terminate: () => void (thread.ended = true),
        answer: (data) => thread.onmessage?.({ data } as MessageEvent<Answer>),
        fail: (message) => thread.onerror?.({ message } as ErrorEvent),
      };
      made.push(thread);
      return thread;
    },
  };
}

const INPUT = inputOf(dayAsk(), askWorld());
const SOME: PlanResult = { fits: true, cost: 2, atMostFromBest: 1, touches: [], ready: [] };

describe('the planner aside', () => {
  it('tells each plan as it comes, and asks the same thread again once it is idle', () => {
    const { made, make } = makeThreads();
    const planner = makePlanner(make);
    const told: unknown[] = [];
    planner.lay(INPUT, (result, isLast) => told.push([result, isLast]));
    made[0]!.answer({ kind: 'plan', result: SOME, isLast: false });
    made[0]!.answer({ kind: 'plan', result: { ...SOME, cost: 1 }, isLast: true });
    expect(told).toEqual([
      [SOME, false],
      [{ ...SOME, cost: 1 }, true],
    ]);
    planner.lay(INPUT, () => undefined);
    expect(made).toHaveLength(1);
    expect(made[0]!.asked).toEqual([{ input: INPUT }, { input: INPUT }]);
  });

  it('tells nothing more once stopped, and lets the thread go', () => {
    const { made, make } = makeThreads();
    const told: unknown[] = [];
    const stop = makePlanner(make).lay(INPUT, (result) => told.push(result));
    stop();
    stop();
    made[0]!.answer({ kind: 'plan', result: SOME, isLast: true });
    expect([told, made[0]!.ended]).toEqual([[], true]);
  });

  it('drops a question for the next one', () => {
    const { made, make } = makeThreads();
    const planner = makePlanner(make);
    const told: string[] = [];
    planner.lay(INPUT, () => told.push('first'));
    planner.lay(INPUT, () => told.push('second'));
    expect(made.map(({ ended }) => ended)).toEqual([true, false]);
    made[0]!.answer({ kind: 'plan', result: SOME, isLast: true });
    made[1]!.answer({ kind: 'plan', result: SOME, isLast: true });
    expect(told).toEqual(['second']);
  });

  it.each(['answer', 'fall'] as const)(
    'says that nothing is decided where it fails (%s)',
    (how) => {
      const { made, make } = makeThreads();
      const failed: string[] = [];
      const planner = makePlanner(make, ({ message }) => failed.push(message));
      const told: unknown[] = [];
      planner.lay(INPUT, (result, isLast) => told.push([result, isLast]));
      if (how === 'answer') made[0]!.answer({ kind: 'failed', message: 'no' });
      else made[0]!.fail('no');
      expect(told).toEqual([[{ fits: null, bound: 0 }, true]]);
      expect(failed).toEqual(['The planner failed: no']);
      planner.lay(INPUT, () => undefined);
      expect(made).toHaveLength(2);
    },
  );
});

describe('a question, answered plan by plan', () => {
  const answers = (input = INPUT): Answer[] => {
    const told: Answer[] = [];
    tellEach(input, (answer) => told.push(answer));
    return told;
  };

  it('answers of one bake once', () => {
    expect(answers()).toMatchObject([{ kind: 'plan', result: { fits: true }, isLast: true }]);
  });

  it('marks the last answer of several bakes, and no other', () => {
    const bakes = [askedBake({ name: 'a' }), askedBake({ name: 'b' })];
    const all = answers(inputOf(dayAsk({ bakes }), askWorld()));
    expect(all.length).toBeGreaterThan(1);
    const marks = all.map((one) => one.kind === 'plan' && one.isLast);
    expect(marks).toEqual(all.map((_, i) => i === all.length - 1));
  });

  it('answers with why where it cannot be asked', () => {
    const [batch] = INPUT.batches;
    const twice = { ...INPUT, batches: [batch!, batch!] };
    expect(answers(twice)).toEqual([
      { kind: 'failed', message: 'Two batches have the same name.' },
    ]);
  });
});
