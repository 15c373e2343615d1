import type { World } from './synthetic.ts';
import { year, type Starter, type Told } from './year.ts';

const SEEDS = [1, 2, 3, 4, 5];

const mean = (values: readonly number[]): number =>
  values.reduce((sum, one) => sum + one, 0) / values.length;

const line = (what: string, starter: Starter, world: World): string => {
  const runs = SEEDS.map((seed) => year(starter, world, seed));
  const each = (of: (one: Told) => number, digits: number): string =>
    [0, 1, 2, 3].map((i) => mean(runs.map((r) => of(r.quarters[i]!))).toFixed(digits)).join(' / ');
  const whole = (of: (one: Told) => number): string => mean(runs.map(of)).toFixed(0);
  const gains = runs.map(({ gain }) => 100 * gain);
  const gain = [mean(gains), Math.min(...gains), Math.max(...gains)].map((g) => g.toFixed(0));
  return `| ${[
    what,
    whole((one) => one.unlearned),
    whole((one) => one.carried),
    `${gain[0]!} % (${gain[1]!} to ${gain[2]!})`,
    each((one) => one.carried, 0),
    each((one) => 100 * one.share, 0),
    each((one) => one.coverage, 2),
  ].join(' | ')} |`;
};

/**
 * The first forecast over a simulated year of 120 bakes, five fixed seeds, as a table. Kitchen and
 * starters are invented: it shows what the rule makes of them and claims nothing of real ones.
 */
export const yearReport = (): string =>
  [
    '| invented year, first forecast | nothing learned, min | carried over, min | less by (seeds) | carried over by quarter, min | and as % of the true hours | 80 % interval covers by quarter |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    line('starter walks, right model', 'walks', 'right'),
    line('starter walks, wrong model', 'walks', 'wrong'),
    line('walks near its usual speed, right model', 'homes', 'right'),
    line('walks near its usual speed, wrong model', 'homes', 'wrong'),
    line('another vigour each bake, right model', 'leaps', 'right'),
  ].join('\n');
