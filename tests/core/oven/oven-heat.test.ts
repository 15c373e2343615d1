import { describe, expect, it } from 'vitest';
import { heatShort, ovenHeat } from '../../../src/core/oven/oven-heat.ts';

describe('an oven that does not get hot enough', () => {
  it('is told apart: too cool to bake, or only to heat the pots; never where nobody said', () => {
    const keys = [null, 300, 260, 259, 230, 229, 180].map((most) => heatShort('pot', most)?.key);
    expect(keys).toEqual([
      undefined,
      undefined,
      undefined,
      'preheatShort',
      'preheatShort',
      'bakeHeatShort',
      'bakeHeatShort',
    ]);
  });

  it('bakes a tin where it cannot bake a pot', () => {
    expect(heatShort('tin', 220)).toEqual({
      key: 'preheatShort',
      values: { got: 220, wanted: 230 },
    });
    for (const vessel of ['pot', 'stone', 'tin'] as const) {
      const { preheat, bake } = ovenHeat(vessel);
      expect(bake.most).toBeGreaterThan(bake.least);
      expect(preheat).toBeGreaterThanOrEqual(bake.most);
      expect(heatShort(vessel, preheat)).toBeNull();
    }
  });
});
