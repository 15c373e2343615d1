/** First term of transient conduction in a sphere: θ = C₁·e^{−ζ²·Fo}, for Fo > 0.2. */
export interface FirstTerm {
  /** Root of 1 − ζ·cot ζ = Bi in (0, π). */
  readonly zeta: number;
  readonly c1: number;
}

const STEPS = 60;

/**
 * First term for a Biot number h·R/k > 0, by halving: ζ·cot ζ falls all the way from 1 to −∞ on (0, π).
 * Source: Çengel, Heat and Mass Transfer, Table 4-2 (= Incropera, Table 5.1).
 *
 * @example
 * firstTerm(1).zeta // → 1.5708
 */
export function firstTerm(biot: number): FirstTerm {
  let [low, high] = [0, Math.PI];
  for (let step = 0; step < STEPS; step += 1) {
    const zeta = (low + high) / 2;
    if (1 - zeta / Math.tan(zeta) < biot) low = zeta;
    else high = zeta;
  }
  const zeta = (low + high) / 2;
  const c1 = (4 * (Math.sin(zeta) - zeta * Math.cos(zeta))) / (2 * zeta - Math.sin(2 * zeta));
  return { zeta, c1 };
}
