import { expect, it } from 'vitest';
import { bowlsFor, handKilos } from '../../../src/core/kitchen/bowls.ts';

const bowls = { count: null, kilos: 3, litres: null };

it('shares a dough over 3 kg by hand, or over what the bowl holds once risen', () => {
  expect(bowlsFor(3000, bowls)).toBe(1);
  expect(bowlsFor(3001, bowls)).toBe(2);
  expect(handKilos({ ...bowls, litres: 5 })).toBe(2.5);
  expect(bowlsFor(3000, { ...bowls, litres: 5 })).toBe(2);
  expect(handKilos({ ...bowls, litres: 20 })).toBe(3);
  expect(bowlsFor(22_041, bowls)).toBe(8);
});
