import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { headsUp } from '../../../src/core/day/heads-up.ts';
import { waitFor } from '../../../src/core/day/waits.ts';
import { OVEN_STAGES } from '../../../src/core/records/stage.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { RECIPE, STONE } from '../../machines/support/recipe.ts';
import { T0, waitOf } from './support/wait-of.ts';

const wait = (stage: 'lidded' | 'steaming', recipe = RECIPE) =>
  waitFor(waitOf({ stage, recipe })).marks;

describe('what is said ahead of a hot call', () => {
  it('is due a minute before the lid comes off, and before the steam goes', () => {
    const lid = wait('lidded');
    expect(lid).toEqual({ lid: lid['lid'], 'lead.hands': lid['lid']! - MINUTE });
    const vent = wait('steaming', STONE);
    expect(vent).toEqual({ vent: vent['vent'], 'lead.hands': vent['vent']! - MINUTE });
  });

  it('is asked for in no other wait, nor in one of a minute', () => {
    const others = OVEN_STAGES.filter((stage) => stage !== 'lidded' && stage !== 'steaming');
    fc.assert(
      fc.property(fc.constantFrom(...others), fc.nat(120), (stage, minutes) => {
        expect(headsUp({ stage, now: T0 }, T0 + minutes * MINUTE)).toEqual({});
      }),
    );
    expect(headsUp({ stage: 'lidded', now: T0 }, T0 + MINUTE)).toEqual({});
    expect(headsUp({ stage: 'lidded', now: T0 }, T0 + MINUTE + 1)).toEqual({ hands: T0 + 1 });
  });
});
