import type { LogRecord } from './record.ts';

/** Facts in the order in which one tablet wrote them. */
export type Log = readonly LogRecord[];

/** What a tablet has, or a saved file: the log it goes on with, and those of other tablets, each by itself. */
export interface Logs {
  readonly own: Log;
  readonly others: readonly Log[];
}

/** Two facts of one id that say different things: one of them was changed by hand. */
export interface Clash {
  readonly id: string;
  /** In the file. */
  readonly seq: number;
}

export type Merged =
  | {
      readonly logs: Logs;
      /** Whether the file's own log is now the one that is gone on with. */
      readonly goesOn: boolean;
      /** What was here in no log. */
      readonly fresh: Log;
      readonly clash: null;
    }
  | { readonly logs: null; readonly clash: Clash };

/** Whether a log goes on from another one, or is the same: each of its facts stands in its place there. */
export const goesOn = (one: Log, longer: Log): boolean =>
  one.length <= longer.length && one.every(({ fact }, i) => longer[i]!.fact.id === fact.id);

/** Of logs those that no other goes on from, each once, in their order. */
function ends(logs: readonly Log[]): readonly Log[] {
  return logs.filter(
    (one, i) =>
      one.length > 0 &&
      !logs.some(
        (other, j) => j !== i && goesOn(one, other) && (other.length > one.length || j < i),
      ),
  );
}

/**
 * The union of two kitchens' facts. One log is never put between the facts of another: one oven and one
 * starter cannot stand in two places, and each fact was taken where the facts before it had led. The file's
 * own log is gone on with where it goes on from the one here; any other stays beside it, but where all of it
 * stands in a longer one. Whatever is brought in, in whichever order and however often, no fact is lost and
 * the same logs are there in the end.
 */
export function mergeLogs(here: Logs, file: Logs): Merged {
  const known = new Map([here.own, ...here.others].flat().map(({ fact }) => [fact.id, fact]));
  const fresh = new Map<string, LogRecord>();
  for (const record of [file.own, ...file.others].flat()) {
    const { id } = record.fact;
    const had = known.get(id) ?? fresh.get(id)?.fact;
    if (had === undefined) fresh.set(id, record);
    else if (had !== record.fact && JSON.stringify(had) !== JSON.stringify(record.fact))
      return { logs: null, clash: { id, seq: record.seq } };
  }
  const takes =
    goesOn(here.own, file.own) && (here.own.length === 0 || file.own.length > here.own.length);
  const own = takes ? file.own : here.own;
  const beside = ends([...here.others, ...file.others, ...(takes ? [] : [file.own])]);
  return {
    logs: { own, others: beside.filter((log) => !goesOn(log, own)) },
    goesOn: takes,
    fresh: [...fresh.values()],
    clash: null,
  };
}
