import { describe, expect, it } from 'vitest';
import { waitFor, type WaitInput } from '../../../src/core/day/waits.ts';
import { oncePerLook } from '../../../src/core/readiness/one-look.ts';
import { OPENING_BELIEF } from '../../../src/core/readiness/belief.ts';
import type { Seen } from '../../../src/core/records/seen.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const rise = (minutes: number, percent: number): Seen => ({
  at: minutes * MINUTE,
  reading: { what: 'rise', percent, of: 'dough' },
});

describe('readings of one look', () => {
  it('of the dough and of a jar beside it are two witnesses', () => {
    const jar: Seen = {
      at: MINUTE,
      reading: { what: 'rise', percent: 20, of: 'dough', in: 'jar' },
    };
    expect(oncePerLook([rise(0, 50), jar])).toEqual([rise(0, 50), jar]);
  });

  it('are the last of each kind within ten minutes, whatever order they come in', () => {
    const edge: Seen = { at: MINUTE, reading: { what: 'edge', edge: 'flat', bubbles: 'none' } };
    const all = [rise(0, 0), rise(9, 50), edge, rise(18, 25), rise(30, 60)];
    expect(oncePerLook(all)).toEqual([rise(0, 0), edge, rise(18, 25), rise(30, 60)]);
    expect(oncePerLook([rise(18, 25), rise(9, 50)])).toEqual([rise(18, 25)]);
  });

  it('do not make a window narrow by being many', () => {
    const now = 3 * HOUR;
    const input = (seen: readonly Seen[]): WaitInput => ({
      stage: 'bulk.proving',
      now,
      recipe: RECIPE,
      kitchen: 22,
      entered: { 'mix.first': 0, 'bulk.proving': 2 * HOUR },
      touches: 3,
      prior: OPENING_BELIEF,
      seen,
      again: false,
      done: [],
    });
    const thirty = Array.from({ length: 30 }, (_, n) => rise(179 + n / 30, [0, 25, 30][n % 3]!));
    expect(waitFor(input(thirty)).marks).toEqual(waitFor(input([thirty.at(-1)!])).marks);
  });
});
