import { LANE_STAGES } from '../records/stage.ts';
import { REMEDIES, type Remedy, type RemedyStage } from './remedies.ts';

/** Where a bread stands: its own stage, and those of the oven and of the lanes that have its loaves. */
export interface RemedyPlace {
  /** Null: the oven alone is meant. */
  readonly bake: string | null;
  readonly oven: string;
  /** Stages of lanes that have loaves in them. */
  readonly lanes: readonly string[];
}

const BULK: readonly RemedyStage[] = ['folds', 'bulk', 'sheet'];
const SHAPING: readonly RemedyStage[] = ['divide', 'preshape', 'basket'];
const DOOR: readonly RemedyStage[] = ['basket', 'cold', 'proof'];
const COOL: readonly RemedyStage[] = ['cool', 'handOver', 'cut'];

/** What may show itself at each part of a bake, by the first word of its stage. */
const PARTS: Readonly<Record<string, readonly RemedyStage[]>> = {
  levain: ['levain'],
  mix: ['mix'],
  bulk: BULK,
  shape: SHAPING,
  proof: DOOR,
  cool: COOL,
  rescue: ['bulk'],
};

const inLane = (stage: string): boolean => (LANE_STAGES as readonly string[]).includes(stage);

/**
 * The remedies that belong where a bread stands, in groups that are shown one under the other: what bakes
 * comes before what waits for the oven.
 *
 * @example
 * remediesAt({ bake: 'levain.look', oven: 'off', lanes: [] }).map((group) => group.length) // → [2]
 */
export function remediesAt({ bake, oven, lanes }: RemedyPlace): readonly (readonly Remedy[])[] {
  const bakes = lanes.some(inLane);
  const atOven = bake === null || bake === 'oven.queued';
  const waits = atOven && oven !== 'turnOff' && (bake !== null || oven !== 'off');
  const groups: readonly (readonly RemedyStage[])[] = atOven
    ? [...(bakes ? [['oven'] as const] : []), ...(waits ? [DOOR] : [])]
    : [PARTS[bake.split('.')[0] as string] ?? []];
  return groups
    .map((stages) => REMEDIES.filter(({ stage }) => stages.includes(stage)))
    .filter((group) => group.length > 0);
}
