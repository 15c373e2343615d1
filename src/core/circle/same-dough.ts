import type { Formula } from '../formula/formula.ts';
import { levainShares } from '../formula/levain-shares.ts';

/** Shares that read the same at one decimal of a percent are the same dough. Judgement. */
const ALIKE = 0.05;

const near = (a: number, b: number): boolean => Math.abs(a - b) <= ALIKE;

const plainName = (name: string): string => name.trim().toLowerCase().replace(/\s+/g, ' ');

/** Each flour by its name, its share of all flour and its part in the levain, %. */
const floursOf = ({ flours, levain }: Formula) => {
  const shares = levainShares(flours, levain);
  return flours
    .map(({ name, grain, pct }, i) => ({
      name: plainName(name),
      grain,
      pct,
      inLevain: (shares[i] ?? 0) * 100,
    }))
    .filter(({ pct }) => pct > 0)
    .sort((a, b) => (a.name < b.name ? -1 : 1));
};

const feedOf = ({ levain: { feed } }: Formula): number => (feed.flour / feed.seed) * 100;

/**
 * Whether two breads are one dough until their fillings go in: the same flours by share, water and the
 * part of it that comes with the salt, salt, and levain with its feed. What a flour is called counts,
 * not its id: a copy of a formula has ids of its own.
 */
export function isSameDough(a: Formula, b: Formula): boolean {
  const [ours, theirs] = [floursOf(a), floursOf(b)];
  return (
    ours.length === theirs.length &&
    ours.every((flour, i) => {
      const other = theirs[i]!;
      return (
        flour.name === other.name &&
        flour.grain === other.grain &&
        near(flour.pct, other.pct) &&
        near(flour.inLevain, other.inLevain)
      );
    }) &&
    near(a.hydration, b.hydration) &&
    near(a.secondWater * a.hydration, b.secondWater * b.hydration) &&
    near(a.salt, b.salt) &&
    near(a.levain.hydration * 100, b.levain.hydration * 100) &&
    near(feedOf(a), feedOf(b))
  );
}
