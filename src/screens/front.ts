import type { Call } from '../../machines/attention/attention.ts';
import { wanted } from '../../machines/kitchen/dues.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { LogRecord } from '../core/records/record.ts';
import { bakeOf } from './focus.ts';

/**
 * Which bench a ringing call brings to the front; null: the one on show stays. A hushed hot call
 * keeps its place until its act is done: only another hot one takes the screen from it, the others
 * are heard, captioned and stand beside it.
 */
export function frontOf(kitchen: Kitchen, ringing: Call | null, shown: string | null) {
  const bake = ringing && bakeOf(kitchen, ringing.who);
  if (!ringing || bake === null || bake === shown) return null;
  const burns = kitchen.attention.context.calls.some(
    ({ kind, who }) => kind === 'hot' && bakeOf(kitchen, who) === shown,
  );
  return burns && ringing.kind !== 'hot' ? null : bake;
}

/**
 * The bench a page opens on: what rings or has called longest, else the bake last worked at, else
 * the only one. Null: the start.
 */
export function openingBake(kitchen: Kitchen, records: readonly LogRecord[]): string | null {
  const running = Object.keys(kitchen.bakes);
  const call = wanted(kitchen).ringing ?? kitchen.attention.context.calls[0];
  const calls = call && bakeOf(kitchen, call.who);
  if (calls) return calls;
  const last = records.findLast(({ fact }) => fact.kind === 'press' || fact.kind === 'start')?.fact;
  const who = last?.kind === 'press' ? last.who : last?.kind === 'start' ? last.bake : null;
  const worked = who === null ? null : bakeOf(kitchen, who);
  return worked ?? (running.length === 1 ? running[0]! : null);
}
