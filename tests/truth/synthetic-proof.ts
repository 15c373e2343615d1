import { readyCurve } from '../../src/core/clock/hours-until.ts';
import { growthForProof, proofIndex } from '../../src/core/clock/proof-index.ts';
import { growthForRise } from '../../src/core/clock/rise.ts';
import { saltAndRye } from '../../src/core/clock/salt-and-rye.ts';
import { temperatureAt, type Path } from '../../src/core/clock/stretch.ts';
import { theta } from '../../src/core/clock/theta.ts';
import { dentEvidence, dentOdds, type Dent } from '../../src/core/readiness/evidence.ts';
import { openPosterior, quantile, weighIn } from '../../src/core/readiness/posterior.ts';
import { makeDice, type Simulated } from './synthetic.ts';

/**
 * Synthetic warm proofs: bulk ended at 90 %, 36 min on the bench at 25.4 °C, then a room around
 * 22.5 °C. The filter knows the dough but not what handling did to it (sd .20); it is given pokes.
 */
const HORIZON = 30;
const BENCH = 0.6;
const POKES = [0.75, 0.95, 1.1];
const HANDLING_SD = 0.2;
const MINUTES = 60;

interface Outcome {
  readonly truth: number;
  readonly eta: readonly number[];
  readonly covered: readonly boolean[];
}

type Dice = ReturnType<typeof makeDice>;

const prove = (dice: Dice): Outcome | null => {
  const p = dice.between(0.05, 0.12);
  const factor = saltAndRye(dice.between(1.6, 2.2), dice.between(0, 0.25));
  const room = dice.normal(22.5, 2);
  const lnV = dice.normal(0, 0.25);
  const path: Path = [
    { hours: BENCH, from: 25.4, toward: 25.4, tau: 4, factor },
    { hours: HORIZON, from: 25.4, toward: room, tau: 4, factor },
  ];
  const grown = growthForRise(0.9, p, 25.4);
  const curve = readyCurve(path, 0, HORIZON, (c) => growthForProof(1, p, c) - grown);
  const handled = Math.exp(lnV + dice.normal(0, HANDLING_SD));
  const truth = curve(handled);
  if (truth === null) return null;
  const hours = (ln: number): number => curve(Math.exp(ln)) ?? HORIZON;
  const poke = (at: number): Dent => {
    const q = proofIndex(grown + handled * theta(path, 0, at), p, temperatureAt(path, at));
    const { springs, slow } = dentOdds(q);
    const thrown = dice.between(0, 1);
    return thrown < springs ? 'springs' : thrown < springs + slow ? 'slow' : 'stays';
  };
  let posterior = openPosterior({ mean: lnV, sd: HANDLING_SD });
  const eta: number[] = [];
  const covered: boolean[] = [];
  for (const share of [...POKES, null]) {
    const middle = hours(quantile(posterior, 0.5));
    eta.push(middle);
    covered.push(
      hours(quantile(posterior, 0.9)) <= truth && truth <= hours(quantile(posterior, 0.1)),
    );
    if (share === null) break;
    const at = share * eta[0]!;
    const seen = { theta: theta(path, 0, at), p, celsius: temperatureAt(path, at) };
    posterior = weighIn(posterior, dentEvidence(poke(at), grown, seen));
  }
  return { truth, eta, covered };
};

/** RMSE of the ETA in minutes and coverage of the 80 % interval after 0 to 3 pokes. */
export function simulateProof(seed: number, doughs: number): Simulated {
  const dice = makeDice(seed);
  const outcomes = Array.from({ length: doughs }, () => prove(dice)).filter(
    (o): o is Outcome => o !== null,
  );
  const mean = (values: readonly number[]): number =>
    values.reduce((sum, one) => sum + one, 0) / values.length;
  const middle = mean(outcomes.map(({ truth }) => truth));
  const after = [0, ...POKES].map((_, i) => i);
  return {
    rmse: after.map(
      (i) => MINUTES * Math.sqrt(mean(outcomes.map(({ truth, eta }) => (eta[i]! - truth) ** 2))),
    ),
    coverage: after.map((i) => mean(outcomes.map(({ covered }) => Number(covered[i])))),
    fixed: MINUTES * Math.sqrt(mean(outcomes.map(({ truth }) => (truth - middle) ** 2))),
    doughs: outcomes.length,
  };
}
