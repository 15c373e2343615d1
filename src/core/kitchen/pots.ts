import type { Grams } from '../units.ts';
import type { Equipment, Pot as Described } from './equipment.ts';
import { potHolds } from './pot-holds.ts';
import { takesHeat } from './places.ts';

/** What the pots are called, by how many there are: as they stand in the oven, then by number. */
const NAMES = {
  1: ['pot'],
  2: ['left', 'right'],
  3: ['left', 'middle', 'right'],
  4: ['backLeft', 'backRight', 'frontLeft', 'frontRight'],
  5: ['first', 'second', 'third', 'fourth', 'fifth'],
  6: ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'],
} as const;
/** A key of the catalogue: what a pot is called aloud and on its lane. */
export type PotName = (typeof NAMES)[keyof typeof NAMES][number];

/** By its place in the kitchen's list, so that it stays the same when another pot drops out. */
export type PotId = `pot-${1 | 2 | 3 | 4 | 5 | 6}`;

/**
 * One pot as a lane of the oven. `holds`: most dough it takes, g; null where nobody said its size,
 * and then nothing is held against it. `material` and `cold` as in the kitchen's equipment.
 */
export interface NamedPot {
  readonly id: PotId;
  readonly name: PotName;
  readonly material: Described['material'];
  readonly cold: Described['cold'];
  readonly lid: boolean;
  readonly holds: Grams | null;
}

/**
 * The kitchen's pots as lanes, in the order they were told: 1 to 6, named as they stand. Every one
 * has a lid: a pot without one bakes as a tin does.
 *
 * @throws Error `A kitchen has 1 to 6 pots.`
 */
export function potsOf({ pots }: Pick<Equipment, 'pots'>): readonly NamedPot[] {
  const names: readonly PotName[] | undefined = NAMES[pots.length as keyof typeof NAMES];
  if (names === undefined) throw new Error('A kitchen has 1 to 6 pots.');
  return pots.map(({ material, cold, litres }, i) => ({
    id: `pot-${i + 1}` as PotId,
    name: names[i]!,
    material,
    cold,
    lid: true,
    holds: litres === null ? null : potHolds(litres),
  }));
}

/** Whether a piece of so many grams of dough fits: it fills the pot just to what it holds, or less. */
export const fitsPot = ({ holds }: Pick<NamedPot, 'holds'>, grams: Grams): boolean =>
  holds === null || grams <= holds;

/** The pots a piece of so many grams fits, in their order; none where it fits no pot. */
export const potsFor = <P extends Pick<NamedPot, 'holds'>>(
  pots: readonly P[],
  grams: Grams,
): readonly P[] => pots.filter((pot) => fitsPot(pot, grams));

/**
 * Whether cold dough may go into this pot while it is hot: `allowed` in bare iron or where its maker
 * allows it, `never` in clay or glass, or where the maker forbids it, else `ask`: a cold shock cracks
 * pots and throws shards.
 * Source: common practice; pot makers' care leaflets, from memory.
 *
 * @example
 * coldDough({ material: 'bareIron', cold: null }) // → 'allowed'
 * coldDough({ material: 'enamel', cold: null }) // → 'ask'
 * coldDough({ material: 'clay', cold: null }) // → 'never'
 */
export function coldDough(pot: Pick<Described, 'material' | 'cold'>): 'allowed' | 'ask' | 'never' {
  if (pot.material === 'bareIron' || pot.cold === true) return 'allowed';
  return takesHeat({ litres: null, knob: null, ...pot }) ? 'ask' : 'never';
}

/** Cold dough without a question: in bare iron, or where the maker allows it, and in no other pot. */
export const coldDoughAllowed = (pot: Pick<Described, 'material' | 'cold'>): boolean =>
  coldDough(pot) === 'allowed';
