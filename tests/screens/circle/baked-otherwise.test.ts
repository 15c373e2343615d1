import { expect, it } from 'vitest';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { bakedOtherwise } from '../../../src/screens/circle/labels/baked-otherwise.ts';
import { shippedFormula } from '../../core/formula/shipped.ts';

const first = shippedFormula('cherry-hazelnut');
const entry = (latest: Formula, version: number | null) => ({
  latest: { ...latest, version: 2 },
  versions: [first, { ...latest, version: 2 }].map((formula) => ({ formula, at: 0 })),
  baked: version === null ? null : { at: 0, version },
});

it('names the version that was baked, where its dough was another', () => {
  const without = { ...first, fillings: first.fillings.slice(1) };
  expect(bakedOtherwise(entry(without, 1))).toBe(1);
  expect(bakedOtherwise(entry({ ...first, hydration: 70 }, 1))).toBe(1);
  expect(bakedOtherwise(entry(without, 2))).toBeNull();
  expect(bakedOtherwise(entry(without, null))).toBeNull();
});

it('is silent where only a packet was answered, or a step changed', () => {
  const read = { ...first, flours: first.flours.map((f) => ({ ...f, packet: 'read' as const })) };
  const slower = { ...first, process: { ...first.process, retard: 600 } };
  expect(bakedOtherwise(entry(read, 1))).toBeNull();
  expect(bakedOtherwise(entry(slower, 1))).toBeNull();
});
