import { beforeAll, describe, expect, it } from 'vitest';
import { replay } from '../../machines/kitchen/replay.ts';
import type { Fact } from '../../src/core/records/fact.ts';
import { countedMachines } from './support/counted.ts';
import { Hand, plainStarter, plainWait } from './support/hand.ts';
import { walkTo, walkToEnd } from './support/onward.ts';

/** Weeks of bakes, one after the other, each with one press taken back and done again. */
const FACTS = 3_000;
const { machines, asked } = countedMachines();
const hand = new Hand({ machines });

const count = <T>(work: () => T): { readonly result: T; readonly guards: number } => {
  const before = asked();
  const result = work();
  return { result, guards: asked() - before };
};

const oneBake = (bake: string) => {
  hand.start(bake, 'mix.first');
  walkTo(hand, 'oven', 'lift', bake);
  hand.press('oven', 'lidOff');
  hand.takeBack();
  walkToEnd(hand, bake);
};

describe('a log of 3,000 facts', () => {
  let firstTakeBack = 0;
  beforeAll(() => {
    oneBake('bake-1');
    firstTakeBack = count(() => hand.takeBack()).guards;
    walkToEnd(hand, 'bake-1');
    for (let n = 2; hand.records.length < FACTS; n += 1) oneBake(`bake-${n}`);
  }, 120_000);

  it('refolds without trouble, asking a handful of guards a fact, take-backs included', () => {
    const begun = performance.now();
    const { result, guards } = count(() => replay(hand.records, machines));
    const took = Math.round(performance.now() - begun);
    const each = guards / hand.records.length;
    console.log(
      `${hand.records.length} facts refolded in ${took} ms, ${each.toFixed(1)} guards a fact`,
    );
    expect(result.trouble).toBeNull();
    expect(hand.fold.positionOf(result.kitchen)).toEqual(hand.records.at(-1)!.position);
    expect(each).toBeLessThan(20);
  }, 60_000);

  it('takes back its last press with no more work than a log of one bake', () => {
    const { result, guards } = count(() => hand.takeBack());
    expect(result).toBe(true);
    expect(guards).toBeLessThan(2 * firstTakeBack);
  });

  it('takes back across the end of a bake, into the one before', () => {
    while (hand.stage('oven') !== 'unload') expect(hand.takeBack()).toBe(true);
    expect(Object.keys(hand.kitchen.bakes)).toHaveLength(1);
    const last = Object.keys(hand.kitchen.bakes)[0]!;
    const start = hand.records.findLast(({ fact }) => fact.kind === 'start')!.fact.id;
    while (hand.fold.takeBackTarget(hand.kitchen)?.id !== start) hand.takeBack();
    expect(hand.takeBack()).toBe(true);
    expect(hand.kitchen.bakes).toEqual({});
    expect(hand.takeBack()).toBe(true);
    expect(Object.keys(hand.kitchen.bakes)).not.toEqual([last]);
  }, 60_000);

  it('judges a press with one fold of it: bare and with results it is begun once', () => {
    // A wait measured and left: the take-back leads back into it, and it is reckoned anew.
    const hand = new Hand({ machines });
    hand.start('a', 'mix.weigh');
    walkTo(hand, 'a', 'bulk.proving');
    hand.dough('a', 24);
    hand.press('a', 'doughSeen');
    const target = hand.fold.takeBackTarget(hand.kitchen)!.id;
    const at = hand.now;
    const fact: Fact = { kind: 'takeBack', target, id: 'x', device: 'test', at, raw: at };
    const folded = count(() => hand.fold.apply(hand.kitchen, machines, fact)).guards;
    const judged = count(() =>
      hand.fold.judgeFact(hand.kitchen, machines, fact, plainWait, plainStarter),
    );
    expect(judged.result!.fact.results).not.toBeUndefined();
    expect(judged.guards).toBeLessThan(1.1 * folded);
  });
});
