import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeBakeList } from '../../../src/core/log/bake-list.ts';
import { withdrawnIn } from '../../../src/core/log/bake-rows.ts';
import type { Deed } from '../../../src/core/records/fact.ts';
import type { LogRecord } from '../../../src/core/records/record.ts';
import { back, begun, cut, noted, rowsOf, standingAt } from './support/log-rows.ts';

const listOf = (records: readonly LogRecord[]) => makeBakeList()(records).bakes;
const listed = (...deeds: readonly Deed[]) => listOf(rowsOf(deeds));
const turned = (...deeds: readonly Deed[]) => listed(...deeds)[0]?.turned;
const ended = (who: string): Deed => ({ kind: 'press', who, act: 'ended' });
const jump = (bakes: Readonly<Record<string, string>>): Deed => ({
  kind: 'jump',
  position: standingAt(0, bakes),
});

describe('the list of bakes', () => {
  it('has the latest begun first, with what was noted as it was put away', () => {
    const bakes = listed(
      begun('a'),
      noted('a', 'dark'),
      begun('b'),
      begun('c'),
      ended('c'),
      begun('d'),
      noted('d', 'Less water'),
    );
    expect(bakes.map(({ bake, to, note }) => [bake, to === null, note])).toEqual([
      ['d', false, 'Less water'],
      ['c', false, null],
      ['b', true, null],
      ['a', false, 'dark'],
    ]);
  });

  it('has nothing that was taken back: no start, no end, no note', () => {
    const deeds = [begun('a'), noted('a', 'good'), back('f1'), begun('b'), back('f3')];
    const bakes = listed(...deeds);
    expect(bakes.map(({ bake, to, note }) => [bake, to, note])).toEqual([['a', null, null]]);
  });

  it('tells two bakes of one name apart', () => {
    const bakes = listed(begun('a'), noted('a', 'good'), begun('a', 'Barley tin'));
    expect(bakes.map(({ start, name, note }) => [start, name, note])).toEqual([
      ['f2', 'Barley tin', null],
      ['f0', 'Lane wheat', 'good'],
    ]);
  });

  it('counts the loaves that remain', () => {
    const fewer: Deed = { kind: 'press', who: 'a', act: 'fewer', loaves: ['a.1', 'a.2'] };
    expect(listed(begun('a', 'Lane wheat', 3), fewer)[0]?.loaves).toBe(2);
    expect(listed(begun('a', 'Lane wheat', 3), fewer, back('f1'))[0]?.loaves).toBe(3);
  });
});

describe('how a bake turned out', () => {
  it('is what the baker noted, whatever the cut loaf showed', () => {
    expect(turned(begun('a'), noted('a', 'pale'))).toBe('pale');
    expect(turned(begun('a'), noted('a', 'pale'), cut('f0', 'well'))).toBe('pale');
  });

  it('is what the cut loaf showed where nothing was noted that has a mark', () => {
    expect(turned(begun('a'), noted('a'))).toBe('done');
    expect(turned(begun('a'), noted('a', 'Less water'), cut('f0', 'well'))).toBe('good');
    expect(turned(begun('a'), noted('a'), cut('f0', 'under'))).toBe('under');
    expect(turned(begun('a'), noted('a'), cut('f0', 'under'), cut('f0', 'over'))).toBe('over');
    expect(turned(begun('a'), noted('a'), cut('f0', 'skin'))).toBe('done');
  });

  it('is not told by what is hard to say, nor by too little seen', () => {
    expect(turned(begun('a'), noted('a'), cut('f0', 'under', 'hard'))).toBe('done');
    expect(turned(begun('a'), noted('a'), cut('f0', 'look'))).toBe('done');
  });

  it('is over where it was baked flat, unless something was noted', () => {
    const flat: Deed = { kind: 'press', who: 'a', act: 'trayBaked' };
    expect(turned(begun('a'), flat, noted('a'))).toBe('over');
    expect(turned(begun('a'), flat, noted('a', 'good'))).toBe('good');
  });

  it('is early where it was ended, or where the kitchen was put to a place without it', () => {
    expect(turned(begun('a'), ended('a'))).toBe('early');
    expect(turned(begun('a'))).toBe('open');
    expect(turned(begun('a'), jump({}))).toBe('early');
    expect(turned(begun('a'), jump({}), jump({ a: 'f0' }))).toBe('open');
    expect(turned(begun('a'), noted('a', 'good'), jump({ a: 'f0' }))).toBe('open');
    expect(turned(begun('a'), noted('a', 'good'), jump({ a: 'f0' }), jump({}))).toBe('early');
  });
});

/** Deeds of a handful of bakes in any order; whatever was done before may be taken back, what comes after too. */
const NAMES = ['a', 'b', 'c'] as const;
const anyDeed: fc.Arbitrary<Deed> = fc
  .tuple(fc.nat(9), fc.constantFrom(...NAMES), fc.nat(40), fc.boolean())
  .map(([kind, bake, n, flag]): Deed => {
    switch (kind) {
      case 0:
      case 1:
        return begun(bake, flag ? 'Lane wheat' : 'Barley tin', 1 + (n % 3));
      case 2:
      case 3:
        return noted(bake, flag ? 'good' : undefined);
      case 4:
        return ended(bake);
      case 5:
        return { kind: 'press', who: bake, act: 'fewer', loaves: [`${bake}.1`] };
      case 6:
        return cut(`f${n}`, flag ? 'well' : 'over');
      case 7:
        return jump(flag ? {} : { [bake]: `f${n}` });
      case 8:
        return back(`f${n}`);
      default:
        return { kind: 'heard', call: `${bake} rang` };
    }
  });
const anyLog = fc.array(anyDeed, { maxLength: 40 }).map((deeds) => rowsOf(deeds));
const cutsAt = fc
  .uniqueArray(fc.nat(40), { maxLength: 6 })
  .map((at) => at.toSorted((a, b) => a - b));

describe('a list that is read on with', () => {
  it('is the list of the whole log, and keeps every line of which nothing new was told', () => {
    let kept = 0;
    fc.assert(
      fc.property(anyLog, cutsAt, (records, at) => {
        const read = makeBakeList();
        let before = read([]);
        for (const length of [...at, records.length]) {
          const now = read(records.slice(0, length));
          const whole = makeBakeList()(records.slice(0, length));
          expect(now.bakes).toEqual(whole.bakes);
          expect(now.cuts).toEqual(whole.cuts);
          for (const line of now.bakes) {
            const old = before.bakes.find(({ start }) => start === line.start);
            if (old === undefined || JSON.stringify(old) !== JSON.stringify(line)) continue;
            kept += 1;
            expect(line).toBe(old);
          }
          if (JSON.stringify(before.bakes) === JSON.stringify(now.bakes))
            expect(now.bakes).toBe(before.bakes);
          before = now;
        }
      }),
      { seed: 20_310_504, numRuns: 400 },
    );
    expect(kept).toBeGreaterThan(100);
  });

  it('has each start that stands once, the last first', () => {
    fc.assert(
      fc.property(anyLog, (records) => {
        const withdrawn = withdrawnIn(records);
        const starts = records.flatMap(({ fact }) =>
          fact.kind === 'start' && !withdrawn.has(fact.id) ? [fact.id] : [],
        );
        expect(listOf(records).map(({ start }) => start)).toEqual(starts.toReversed());
      }),
      { seed: 20_310_505, numRuns: 200 },
    );
  });

  it('begins anew with another log, and knows its lines again where it is the same read anew', () => {
    const rows = rowsOf([begun('a'), noted('a', 'good'), begun('b')]);
    const read = makeBakeList();
    const first = read(rows).bakes;
    const again = read(structuredClone(rows)).bakes;
    expect(again).toBe(first);
    expect(read(rowsOf([begun('z')], { id: 'g' })).bakes.map(({ bake }) => bake)).toEqual(['z']);
    expect(read([]).bakes).toEqual([]);
  });

  it('reads no row twice, however long the log is', () => {
    const rows = rowsOf(
      Array.from({ length: 300 }, (_, n) => [begun(`b${n}`), noted(`b${n}`, 'good')]).flat(),
    );
    let asked = 0;
    const watched = rows.map((row) =>
      Object.defineProperty({ ...row }, 'fact', { get: () => ((asked += 1), row.fact) }),
    );
    const read = makeBakeList();
    for (let n = 1; n <= watched.length; n += 1) read(watched.slice(0, n));
    expect(asked).toBe(watched.length);
  });
});
