import { describe, expect, it } from 'vitest';
import { braked, type Stay } from '../../../../src/core/day/laid/braked.ts';
import { HOUR } from '../../../../src/core/units.ts';
import { seeded } from '../support/seeded.ts';

const window = { earliest: 2 * HOUR, likely: 3 * HOUR, latest: 4 * HOUR };
const stay = (more: Partial<Stay>): Stay => ({
  now: 0,
  from: 0,
  to: 4 * HOUR,
  place: 4,
  room: 24,
  body: 24,
  tau: 5,
  ...more,
});
const CLOSE = HOUR / 60;

describe('a dough that stands somewhere else for a while', () => {
  it('in a room as warm as its own nothing changes', () => {
    const { earliest, likely, latest, works } = braked(window, stay({ place: 24 }));
    expect(Math.abs(earliest - window.earliest)).toBeLessThan(CLOSE);
    expect(Math.abs(likely - window.likely)).toBeLessThan(CLOSE);
    expect(Math.abs(latest - window.latest)).toBeLessThan(CLOSE);
    expect(works).toBeCloseTo(240, 5);
  });

  it('a big bowl in the fridge still does two hours’ work in three and a half', () => {
    // Arithmetic from Newton's law with the 4–7 h that common practice gives a big bowl, no source.
    const { works } = braked(window, stay({ to: 3.5 * HOUR }));
    expect(works).toBeGreaterThan(105);
    expect(works).toBeLessThan(150);
    expect(braked(window, stay({ to: 3.5 * HOUR, tau: 1.1 })).works).toBeLessThan(60);
  });

  it('a bowl cools slowly: three hours become some four in a room of 18 °C, a jar’s more', () => {
    const { likely } = braked(window, stay({ place: 18, to: 24 * HOUR }));
    expect(likely).toBeGreaterThan(3.4 * HOUR);
    expect(likely).toBeLessThan(4.2 * HOUR);
    // Taken to the room's heat at once it would be 3 h · 2.8^0.6 = 5.56 h.
    const jar = braked(window, stay({ place: 18, to: 24 * HOUR, tau: 0.05 })).likely;
    expect(Math.abs(jar - 5.56 * HOUR)).toBeLessThan(0.1 * HOUR);
  });

  it('colder is never sooner, a warmer place never later, order is kept', () => {
    const random = seeded(7);
    for (let i = 0; i < 200; i += 1) {
      const room = random.whole(16, 30);
      const from = random.whole(0, 60) * 60_000;
      const base = { room, body: room + random.whole(-2, 4), from, tau: random.whole(1, 7) };
      const to = from + random.whole(0, 12) * HOUR;
      const at = (place: number) => braked(window, stay({ ...base, to, place }));
      const [cold, cool, warm] = [at(4), at(15), at(26)];
      expect(cold.likely).toBeGreaterThanOrEqual(cool.likely - CLOSE);
      if (room <= 26) expect(warm.likely).toBeLessThanOrEqual(cool.likely + CLOSE);
      for (const { earliest, likely, latest } of [cold, cool, warm]) {
        expect(earliest).toBeLessThanOrEqual(likely);
        expect(likely).toBeLessThanOrEqual(latest);
      }
    }
  });
});
