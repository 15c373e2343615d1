import { temperatureAt, type Path } from '../clock/stretch.ts';
import { theta } from '../clock/theta.ts';
import type { Hours } from '../units.ts';
import type { Belief } from './belief.ts';
import { domeEvidence, riseAtLeast, riseEvidence, type Seen } from './evidence.ts';
import { openPosterior, weighIn, type Posterior } from './posterior.ts';

/** What was seen of a dough, `hours` from the minute levain met flour: its rise, %, or its edge. */
export type DoughSign = { readonly hours: Hours } & (
  | { readonly rise: number; readonly inJar: boolean; readonly atLeast?: boolean }
  | { readonly domed: boolean }
);

/** The dough's way, that of a sample of it in a jar, and its prefermented share of flour (0–1). */
export interface DoughWay {
  readonly path: Path;
  readonly jar: Path;
  readonly p: number;
}

/** Θ along a path at ever later hours: each stretch of it is walked once. */
const walk = (path: Path) => {
  let [at, sum] = [0, 0];
  return (hours: Hours): Hours => {
    sum += theta(path, at, hours);
    at = hours;
    return sum;
  };
};

/**
 * What is believed of ln v once the signs of a dough are weighed in, whatever their order. A sample
 * in a jar cools faster than the bowl: its rise is weighed on the jar's own clock.
 */
export function weighDough(
  prior: Belief,
  signs: readonly DoughSign[],
  { path, jar, p }: DoughWay,
): Posterior {
  const ways = { bowl: { path, theta: walk(path) }, jar: { path: jar, theta: walk(jar) } };
  return signs
    .toSorted((a, b) => a.hours - b.hours)
    .reduce((posterior, sign) => {
      const way = ways['rise' in sign && sign.inJar ? 'jar' : 'bowl'];
      const seen: Seen = {
        theta: way.theta(sign.hours),
        p,
        celsius: temperatureAt(way.path, sign.hours),
      };
      const evidence =
        'rise' in sign
          ? (sign.atLeast ? riseAtLeast : riseEvidence)(sign.rise, seen)
          : domeEvidence(sign.domed, seen);
      return weighIn(posterior, evidence);
    }, openPosterior(prior));
}
