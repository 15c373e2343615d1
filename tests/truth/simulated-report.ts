import { simulateProof } from './synthetic-proof.ts';
import { simulate, type Simulated } from './synthetic.ts';

const SEEDS = [1, 2, 3, 4, 5];
/** Of one seed: 4,000 doughs in all. */
const DOUGHS = 800;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, one) => sum + one, 0) / values.length;

const line = (what: string, run: (seed: number, doughs: number) => Simulated): string => {
  const runs = SEEDS.map((seed) => run(seed, DOUGHS));
  const each = (of: (one: Simulated) => readonly number[], digits: number): string =>
    [0, 1, 2, 3].map((n) => mean(runs.map((one) => of(one)[n]!)).toFixed(digits)).join(' / ');
  const fixed = mean(runs.map((one) => one.fixed)).toFixed(0);
  return `| ${what} | ${each((one) => one.rmse, 0)} | ${fixed} | ${each((one) => one.coverage, 2)} |`;
};

/**
 * What the readiness filter makes of 4,000 synthetic doughs, as a table. It holds for these doughs
 * and claims nothing of real ones.
 */
export const simulatedReport = (): string =>
  [
    '| synthetic doughs | error after 0/1/2/3 signs, min | best fixed clock, min | 80 % interval covers |',
    '| --- | --- | --- | --- |',
    line('bulk, right model', (seed, doughs) => simulate('right', seed, doughs)),
    line('bulk, wrong model', (seed, doughs) => simulate('wrong', seed, doughs)),
    line('warm proof, pokes', simulateProof),
  ].join('\n');
