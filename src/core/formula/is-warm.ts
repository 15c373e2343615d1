import type { Process } from './formula.ts';

/** Shaped loaves rise warm where nothing is retarded. */
export const isWarm = ({ retard }: Pick<Process, 'retard'>): boolean => retard === 0;
