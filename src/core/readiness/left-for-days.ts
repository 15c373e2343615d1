import { IN_BOWL } from '../records/in-bowl.ts';
import type { BakeStage } from '../records/stage.ts';
import { HOUR, type Hours, type Instant } from '../units.ts';

/** What was left: a levain in its jar, dough on the counter, loaves in the fridge. */
export type Left = 'levain' | 'dough' | 'loaves';

interface Keeps {
  readonly what: Left;
  /** The stages it goes through; the first entry into any of them is when it began. */
  readonly stages: readonly BakeStage[];
  readonly most: Hours;
}

/**
 * Hours after which nobody bakes with it, far beyond the longest stage in use (levain 16 h, bulk
 * 8 h and 17 h when cold, fridge 48 h). Judgement.
 */
const KEEPS: readonly Keeps[] = [
  { what: 'levain', stages: ['levain.ripening', 'levain.look', 'levain.ripe'], most: 48 },
  {
    what: 'dough',
    stages: [
      ...IN_BOWL,
      'shape.divide',
      'shape.preshape',
      'shape.benchRest',
      'shape.finalShape',
      'shape.basket',
      'shape.scoop',
      'proof.counter',
      'proof.toFridge',
      'proof.warm',
      'proof.soon',
      'proof.poke',
      'oven.queued',
    ],
    most: 30,
  },
  { what: 'loaves', stages: ['proof.retard', 'proof.look', 'oven.queued'], most: 96 },
];

/** Loaves that stood out after the fridge: what came before was in the cold. */
const OUT: Keeps = { what: 'loaves', stages: ['proof.warm', 'proof.soon', 'proof.poke'], most: 30 };

/**
 * What has been left for days at this stage, or null. A wait that still runs says when to look, as
 * in a cold kitchen: then nothing is given up.
 *
 * @param deadline of the stage's own wait, or null
 */
export function leftForDays(
  stage: string,
  entered: Readonly<Record<string, Instant>>,
  deadline: Instant | null,
  now: Instant,
): Left | null {
  const keeps =
    OUT.stages.includes(stage as BakeStage) && 'proof.retard' in entered
      ? OUT
      : KEEPS.find(({ stages }) => (stages as readonly string[]).includes(stage));
  if (keeps === undefined || (deadline !== null && deadline > now)) return null;
  const began = Math.min(...keeps.stages.flatMap((name) => entered[name] ?? []));
  return now - began > keeps.most * HOUR ? keeps.what : null;
}
