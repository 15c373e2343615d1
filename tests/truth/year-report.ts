import type { World } from './synthetic.ts';
import { MACHINE_SEEDS, machineGain, machineYear, rms } from './machine-year.ts';
import { year, type Told } from './year.ts';
import type { Starter } from './year-days.ts';

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
    line('another vigour each bake, wrong model', 'leaps', 'wrong'),
  ].join('\n');

const machineLine = (what: string, starter: Starter): string => {
  const runs = MACHINE_SEEDS.map((seed) => machineYear(starter, seed));
  const each = (of: (one: (typeof runs)[number]) => number): string =>
    runs.map((one) => of(one).toFixed(0)).join(' / ');
  const gains = runs.map((one) => 100 * machineGain(one));
  return `| ${[
    what,
    each(({ unlearned }) => rms(unlearned)),
    each(({ carried }) => rms(carried)),
    `${gains.map((gain) => gain.toFixed(0)).join(' / ')} (${mean(gains).toFixed(0)})`,
  ].join(' | ')} |`;
};

/**
 * The same year on the real machine: readings keyed as facts, the first forecast read back from them.
 * Invented doughs, fixed seeds; it claims nothing of real ones.
 */
export const machineYearReport = (): string =>
  [
    `| invented year on the real machine, 120 bakes, seeds ${MACHINE_SEEDS.join(' / ')} | nothing learned, min | carried over, min | less by, % (mean) |`,
    '| --- | --- | --- | --- |',
    machineLine('starter walks, sd .10 a bake', 'walks'),
    machineLine('another vigour each bake, sd .25', 'leaps'),
  ].join('\n');
