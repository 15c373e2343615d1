import type { Instant } from '../units.ts';
import type { Reading } from './fact.ts';

/** A reading that stands, and when it was taken. */
export interface Seen {
  readonly at: Instant;
  readonly reading: Reading;
}

const EDGES = ['flat', 'domed', 'fallen'] as const;
const BUBBLES = ['none', 'some', 'many'] as const;
const GROWN = ['none', 'little', 'grown'] as const;
const RIMS = ['below', 'level', 'above'] as const;
const DENTS = { springs: 'springs', slowly: 'slow', stays: 'stays' } as const;

const oneOf = <T extends string>(values: readonly T[], value: string | undefined): T | null =>
  values.find((one) => one === value) ?? null;

/** The highest rise that is asked by eye, %: a dough that has risen further is told so too. */
const HIGHEST = 100;

/**
 * A rise told by picture or word, of the dough itself or of a sample of it in a jar.
 *
 * @example
 * riseByEye(100, 'dough') // → { what: 'rise', percent: 100, of: 'dough', atLeast: true }
 */
export const riseByEye = (percent: number, of: 'dough' | 'levain', jar = false): Reading => ({
  what: 'rise',
  percent,
  of,
  ...(jar ? { in: 'jar' } : {}),
  ...(percent >= HIGHEST ? { atLeast: true } : {}),
});

/**
 * What the answers of a look say as readings: a dough's rise, its edge, a cold loaf's growth, a dent.
 * Other answers, and a
 * levain's, which are words and no numbers, measure nothing here.
 *
 * @example
 * readingsOfLook({ rise: '50', top: 'smooth' }) // → [{ what: 'rise', percent: 50, of: 'dough' }]
 */
export function readingsOfLook(answers: Readonly<Record<string, string>>): Reading[] {
  const { rise, edge, bubbles, grown, rim, dent } = answers;
  const percent = /^\d+$/.test(rise ?? '') ? Number(rise) : null;
  const [seam, wall] = [oneOf(EDGES, edge), oneOf(BUBBLES, bubbles)];
  const [growth, stands] = [oneOf(GROWN, grown), oneOf(RIMS, rim)];
  const poke = DENTS[dent as keyof typeof DENTS] as (typeof DENTS)[keyof typeof DENTS] | undefined;
  return [
    ...(percent === null ? [] : [riseByEye(percent, 'dough')]),
    ...(seam === null || wall === null
      ? []
      : [{ what: 'edge', edge: seam, bubbles: wall } as const]),
    ...(growth === null && stands === null
      ? []
      : [
          {
            what: 'growth',
            grown: growth ?? 'unsure',
            ...(stands === null ? {} : { rim: stands }),
          } as const,
        ]),
    ...(poke === undefined ? [] : [{ what: 'poke', dent: poke } as const]),
  ];
}

/** Whether a reading tells how far a dough has risen. */
export const speaksOfRise = ({ reading }: Seen): boolean =>
  reading.what === 'edge' || (reading.what === 'rise' && reading.of === 'dough');

const QUARTER = 25;

/** One reading as a look's answers; {} where no look asks for it, as for a sample in a jar. */
function answersIn(reading: Reading): Readonly<Record<string, string>> {
  if (reading.what === 'rise' && reading.of === 'dough' && reading.in !== 'jar') {
    const quarters = Math.floor(Math.min(HIGHEST, Math.max(0, reading.percent)) / QUARTER);
    return { rise: String(quarters * QUARTER) };
  }
  if (reading.what === 'edge') return { edge: reading.edge, bubbles: reading.bubbles };
  return {};
}

/**
 * What readings of a dough say as the answers of a look, the later one where two speak of the same: the
 * way back of `readingsOfLook`. A rise goes to the last quarter that it has passed.
 *
 * @example
 * answersOf([{ what: 'rise', percent: 80, of: 'dough' }]) // → { rise: '75' }
 */
export const answersOf = (readings: readonly Reading[]): Readonly<Record<string, string>> =>
  Object.assign({}, ...readings.map(answersIn)) as Record<string, string>;
