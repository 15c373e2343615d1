import type { LoafChange } from './loaf-names.ts';

/** The parts of a bake in their order, as they stand before the dot of a stage. */
const PARTS = ['read', 'levain', 'mix', 'bulk', 'shape', 'proof', 'oven', 'cool'] as const;
export type BakePart = (typeof PARTS)[number];

/** The last part of a bake in which a change can still be made. Common practice, no source. */
const HEEDED_IN: Readonly<Record<LoafChange, BakePart>> = {
  warmerDough: 'mix',
  coolerDough: 'mix',
  longerBulk: 'bulk',
  shorterBulk: 'bulk',
  drierFilling: 'bulk',
  tighterSkin: 'shape',
  lessFlour: 'shape',
  coverSkin: 'proof',
  longerProof: 'proof',
  shorterCold: 'proof',
  bakeLonger: 'oven',
  hotterOven: 'oven',
  coolerOven: 'oven',
  trayBelow: 'oven',
  coolLonger: 'cool',
};

const partOf = (stage: string): number => PARTS.indexOf(stage.split('.')[0] as BakePart);

/** Whether a change is about the end of the bulk, where waiting decides it. */
export const isOfBulk = (change: LoafChange | null): boolean =>
  change === 'longerBulk' || change === 'shorterBulk';

/**
 * Whether a bake that stands here can still make a change.
 *
 * @example
 * canHeed('longerBulk', 'shape.divide') // → false
 * canHeed('coolerOven', 'proof.retard') // → true
 */
export const canHeed = (change: LoafChange, stage: string): boolean =>
  partOf(stage) >= 0 && partOf(stage) <= PARTS.indexOf(HEEDED_IN[change]);
