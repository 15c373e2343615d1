import { describe, expect, it } from 'vitest';
import { layInput, type LaidAsk } from '../../src/core/day/laid/lay-ask.ts';
import {
  NOTHING_STANDS,
  type LiveAnswer,
  type LiveAsk,
  type LiveQuestion,
} from '../../src/core/day/laid/live-question.ts';
import type { PlanResult } from '../../src/core/day/plan/types.ts';
import type { Answer, Question } from '../../src/adapters/planner/messages.ts';
import { makePlanner, type Thread } from '../../src/adapters/planner/planner.ts';
import { answer } from '../../src/adapters/planner/answer.ts';
import { askedBake, askWorld, dayAsk, inputOf, laidDay } from '../fakes/laid-day.ts';

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

const [ASK, WORLD] = [dayAsk(), askWorld()];
const INPUT = inputOf(ASK, WORLD);
const LAID = { troubles: [], input: INPUT, isLast: true } as const;
const SOME: PlanResult = { fits: true, cost: 2, atMostFromBest: 1, touches: [], ready: [] };

const answersOf = (question: Question): Answer[] => {
  const told: Answer[] = [];
  answer(question, (one) => told.push(one));
  return told;
};

describe('the planner aside', () => {
  it('tells each plan as it comes, and asks the same thread again once it is idle', () => {
    const { made, make } = makeThreads();
    const planner = makePlanner(make);
    const told: unknown[] = [];
    planner.layAsk(ASK, WORLD, ({ result, isLast }) => told.push([result, isLast]));
    made[0]!.answer({ kind: 'plan', plan: { ...LAID, result: SOME, isLast: false } });
    made[0]!.answer({
      kind: 'plan',
      plan: { ...LAID, result: { ...SOME, cost: 1 }, isLast: true },
    });
    expect(told).toEqual([
      [SOME, false],
      [{ ...SOME, cost: 1 }, true],
    ]);
    planner.layAsk(ASK, WORLD, () => undefined);
    expect(made).toHaveLength(1);
    expect(made[0]!.asked).toEqual(Array(2).fill({ kind: 'ask', ask: ASK, world: WORLD }));
  });

  it('tells nothing more once stopped, and lets the thread go', () => {
    const { made, make } = makeThreads();
    const told: unknown[] = [];
    const stop = makePlanner(make).layAsk(ASK, WORLD, (laid) => told.push(laid));
    stop();
    stop();
    made[0]!.answer({ kind: 'plan', plan: { ...LAID, result: SOME, isLast: true } });
    expect([told, made[0]!.ended]).toEqual([[], true]);
  });

  it('drops a question for the next one', () => {
    const { made, make } = makeThreads();
    const planner = makePlanner(make);
    const told: string[] = [];
    planner.layAsk(ASK, WORLD, () => told.push('first'));
    planner.layAsk(ASK, WORLD, () => told.push('second'));
    expect(made.map(({ ended }) => ended)).toEqual([true, false]);
    made[0]!.answer({ kind: 'plan', plan: { ...LAID, result: SOME, isLast: true } });
    made[1]!.answer({ kind: 'plan', plan: { ...LAID, result: SOME, isLast: true } });
    expect(told).toEqual(['second']);
  });

  it.each(['answer', 'fall'] as const)(
    'says that nothing is decided where it fails (%s)',
    (how) => {
      const { made, make } = makeThreads();
      const failed: string[] = [];
      const planner = makePlanner(make, ({ message }) => failed.push(message));
      const told: unknown[] = [];
      planner.layAsk(ASK, WORLD, ({ result, isLast }) => told.push([result, isLast]));
      if (how === 'answer') made[0]!.answer({ kind: 'failed', message: 'no' });
      else made[0]!.fail('no');
      expect(told).toEqual([[null, true]]);
      expect(failed).toEqual(['The planner failed: no']);
      planner.layAsk(ASK, WORLD, () => undefined);
      expect(made).toHaveLength(2);
    },
  );
});

describe('an ask put to the planner aside', () => {
  it('is told as it comes, and has neither trouble nor result where it fails', () => {
    const { made, make } = makeThreads();
    const planner = makePlanner(make, () => undefined);
    const told: LaidAsk[] = [];
    planner.layAsk(dayAsk(), askWorld(), (laid) => told.push(laid));
    expect(made[0]!.asked).toEqual([{ kind: 'ask', ask: dayAsk(), world: askWorld() }]);
    const laid: LaidAsk = { troubles: [], input: INPUT, result: SOME, isLast: true };
    made[0]!.answer({ kind: 'plan', plan: laid });
    planner.layAsk(dayAsk(), askWorld(), (one) => told.push(one));
    made[0]!.fail('no');
    expect(told).toEqual([laid, { troubles: [], input: null, result: null, isLast: true }]);
  });
});

describe('a question, answered plan by plan', () => {
  const answers = answersOf;
  const last = (one: Answer): boolean => one.kind === 'plan' && one.plan.isLast;
  const two = dayAsk({ bakes: [askedBake({ name: 'a' }), askedBake({ name: 'b' })] });

  it('answers of one bake once', () => {
    expect(answers({ kind: 'ask', ask: ASK, world: WORLD })).toMatchObject([
      { kind: 'plan', plan: { result: { fits: true }, isLast: true } },
    ]);
  });

  it('marks the last answer of several bakes, and no other', () => {
    const all = answers({ kind: 'ask', ask: two, world: WORLD });
    expect(all.length).toBeGreaterThan(1);
    expect(all.map(last)).toEqual(all.map((_, i) => i === all.length - 1));
  });

  it('makes an ask a question aside, and answers with both', () => {
    const all = answers({ kind: 'ask', ask: ASK, world: WORLD });
    const input = INPUT;
    expect(all).toEqual(
      [...layInput(input)].map((laid) => ({
        kind: 'plan',
        plan: { troubles: [], input, ...laid },
      })),
    );
  });

  it('answers an ask that no hour would mend with its troubles, once', () => {
    expect(answers({ kind: 'ask', ask: dayAsk({ bakes: [] }), world: askWorld() })).toEqual([
      {
        kind: 'plan',
        plan: { troubles: [{ key: 'noBakes' }], input: null, result: null, isLast: true },
      },
    ]);
  });

  it('answers with why where it cannot be asked', () => {
    const retarded = { ...ASK, bakes: [askedBake({ due: NaN })] };
    const message = 'An instant must be a number of ms, not NaN.';
    expect(answers({ kind: 'ask', ask: retarded, world: WORLD })).toEqual([
      { kind: 'failed', message },
    ]);
  });
});

describe('a question about a plan that runs, put to the planner aside', () => {
  const question = (asks: LiveAsk): LiveQuestion => ({ plan: laidDay(), world: WORLD, asks });

  it('is answered once, and the thread is kept for the next', () => {
    const { made, make } = makeThreads();
    const planner = makePlanner(make);
    const told: LiveAnswer[] = [];
    const asked = question({ kind: 'anew' });
    planner.layLive(asked, (one) => told.push(one));
    expect(made[0]!.asked).toEqual([{ kind: 'live', question: asked }]);
    const [is] = answersOf({ kind: 'live', question: asked });
    made[0]!.answer(is!);
    planner.layAsk(ASK, WORLD, () => undefined);
    expect(made).toHaveLength(1);
    expect(told).toEqual([{ kind: 'anew', anew: { is: 'undecided', stands: NOTHING_STANDS } }]);
  });

  it.each([
    [{ kind: 'anew' }, { anew: { is: 'undecided' } }],
    [{ kind: 'change', change: { change: 'due', batch: 'a', laterBy: 5 } }, { plan: null }],
    [{ kind: 'trouble', trouble: { trouble: 'overslept' } }, { ways: [] }],
  ] as const)('is decided by nobody where the thread falls: %j', (asks, answer) => {
    const { made, make } = makeThreads();
    const told: LiveAnswer[] = [];
    makePlanner(make, () => undefined).layLive(question(asks), (one) => told.push(one));
    made[0]!.fail('no');
    expect(told).toMatchObject([{ kind: asks.kind, ...answer }]);
  });
});
