import { describe, expect, it } from 'vitest';
import { gamma } from '../../../src/core/clock/gamma.ts';
import { doughHours } from '../../../src/core/log/dough-hours.ts';
import { HOUR } from '../../../src/core/units.ts';

const read = (hour: number, celsius: number, odd = false) => ({
  id: `f${hour}`,
  at: hour * HOUR,
  by: 'hand' as const,
  reading: { what: 'doughTemperature' as const, celsius },
  odd,
  was: [],
});
const hoursOf = (...readings: ReturnType<typeof read>[]) =>
  doughHours({ readings, stages: [] }).map(({ hours }) => hours);

describe('the hours that a dough lived', () => {
  it('are the clock’s own at 26 °C, and as many fewer as its rate is lower', () => {
    expect(hoursOf(read(0, 26), read(3, 26))).toEqual([0, expect.closeTo(3, 6)]);
    expect(hoursOf(read(0, 20), read(2, 20))[1]).toBeCloseTo(2 * gamma(20), 6);
  });

  it('run straight from reading to reading: as a fine sum has it', () => {
    const steps = 20_000;
    const sum = Array.from({ length: steps }, (_, n) => gamma(28 - (6 * (n + 0.5)) / steps)).reduce(
      (all, rate) => all + (rate * 4) / steps,
      0,
    );
    expect(hoursOf(read(0, 28), read(4, 22))[1]).toBeCloseTo(sum, 5);
  });

  it('leave out what was kept as odd, and what was read of cold loaves', () => {
    expect(hoursOf(read(0, 26), read(1, 80, true), read(2, 26))).toHaveLength(2);
    const stay = { to: null, byDue: false, planned: null, plannedBy: null };
    const cold = [{ ...stay, stage: 'proof.retard', from: 2 * HOUR }];
    expect(
      doughHours({ readings: [read(0, 26), read(1, 25), read(3, 6)], stages: cold }),
    ).toHaveLength(2);
  });

  it('are none where fewer than two temperatures were read', () => {
    expect(hoursOf(read(1, 25))).toEqual([]);
  });
});
