import { describe, expect, it } from 'vitest';
import { plan } from '../../../../src/core/day/plan.ts';
import type { Batch, PlanInput, PlanResult, Step } from '../../../../src/core/day/plan/types.ts';
import { MONDAY, wait } from '../support/instances.ts';

const MINUTE = 60_000;
const at = (minutes: number): number => MONDAY + minutes * MINUTE;
const rigid = (minutes: number) => wait(minutes, minutes, minutes, minutes, 0);

const step = (name: string, hands: number, more: Partial<Step> = {}): Step => ({
  name,
  hands,
  wait: wait(30, 60, 60, 120, 4, 2),
  ...more,
});
const batch = (steps: Step[], more: Partial<Batch> = {}): Batch => ({
  name: 'bread',
  steps,
  due: at(600),
  ...more,
});
const ask = (batches: Batch[], more: Partial<PlanInput> = {}): PlanInput => ({
  planFrom: MONDAY,
  blocked: [],
  ratherNot: [],
  kitchen: { fridgePlaces: 4, bowls: 2, pots: 1, temperatureC: 24 },
  batches,
  ...more,
});
const planned = (input: PlanInput): Extract<PlanResult, { fits: true }> => {
  const result = plan(input);
  if (!result.fits) throw new Error('No plan.');
  return result;
};
/** Minutes from Monday's midnight of each touch. */
const times = (input: PlanInput): Record<string, number> =>
  Object.fromEntries(planned(input).touches.map((one) => [one.name, (one.at - MONDAY) / MINUTE]));

describe('costs', () => {
  it('a wait half-way to its limit costs 0.3125 of its weight, all the way all of it', () => {
    const due = (minutes: number): number =>
      planned(ask([batch([step('mix', 10)], { startAt: at(0), due: at(minutes) })])).cost;
    expect(due(70)).toBe(0);
    expect(due(55)).toBeCloseTo(4 * (0.25 * 0.5 + 0.75 * 0.25), 12);
    expect(due(40)).toBeCloseTo(4, 12);
    expect(due(100)).toBeCloseTo(2 * 0.3125, 12);
    expect(due(130)).toBeCloseTo(2, 12);
    expect(plan(ask([batch([step('mix', 10)], { startAt: at(0), due: at(135) })])).fits).toBe(
      false,
    );
  });

  it('a feed is chosen by window, cost and extra', () => {
    const feeds = [
      { ...wait(100, 150, 150, 200, 6), name: 'quick', extra: 0.2 },
      { ...wait(180, 240, 240, 300, 6), name: 'slow', extra: 0 },
    ];
    const fed = (minutes: number) =>
      planned(
        ask([
          batch([{ name: 'feed', hands: 5, wait: { choices: feeds } }], {
            startAt: at(0),
            due: at(5 + minutes),
          }),
        ]),
      );
    expect(fed(150)).toMatchObject({ cost: 0.2, touches: [{ choice: 'quick' }] });
    expect(fed(240)).toMatchObject({ cost: 0, touches: [{ choice: 'slow' }] });
    expect(fed(180).touches[0]!.choice).toBe('quick');
    expect(fed(195).touches[0]!.choice).toBe('slow');
  });

  it('rather not costs once a span for each touch that overlaps it, a touch without hands nothing', () => {
    const spans = [
      { from: at(0), to: at(5), cost: 1 },
      { from: at(5), to: at(6), cost: 2 },
      { from: at(10), to: at(20), cost: 8 },
    ];
    const one = (hands: number): number =>
      planned(
        ask([batch([step('mix', hands)], { startAt: at(0), due: at(60 + hands) })], {
          ratherNot: spans,
        }),
      ).cost;
    expect(one(10)).toBe(3);
    expect(one(5)).toBe(1);
    expect(one(15)).toBe(11);
    expect(one(0)).toBe(0);
  });

  it('without a due hour each hour to ready costs, from the rounded start', () => {
    const open = batch([step('mix', 10)], { due: null, startAt: at(2), finishCostPerHour: 0.6 });
    const result = planned(ask([open]));
    expect(result.touches[0]!.at).toBe(at(5));
    // Waiting less saves 0.05 points for 5 min; the first 5 min off cost 4·(0.25/6 + 0.75/36) = 0.25.
    expect(result.ready).toEqual([{ batch: 'bread', at: at(75) }]);
    expect(result.cost).toBeCloseTo((0.6 * 70) / 60, 12);
    const short = planned(ask([{ ...open, horizonMinutes: 45 }]));
    expect(short.ready[0]!.at).toBe(at(50));
    expect(plan(ask([{ ...open, horizonMinutes: 35 }])).fits).toBe(false);
  });

  it('a touch that was announced costs for moving, to the minute', () => {
    const stays = batch([step('mix', 10)], {
      stayPut: { mix: { at: at(517), costPer5Min: 0.02 } },
    });
    const result = planned(ask([stays]));
    // Typical is 530; 525 would save 0.02 and cost 2·(0.25/12 + 0.75/144) = 0.052.
    expect(result.touches[0]!.at).toBe(at(530));
    expect(result.cost).toBeCloseTo((0.02 * 13) / 5, 12);
  });
});

describe('roundings', () => {
  it('planning and start round up, due down', () => {
    const due = { due: at(604.9) };
    expect(times(ask([batch([step('mix', 10)], due)]))).toEqual({ mix: 530 });
    const tight = (from: number) =>
      plan(ask([batch([step('mix', 10)], due)], { planFrom: at(from) })).fits;
    expect([tight(560), tight(560.1)]).toEqual([true, false]);
  });

  it('blocked, rather-not and busy spans round outward and are half-open', () => {
    const rigidOne = batch([step('mix', 10, { wait: rigid(60) })]);
    const fits = (from: number, to: number): boolean | null =>
      plan(ask([rigidOne], { blocked: [{ from: at(from), to: at(to) }] })).fits;
    // Hands from 530 to 540.
    expect([fits(500, 530), fits(500, 530.1), fits(540, 550), fits(539.9, 550)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
    expect(fits(534, 534)).toBe(true);
    // Ready may fall inside a blocked window.
    expect(fits(590, 660)).toBe(true);
  });

  it('now blocks what is before it; what is fixed stands all the same', () => {
    const free = batch([step('mix', 10)]);
    expect(times(ask([free], { now: at(548) }))).toEqual({ mix: 550 });
    const result = planned(
      ask([{ ...free, fixed: { mix: at(521.5) } }], {
        now: at(560),
        blocked: [{ from: at(500), to: at(600) }],
      }),
    );
    const instant = at(521.5);
    expect(result.touches).toEqual([
      {
        batch: 'bread',
        name: 'mix',
        at: instant,
        hands: 10,
        earliest: instant,
        latest: instant,
        fineUntil: instant,
        lastPossible: instant,
        frozen: true,
      },
    ]);
  });
});

describe('touches inside a wait', () => {
  const fold = (name: string, from: number, off = 10) => ({
    name,
    hands: 5,
    at: from,
    earlier: off,
    later: off,
    weight: 1,
  });

  it('keep their order, do not overlap, and are over by the next step', () => {
    const folds = [fold('first', 30), fold('second', 30)];
    const whole = (minutes: number) =>
      ask([batch([step('mix', 10, { wait: rigid(minutes), during: folds })])]);
    const { first, second } = times(whole(60)) as { first: number; second: number };
    expect(second - first).toBe(5);
    expect(first - 540).toBeOneOf([25, 30]);
    expect(planned(whole(60)).cost).toBeCloseTo(0.3125, 12);
    // Over within 30: the second begins at 25, the first at 20.
    expect(times(whole(30))).toEqual({ mix: 560, first: 590, second: 595 });
    expect(plan(whole(25)).fits).toBe(false);
  });

  it('go round what is blocked', () => {
    const mixed = step('mix', 10, { wait: rigid(60), during: [fold('fold', 30)] });
    const input = ask([batch([mixed])], {
      blocked: [{ from: at(560), to: at(575) }],
    });
    expect(times(input)).toEqual({ mix: 530, fold: 575 });
  });

  it('the oven goes on after the hands, wherever it meets no side touch', () => {
    const oven = { name: 'oven on', hands: 5, ...wait(20, 45, 45, 60, 4, 1) };
    const heats = (during: Step['during'] = []) =>
      times(ask([batch([step('proof', 10, { wait: rigid(60), beforeNext: oven, during })])]));
    expect(heats()['oven on']).toBe(550);
    const held = fold('poke', 10, 0);
    expect(heats([held])).toMatchObject({ poke: 550, 'oven on': 545 });
    const short = ask([batch([step('proof', 10, { wait: rigid(20), beforeNext: oven })])]);
    expect(plan(short).fits).toBe(false);
  });

  it('an oven with a timer goes on in the night, at no hands', () => {
    const oven = { name: 'oven on', hands: 0, ...wait(45, 45, 45, 45, 0) };
    const night = { blocked: [{ from: at(545), to: at(570) }] };
    const proof = step('proof', 10, { wait: rigid(60), beforeNext: oven });
    expect(times(ask([batch([proof])], night))['oven on']).toBe(555);
    const byHand = { ...proof, beforeNext: { ...oven, hands: 5 } };
    expect(plan(ask([batch([byHand])], night)).fits).toBe(false);
  });
});

describe('oven, fridge and bowls', () => {
  const load = step('load', 5, { wait: rigid(30), uses: { oven: 1 } });
  const unload = step('unload', 5, { ovenAfter: 10 });

  it('the oven is held from load to so long after the last hands, not longer', () => {
    // Load 500–535, unload 535–540, held to 550.
    const busy = (from: number, to: number): boolean | null =>
      plan(
        ask([batch([load, { ...unload, wait: rigid(60) }])], {
          ovenBusy: [{ from: at(from), to: at(to) }],
        }),
      ).fits;
    expect([busy(400, 500), busy(400, 501), busy(550, 560), busy(549, 560)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });

  it('a place in the fridge is given back as the next step begins', () => {
    const cold = step('to fridge', 5, { wait: rigid(120), uses: { fridge: 3 } });
    const other = (name: string, due: number): Batch => ({ ...batch([cold]), name, due: at(due) });
    expect(plan(ask([other('one', 400), other('two', 525)])).fits).toBe(true);
    expect(plan(ask([other('one', 400), other('two', 520)])).fits).toBe(false);
    const small = { kitchen: { fridgePlaces: 2, bowls: 1, pots: 1, temperatureC: 24 } };
    expect(plan(ask([other('one', 400)], small)).fits).toBe(false);
  });

  it('two bakes need two pairs of hands nowhere, and hold one oven', () => {
    const mix = step('mix', 20, { wait: wait(60, 60, 60, 80, 0, 1) });
    const two = ask([batch([mix]), { ...batch([mix]), name: 'other' }]);
    const result = planned(two);
    expect(result.touches.map((one) => one.at).sort()).toEqual([at(500), at(520)]);
    expect(result).toMatchObject({ cost: 1, atMostFromBest: 0 });
    const fixed = [batch([mix], { fixed: { mix: at(520) } })];
    const both = [...fixed, { ...fixed[0]!, name: 'other' }];
    // What was done was done.
    expect(plan(ask(both)).fits).toBe(true);
  });
});

describe('what is impossible to ask', () => {
  const refuses = (one: Partial<Batch>, more: Partial<PlanInput> = {}) =>
    expect(() => plan(ask([batch([step('mix', 10)], one)], more)));
  it('throws and says why', () => {
    refuses({ due: null }).toThrow('bread: a batch needs an hour it is due, or one to start at.');
    refuses({ steps: [] }).toThrow('bread: a batch needs a step.');
    refuses({ steps: [step('mix', 7)] }).toThrow(
      'bread, mix: hands must be 0 or more minutes in fives, not 7.',
    );
    refuses({ steps: [step('mix', 5, { wait: wait(30, 42, 60, 90, 1) })] }).toThrow('typicalFrom');
    refuses({ steps: [step('mix', 5, { wait: wait(30, 60, 45, 90, 1) })] }).toThrow('in order');
    refuses({ steps: [step('mix', 5), step('mix', 5)] }).toThrow(
      'bread: two touches are called mix.',
    );
    refuses({ fixed: { bake: at(0) } }).toThrow('bread: no touch is called bake.');
    refuses({ stayPut: { bake: { at: at(0), costPer5Min: 1 } } }).toThrow('no touch');
    refuses({}, { planFrom: Number.NaN }).toThrow('An instant must be');
    refuses({}, { blocked: [{ from: at(5), to: at(0) }] }).toThrow('ends before it begins');
    expect(() => plan(ask([batch([step('mix', 5)]), batch([step('mix', 5)])]))).toThrow(
      'same name',
    );
  });
});
