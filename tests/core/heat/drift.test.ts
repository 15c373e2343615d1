import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { temperatureAt, temperatureIn } from '../../../src/core/clock/stretch.ts';
import { driftPath, fitDrift, type Measured } from '../../../src/core/heat/drift.ts';
import { makeDice } from '../../truth/synthetic.ts';

const BODY = { tau: 5, start: 24 };
const room = [{ hours: 0, celsius: 22 }];

const measuredOf = (
  { from, toward, tau }: { from: number; toward: number; tau: number },
  hours: readonly number[],
): Measured[] =>
  hours.map((at) => ({ hours: at, celsius: temperatureIn({ from, toward, tau }, at) }));

describe('drift of a body', () => {
  it('is what was believed before, while nothing is measured', () => {
    expect(fitDrift([], room, BODY)).toEqual({ from: 24, tau: 5, offset: 0 });
  });

  it('starts where one reading at the beginning says', () => {
    const { from } = fitDrift([{ hours: 0, celsius: 27 }], room, BODY);
    expect(from).toBeCloseTo(27, 1);
  });

  it('comes near a true τ and room that many readings tell', () => {
    const true_ = { from: 30, toward: 21, tau: 3.2 };
    const { tau, offset } = fitDrift(
      measuredOf(
        true_,
        Array.from({ length: 60 }, (_, i) => i / 10),
      ),
      room,
      BODY,
    );
    expect(Math.abs(Math.log(tau / 3.2))).toBeLessThan(0.06);
    expect(offset).toBeCloseTo(-1, 0);
  });

  it('does not ask in which order the readings were taken', () => {
    const reading = fc.record({
      hours: fc.double({ min: 0, max: 6, noNaN: true }),
      celsius: fc.double({ min: 15, max: 32, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 6 }), (readings) => {
        const [a, b] = [
          fitDrift(readings, room, BODY),
          fitDrift(readings.toReversed(), room, BODY),
        ];
        expect(a.tau).toBeCloseTo(b.tau, 9);
        expect(a.from).toBeCloseTo(b.from, 9);
        expect(a.offset).toBeCloseTo(b.offset, 9);
      }),
    );
  });

  it('takes a room told in pieces as the room it is', () => {
    const pieces = [
      { hours: 0, celsius: 22 },
      { hours: 1, celsius: 22 },
      { hours: 2.5, celsius: 22 },
    ];
    const readings = measuredOf({ from: 27, toward: 22, tau: 5 }, [0, 1.2, 2.6]);
    const whole = driftPath(fitDrift(readings, room, BODY), room, 8);
    const split = driftPath(fitDrift(readings, pieces, BODY), pieces, 8);
    for (const t of [0, 0.9, 2, 4, 8]) {
      expect(temperatureAt(split, t)).toBeCloseTo(temperatureAt(whole, t), 9);
    }
  });

  it('follows a room that was warmed', () => {
    const warmed = [...room, { hours: 1, celsius: 28 }];
    const path = driftPath(fitDrift([{ hours: 0, celsius: 22 }], warmed, BODY), warmed, 40);
    expect(temperatureAt(path, 1)).toBeCloseTo(22, 0);
    expect(temperatureAt(path, 40)).toBeCloseTo(28, 1);
  });
});

/**
 * Forecast of a bowl's temperature at 3 h, RMSE in K, after one to four readings 40 min apart
 * (judgement, tried on synthetic bowls: .73, .52, .37, .28). Mean of five fixed seeds.
 */
describe('forecast of a bowl at 3 h', () => {
  const BOWLS = 400;
  const forecast = (seed: number, count: number): number => {
    const dice = makeDice(seed);
    let sum = 0;
    for (let i = 0; i < BOWLS; i += 1) {
      const air = dice.normal(22.5, 2);
      const truth = {
        from: dice.normal(26, 1.5),
        toward: air + dice.normal(0, 1),
        tau: 5 * Math.exp(dice.normal(0, 0.35)),
      };
      const readings = Array.from({ length: count }, (_, n) => ({
        hours: n * (2 / 3),
        celsius: temperatureIn(truth, n * (2 / 3)) + dice.normal(0, 0.3),
      }));
      const told = [{ hours: 0, celsius: air }];
      const path = driftPath(fitDrift(readings, told, { tau: 5, start: 26 }), told, 4);
      sum += (temperatureAt(path, 3) - temperatureIn(truth, 3)) ** 2;
    }
    return Math.sqrt(sum / BOWLS);
  };
  const errors = [1, 2, 3, 4].map(
    (count) => [1, 2, 3, 4, 5].reduce((sum, seed) => sum + forecast(seed, count), 0) / 5,
  );

  it('errs by what the trade’s scatter leaves, less with every reading', () => {
    for (const [i, expected] of [0.73, 0.52, 0.37, 0.28].entries()) {
      expect(Math.abs(errors[i]! / expected - 1)).toBeLessThan(0.1);
      if (i > 0) expect(errors[i]).toBeLessThan(errors[i - 1]!);
    }
  });
});
