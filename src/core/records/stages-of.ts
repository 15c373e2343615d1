import type { Process, Shaping, Vessel } from '../formula/formula.ts';
import { isWarm } from '../formula/is-warm.ts';
import { BAKE_STAGES, JOINS, OVEN_STAGES } from './stage.ts';
import type { BakeStage, Join, OvenStage } from './stage.ts';

const ROUND: readonly BakeStage[] = [
  'shape.divide',
  'shape.preshape',
  'shape.benchRest',
  'shape.finalShape',
  'shape.basket',
];
const SCOOP: readonly BakeStage[] = ['shape.scoop'];
const COLD: readonly BakeStage[] = [
  'proof.counter',
  'proof.toFridge',
  'proof.retard',
  'proof.look',
];
const WARM: readonly BakeStage[] = ['proof.warm', 'proof.soon', 'proof.poke'];
const BETWEEN: readonly BakeStage[] = ['bulk.between'];
const FOLDED: readonly BakeStage[] = ['bulk.fold'];
const SHEET: readonly BakeStage[] = ['bulk.spread', 'bulk.scatter', 'bulk.roll'];

const notShaped: Readonly<Record<Shaping, readonly BakeStage[]>> = { round: SCOOP, scoop: ROUND };

/** What a process never passes. */
const skipped = (process: Process): readonly BakeStage[] => [
  ...notShaped[process.shaping],
  ...(isWarm(process) ? COLD : WARM),
  ...(process.touches.some(({ kind }) => kind === 'laminate') ? [] : SHEET),
  ...(process.touches.some(({ kind }) => kind === 'fold') ? [] : FOLDED),
  ...(process.touches.length > 0 ? [] : BETWEEN),
];

/** The stages a bake passes on its way, in the order they come; a way out is not among them. */
export const bakeStagesOf = (process: Process): readonly BakeStage[] => {
  const none = [...skipped(process), 'rescue.tray', 'done', 'ended'];
  return BAKE_STAGES.filter((stage) => !none.includes(stage));
};

const NOT_IN: Readonly<Record<Vessel, readonly OvenStage[]>> = {
  pot: ['steaming', 'vent'],
  stone: ['lidded', 'lift'],
  tin: ['lidded', 'lift', 'steaming', 'vent'],
};

/** The stages the oven passes with such a load. */
export const ovenStagesOf = (vessel: Vessel): readonly OvenStage[] =>
  OVEN_STAGES.filter((stage) => !NOT_IN[vessel].includes(stage));

/** Where a bake of this process may be joined. */
export const joinsOf = (process: Process): readonly Join[] => {
  const none = skipped(process);
  return JOINS.filter((join) => !none.includes(join));
};
