import type { StateValue } from 'xstate';
import type { StageMeta } from '../meta.ts';

/** What a snapshot needs to say where it stands. */
export interface Stateful {
  readonly value: StateValue;
  getMeta(): Record<string, unknown>;
}

/** `{ levain: 'feed' }` → `levain.feed`; `'off'` → `off`. */
export const stageOf = ({ value }: Pick<Stateful, 'value'>): string => {
  if (typeof value === 'string') return value;
  const [part, inner] = Object.entries(value)[0] ?? [];
  if (part === undefined || inner === undefined) throw new Error('A machine stands nowhere.');
  return `${part}.${stageOf({ value: inner })}`;
};

/** The way back: `levain.feed` → `{ levain: 'feed' }`. */
export const valueOf = (stage: string): StateValue => {
  const dot = stage.indexOf('.');
  return dot < 0 ? stage : { [stage.slice(0, dot)]: valueOf(stage.slice(dot + 1)) };
};

/** What is to be known of the stage a machine stands in. */
export const metaOf = (snapshot: Stateful): StageMeta =>
  Object.assign({}, ...Object.values(snapshot.getMeta())) as StageMeta;
