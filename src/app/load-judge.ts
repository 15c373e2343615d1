import type { Judge } from './judge.ts';

let judging: Promise<Judge> | null = null;

/** The judge with its models: asked for after the first paint, and loaded once. */
export const loadJudge = (): Promise<Judge> =>
  (judging ??= import('./judge.ts').then(({ judge }) => judge));
