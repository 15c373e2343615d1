import type { BakePlace, Position } from '../../records/position.ts';
import type { Instant } from '../../units.ts';

/** The kitchen as plain data, as far as a plan that runs asks of it. */
export type LiveKitchen = Pick<Position, 'bakes' | 'oven' | 'lanes'>;

/**
 * Where a running bake stands in its plan: behind which touch, and since when. `hands`: they are at it;
 * `wait`: the wait after it runs; `over`: that wait was said to be over. `side`: touches inside the wait
 * that are done or in hand. `fixed`: what is promised to the iron, which nothing moves.
 */
export interface AtTouch {
  readonly touch: string;
  readonly is: 'hands' | 'wait' | 'over';
  readonly since: Instant;
  readonly side: number;
  /** The bench's own marks of this wait; after a "not yet" none is before the next look. */
  readonly marks: Readonly<Record<string, Instant>>;
  readonly fixed: Readonly<Record<string, Instant>>;
}

type Where = readonly [touch: string, is: AtTouch['is'], since?: string];

/** What a "not yet" says besides: that it is not ready before the next look. */
function marksOf({ stage, entered, marks }: BakePlace): AtTouch['marks'] {
  const part = stage.split('.')[0];
  const { look } = marks;
  const isAgain = `${part}.look` in entered || (part === 'proof' && 'proof.poke' in entered);
  if (!isAgain || look === undefined) return marks;
  const later = (at: Instant | undefined): Instant => Math.max(look, at ?? look);
  const { earliest, likely, latest } = marks;
  return { ...marks, earliest: later(earliest), likely: later(likely), latest: later(latest) };
}

/** Stages of a bake up to the oven, as a place in its plan; `since`: the stage it is counted from. */
const PLACES: Readonly<Record<string, Where>> = {
  'levain.ripening': ['feed levain', 'wait'],
  'levain.look': ['feed levain', 'over'],
  'levain.ripe': ['feed levain', 'over'],
  'mix.weigh': ['feed levain', 'over', 'levain.ripe'],
  'mix.first': ['mix', 'hands'],
  'mix.rest': ['mix', 'wait'],
  'mix.salt': ['salt and water', 'hands'],
  'mix.work': ['salt and water', 'hands', 'mix.salt'],
  'mix.temperature': ['salt and water', 'hands', 'mix.salt'],
  'bulk.between': ['salt and water', 'wait'],
  'bulk.fold': ['salt and water', 'wait'],
  'bulk.spread': ['salt and water', 'wait'],
  'bulk.scatter': ['salt and water', 'wait', 'bulk.spread'],
  'bulk.roll': ['salt and water', 'wait', 'bulk.spread'],
  'bulk.proving': ['salt and water', 'wait'],
  'bulk.look': ['salt and water', 'over'],
  'shape.divide': ['divide', 'hands'],
  'shape.preshape': ['divide', 'hands', 'shape.divide'],
  'shape.benchRest': ['divide', 'wait'],
  'shape.finalShape': ['shape', 'hands'],
  'shape.basket': ['shape', 'hands', 'shape.finalShape'],
  'shape.scoop': ['spoon', 'hands'],
  'proof.counter': ['shape', 'wait'],
  'proof.toFridge': ['to fridge', 'hands'],
  'proof.retard': ['to fridge', 'wait', 'proof.toFridge'],
  'proof.look': ['to fridge', 'wait', 'proof.toFridge'],
  'proof.warm': ['shape', 'wait'],
  'proof.soon': ['shape', 'wait'],
  'proof.poke': ['shape', 'over'],
};

const IN_HAND = ['bulk.fold', 'bulk.spread', 'bulk.scatter', 'bulk.roll'];
/** Stages of a bake that has nothing of its plan before it any more. */
const BEHIND = ['cool.handOver', 'cool.note', 'rescue.tray', 'done', 'ended'];
const NOT_BEGUN = ['read.plan', 'read.list', 'levain.feed'];

/** What is not yet done in a bake at the oven: its loads, by what waits and what the pots hold. */
function atOven(
  kitchen: LiveKitchen,
  names: readonly string[],
  { loaves, pots, now }: { loaves: readonly string[]; pots: number; now: Instant },
): Omit<AtTouch, 'side' | 'marks'> {
  const { oven } = kitchen;
  const has = (name: string): string | undefined => names.find((one) => one === name);
  const gone = loaves.filter((loaf) => !oven.waiting.includes(loaf)).length;
  const load = Math.ceil(gone / Math.max(1, pots));
  const lanes = Object.values(kitchen.lanes).filter((lane) =>
    lane.loaves.some((loaf) => loaves.includes(loaf)),
  );
  if (load === 0) {
    const touch = has('to fridge') ?? has('spoon') ?? 'shape';
    return { touch, is: 'over', since: now, fixed: {} };
  }
  const first = (of: readonly (Instant | undefined)[]): Instant =>
    Math.min(...of.map((at) => at ?? now));
  const lid = has(`lid lift ${load}`) ?? has(`vent ${load}`);
  const lidded = lanes.filter(({ stage }) =>
    ['lidded', 'lift', 'steaming', 'vent'].includes(stage),
  );
  if (lid !== undefined && lidded.length > 0) {
    const at = first(lidded.map(({ marks }) => marks['lid'] ?? marks['vent']));
    const since = first(lidded.map(({ entered }) => entered['lidded'] ?? entered['steaming']));
    return { touch: `load ${load}`, is: 'wait', since, fixed: { [lid]: at } };
  }
  const open = lanes.filter(({ stage }) => ['open', 'judge', 'unload'].includes(stage));
  if (open.length > 0) {
    const at = first(open.map(({ marks }) => marks['colour']));
    const since = first(open.map(({ entered }) => entered['open']));
    const touch = lid ?? `load ${load}`;
    return { touch, is: 'wait', since, fixed: { [`unload ${load}`]: at } };
  }
  const recovers = Object.values(kitchen.lanes).filter(({ stage }) => stage === 'recover');
  const since = first(recovers.map(({ entered }) => entered['recover']));
  return { touch: `unload ${load}`, is: 'wait', since: Math.min(since, now), fixed: {} };
}

/**
 * Where a bake stands among the touches of its plan (`names`, in their order); null: before the first.
 * `over`: nothing of it is left.
 */
export function atTouch(
  kitchen: LiveKitchen,
  bake: string,
  names: readonly string[],
  world: { readonly loaves: readonly string[]; readonly pots: number; readonly now: Instant },
): AtTouch | 'over' | null {
  const place = kitchen.bakes[bake];
  if (place === undefined || BEHIND.includes(place.stage)) return 'over';
  const { stage, entered, touches } = place;
  const marks = marksOf(place);
  if (NOT_BEGUN.includes(stage)) return null;
  const { now } = world;
  if (stage === 'oven.queued')
    return {
      ...atOven(kitchen, names, { ...world, loaves: place.loaves ?? world.loaves }),
      side: 0,
      marks: {},
    };
  if (stage === 'cool.cooling') {
    const touch = names.findLast((name) => name.startsWith('unload '))!;
    return { touch, is: 'wait', since: entered[stage] ?? now, side: 0, marks, fixed: {} };
  }
  const [touch, is, from = stage] = PLACES[stage]!;
  const since = Math.min(now, entered[from] ?? entered[stage] ?? now);
  const side = touches + (IN_HAND.includes(stage) ? 1 : 0);
  return { touch, is, since, side, marks, fixed: {} };
}
