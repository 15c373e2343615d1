import { describe, expect, it } from 'vitest';
import { openFold } from '../../machines/kitchen/open-fold.ts';
import { positionOf } from '../../machines/kitchen/position.ts';
import { replay } from '../../machines/kitchen/replay.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { countedMachines } from './support/counted.ts';
import { Hand } from './support/hand.ts';
import { walkTo, walkToEnd } from './support/onward.ts';
import { openedShort } from './support/opens-alike.ts';

const { machines, asked } = countedMachines();

const baked = (hand: Hand, bake: string): void => {
  hand.start(bake, 'mix.first');
  walkTo(hand, 'oven', 'lift', bake);
  hand.press('oven', 'lidOff');
  hand.takeBack();
  walkToEnd(hand, bake);
};
const years = (bakes: number): Hand => {
  const hand = new Hand({ machines });
  for (let n = 1; n <= bakes; n += 1) baked(hand, `bake-${n}`);
  return hand;
};
const guards = (records: readonly LogRecord[]): number => {
  const before = asked();
  expect(openFold(records, machines).trouble).toBeNull();
  return asked() - before;
};

describe('a log that is opened', () => {
  it('knows after every row what its whole fold knows', () => {
    const { records } = years(2);
    for (let n = 1; n <= records.length; n += 1) {
      const rows = records.slice(0, n);
      openedShort(rows, replay(rows, machines), machines);
    }
  });

  it('asks no more of the machines after six bakes than after two, in a running one too', () => {
    expect(guards(years(6).records)).toBe(guards(years(2).records));
    const running = (bakes: number) => {
      const hand = years(bakes);
      hand.start('now', 'mix.first');
      walkTo(hand, 'oven', 'lift', 'now');
      return hand.records;
    };
    expect(guards(running(6))).toBeLessThan(1.1 * guards(running(2)));
  });

  it('lets its last bake be taken back press by press, and the one before it, as ever', () => {
    const hand = years(2);
    hand.kitchen = openFold(hand.records, machines).kitchen;
    const twin = years(2);
    for (let n = 0; n < 60; n += 1) {
      expect(hand.takeBack()).toBe(true);
      expect(twin.takeBack()).toBe(true);
      expect(positionOf(hand.kitchen)).toEqual(positionOf(twin.kitchen));
    }
    expect(Object.keys(hand.kitchen.bakes)).toEqual(['bake-1']);
  });

  it('is folded whole where a row before the last bake is missing, or its last place makes no sense', () => {
    const hand = years(2);
    hand.start('now', 'mix.first');
    const gap = hand.records.filter(({ seq }) => seq !== 3);
    expect(openFold(gap, machines).trouble).toMatchObject({ seq: 4 });
    const last = hand.records.at(-2)!;
    const torn = { ...last, position: { ...last.position, attention: null as never } };
    expect(openFold(hand.records.with(-2, torn), machines).trouble).toMatchObject({
      seq: last.seq,
    });
  });
});
