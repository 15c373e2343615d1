import { TAU, temperatureIn } from '../../src/core/clock/stretch.ts';
import { fitDrift } from '../../src/core/heat/drift.ts';
import { firstTerm } from '../../src/core/heat/sphere.ts';
import { rowsOf, type Row } from './row.ts';

/** Bi, ζ₁ and C₁ of a sphere, as printed. */
const PRINTED = [
  [0.1, 0.5423, 1.0298],
  [1, 1.5708, 1.2732],
  [5, 2.5704, 1.787],
  [10, 2.8363, 1.9249],
] as const;

/** How a dough's temperature drifts, and what a ball of it conducts. */
export function driftRows(): Row[] {
  const newton = rowsOf('heat drift', 'port', 'Newton’s law, worked out apart');
  const cengel = 'Çengel, Heat and Mass Transfer, Table 4-2 (sphere)';
  const conduction = rowsOf('conduction', 'outside', cengel);
  const room = [{ hours: 0, celsius: 22 }];
  // Read by the minute, so that the readings outweigh what was believed of bowl and room before.
  const readings = Array.from({ length: 2000 }, (_, i) => {
    const hours = (3 * i) / 1999;
    const celsius = temperatureIn({ from: 27.5, toward: 22, tau: 8.114 }, hours);
    return { hours, celsius };
  });
  const fitted = fitDrift(readings, room, { tau: 8, start: 27 });
  const at3h = temperatureIn({ from: fitted.from, toward: 22 + fitted.offset, tau: fitted.tau }, 3);
  return [
    newton(
      '25.2 → 4 °C, τ 2.5, after 2.5 h, °C',
      temperatureIn({ from: 25.2, toward: 4, tau: TAU.fridgeLoaf }, 2.5),
      11.799,
    ),
    newton(
      '27.5 toward 22 °C, τ 8.114, after 3 h, °C',
      temperatureIn({ from: 27.5, toward: 22, tau: 8.114 }, 3),
      25.8,
    ),
    newton('the same, its τ fitted to readings, °C', at3h, 25.8),
    ...PRINTED.flatMap(([biot, zeta, c1]) => [
      conduction(`sphere, Bi ${biot}: ζ₁`, firstTerm(biot).zeta, zeta),
      conduction(`sphere, Bi ${biot}: C₁`, firstTerm(biot).c1, c1),
    ]),
  ];
}
