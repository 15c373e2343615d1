import { inTurn } from '../../src/core/oven/in-turn.ts';
import type { OvenAct } from '../../src/core/records/fact.ts';
import type { Kitchen } from './kitchen.ts';
import { stageOf } from './stage-of.ts';

/** Between its look and the pot. */
const AFTER_LOOK: readonly string[] = ['before', 'score', 'load'];

export type TurnAct = Extract<OvenAct, 'loafFirst' | 'loafLater'>;

/**
 * Whether a waiting loaf's turn may change so now. A loaf whose dent was looked at goes in before any
 * other: one that came to the door in its place would be scored and loaded on what the first one showed.
 */
export function mayTurn({ oven }: Kitchen, act: TurnAct, loaf: string): boolean {
  const { waiting, turns, answers } = oven.context;
  const stage = stageOf(oven);
  const looked = stage === 'poke' ? Object.keys(answers).length > 0 : AFTER_LOOK.includes(stage);
  if (!looked) return true;
  const others = waiting.filter((one) => one !== loaf);
  const said = { ...turns, [loaf]: act === 'loafFirst' ? 'first' : 'later' } as const;
  return inTurn([...others, loaf], said)[0] === waiting[0];
}
