import { describe, expect, it } from 'vitest';
import { makeBakeList } from '../../../src/core/log/bake-list.ts';
import { mergeBakes } from '../../../src/core/log/merge-bakes.ts';
import type { Deed } from '../../../src/core/records/fact.ts';
import { begun, cut, noted, rowsOf } from './support/log-rows.ts';

const listOf = (deeds: readonly Deed[], from = 0, id = 'f') =>
  makeBakeList()(rowsOf(deeds, { from, id }));
const brief = (lists: Parameters<typeof mergeBakes>[0]) =>
  mergeBakes(lists).map(({ start, turned }) => [start, turned]);

describe('the bakes of several tablets', () => {
  it('are one list, the latest begun first', () => {
    const here = listOf([begun('a'), noted('a', 'good'), begun('b'), noted('b', 'over')]);
    const there = listOf([begun('a'), noted('a', 'pale')], 1, 'g');
    expect(brief([here, there])).toEqual([
      ['f2', 'over'],
      ['g1', 'pale'],
      ['f0', 'good'],
    ]);
  });

  it('are each there once: of two logs that share a beginning the one with the end tells it', () => {
    const beginning = [begun('a'), noted('a', 'good'), begun('b')];
    const here = listOf(beginning);
    const there = listOf([...beginning, noted('b', 'under')]);
    const wanted = [
      ['f2', 'under'],
      ['f0', 'good'],
    ];
    expect(brief([here, there])).toEqual(wanted);
    expect(brief([there, here])).toEqual(wanted);
    expect(brief([here, listOf(beginning)])[0]).toEqual(['f2', 'open']);
  });

  it('take the mark of a loaf that was cut here though it was baked there', () => {
    const there = listOf([begun('a'), noted('a')], 0, 'g');
    const here = listOf([cut('g0', 'well')]);
    expect(brief([here, there])).toEqual([['g0', 'good']]);
    expect(mergeBakes([here, there])[0]).toBe(mergeBakes([here, there])[0]);
  });

  it('are the one log’s own list where the others have nothing', () => {
    const here = listOf([begun('a')]);
    expect(mergeBakes([here])).toBe(here.bakes);
    expect(mergeBakes([here, listOf([])])).toBe(here.bakes);
  });
});
