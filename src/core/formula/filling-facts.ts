import type { Filling, FillingFrom } from './formula.ts';

/** Kinds of filling that something is known of; their words are in speech/words/filling-kinds.ts. */
export const FILLING_KINDS = [
  'driedFruit',
  'candiedPeel',
  'nuts',
  'seeds',
  'sesame',
  'chocolate',
  'dryOlives',
  'brinedOlives',
  'driedTomato',
  'inOil',
  'driedHerbs',
  'freshHerbs',
  'hardCheese',
  'freshCheese',
  'roastVegetables',
  'cookedPotato',
  'rawOnion',
  'cookedGrain',
  'rolledOats',
  'curedMeat',
  'cookedEgg',
  'freshFruit',
] as const;
export type FillingKind = (typeof FILLING_KINDS)[number];

/** What is known of a kind of filling, to begin with: its packet and its baker know better. */
export interface FillingFacts {
  /** Salt and water within it, % of its weight. From memory: read the packet. */
  readonly brings: NonNullable<Filling['brings']>;
  /** How it may stand. Where it is not sure, as what spoils: judgement. */
  readonly keeps: Filling['keeps'];
  readonly from: FillingFrom;
  /** What the label has to name; of a kind with many members, the one to look up. */
  readonly allergens: readonly string[];
}

const dry = (salt: number, water: number, allergens: readonly string[] = []): FillingFacts => ({
  brings: { salt, water },
  keeps: 'shelf',
  from: 'shelf',
  allergens,
});
const spoils = (salt: number, water: number, allergens: readonly string[] = []): FillingFacts => ({
  brings: { salt, water },
  keeps: 'perishable',
  from: 'fridge',
  allergens,
});

/**
 * The table. Salt and water: from memory, in round numbers; hard cheese's 1.7 % of salt is general
 * knowledge too, and packets differ by half. What spoils is as the care page has it (fresh and soft
 * cheese, cooked egg, meat, vegetables, cooked grain, potato, what stands in oil or brine); fresh herbs
 * and cut fruit are put with it to be on the safe side (judgement). Hard, aged, pasteurised cheese may stand
 * at up to 30 °C (Bishop & Smukowski 2006). Allergens: those that US, EU and Canadian law has named;
 * local rules come first.
 */
export const FILLING_FACTS: Readonly<Record<FillingKind, FillingFacts>> = {
  driedFruit: dry(0, 18, ['sulphites, if the packet says so']),
  candiedPeel: dry(0, 20, ['sulphites, if the packet says so']),
  nuts: dry(0, 4, ['tree nuts (name the nut)']),
  seeds: dry(0, 5),
  sesame: dry(0, 5, ['sesame']),
  chocolate: dry(0, 1, ['milk, if the packet says so', 'soya, if the packet says so']),
  // From a new pack; in brine, or in a pack that is open, they spoil (docs/decisions/olives.md).
  dryOlives: dry(7, 40),
  brinedOlives: spoils(3.5, 75),
  driedTomato: dry(3, 15, ['sulphites, if the packet says so']),
  inOil: spoils(2, 45),
  driedHerbs: dry(0, 8),
  freshHerbs: spoils(0, 85),
  hardCheese: {
    brings: { salt: 1.7, water: 36 },
    keeps: 'hardCheese',
    from: 'fridge',
    allergens: ['milk'],
  },
  freshCheese: spoils(2.5, 55, ['milk']),
  roastVegetables: spoils(0.5, 80),
  cookedPotato: spoils(0, 77),
  rawOnion: spoils(0, 89),
  cookedGrain: spoils(0, 70, ['gluten (name the grain)']),
  rolledOats: dry(0, 9, ['gluten (oats)']),
  curedMeat: spoils(4.5, 45),
  cookedEgg: spoils(0.4, 75, ['egg']),
  freshFruit: spoils(0, 85),
};

/** A filling of a kind, with what is known of it; `id`, `name` and `pct` are the baker's. */
export const fillingOf = (
  kind: FillingKind,
  own: Pick<Filling, 'id' | 'name' | 'pct'>,
): Filling => ({ ...own, ...FILLING_FACTS[kind] });
