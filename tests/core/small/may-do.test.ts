import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { Hazard } from '../../../src/core/records/stage.ts';
import { AGES } from '../../../src/core/small/ages.ts';
import { guardOf, isGated } from '../../../src/core/small/guard.ts';
import { mayDo } from '../../../src/core/small/may-do.ts';
import { hazards, STEPS } from './support/steps.ts';

const HAZARDS: readonly Hazard[] = ['none', 'hot', 'blade', 'machine', 'heavy', 'raw'];

const ages = fc.constantFrom(...AGES);
const step = fc.constantFrom(...STEPS);
const hazard = fc.constantFrom(...HAZARDS);

describe('what a child may do', () => {
  it('is never hot, sharp or powered, nor the press of it, whatever the step and the age', () => {
    fc.assert(
      fc.property(step, fc.constantFrom<Hazard>('hot', 'blade', 'machine'), ages, (s, h, a) => {
        expect(guardOf(s, h)).toBe(h);
        expect(mayDo(guardOf(s, h), a)).toEqual({ acts: 'grownUp', presses: false });
      }),
    );
  });

  it('is never more than its baker is warned of', () => {
    fc.assert(
      fc.property(step, hazard, ages, (s, h, a) => {
        const bare = mayDo(h, a);
        const here = mayDo(guardOf(s, h), a);
        if (here.acts === 'child') expect(bare.acts).toBe('child');
        if (here.presses) expect(bare.presses).toBe(true);
      }),
    );
  });

  it('grows with the years and is never taken away', () => {
    fc.assert(
      fc.property(step, hazard, (s, h) => {
        const all = AGES.map((a) => mayDo(guardOf(s, h), a));
        for (const [at, younger] of all.slice(0, -1).entries()) {
          const older = all[at + 1]!;
          if (younger.acts === 'child') expect(older.acts).toBe('child');
          if (younger.presses) expect(older.presses).toBe(true);
        }
      }),
    );
  });

  it('is pressed by whoever does it', () => {
    fc.assert(
      fc.property(step, hazard, ages, (s, h, a) => {
        const { acts, presses } = mayDo(guardOf(s, h), a);
        if (acts === 'child') expect(presses).toBe(true);
      }),
    );
  });

  it.each([
    ['raw', '4-6', 'grownUp', true],
    ['raw', '7-9', 'child', true],
    ['raw', '10-12', 'child', true],
    ['allergen', '4-6', 'grownUp', true],
    ['allergen', '7-9', 'child', true],
    ['heavy', '4-6', 'grownUp', true],
    ['heavy', '10-12', 'grownUp', true],
    ['none', '4-6', 'child', true],
  ] as const)('%s, %s: %s, presses: %s', (guard, of, acts, presses) => {
    expect(mayDo(guard, of)).toEqual({ acts, presses });
  });
});

test('the machines’ own warnings are read', () => {
  expect(hazards.get('lift')).toBe('hot');
  expect(hazards.get('score')).toBe('blade');
  expect(hazards.get('turnOn')).toBe('machine');
  expect(hazards.get('bulk.fold')).toBe('raw');
  for (const name of hazards.keys()) expect(STEPS).toContain(name);
});

test('from the oven’s first heat until it is off, whatever is at the oven is out of reach', () => {
  const atOven =
    'turnOn preheating holding before score load tray baking lidded lift steaming vent open judge unload recover turnOff rescue.tray oven.queued cool.cooling toast kettle rack cut parchment';
  for (const name of atOven.split(' ')) {
    const found = STEPS.find((s) => s === name)!;
    expect(isGated(guardOf(found, hazards.get(found))), name).toBe(true);
  }
});

test('the raw dough and the raw flour of every step are known', () => {
  const raw = STEPS.filter((s) => guardOf(s, hazards.get(s)) === 'raw');
  for (const name of 'levain.feed levain.ripe mix.weigh mix.first mix.salt mix.work mix.temperature bulk.fold bulk.spread bulk.scatter bulk.roll shape.divide shape.preshape shape.finalShape shape.basket shape.scoop proof.look proof.poke poke coat baskets tidyMix tidyBulk tidyBench'.split(
    ' ',
  ))
    expect(raw).toContain(name);
});
