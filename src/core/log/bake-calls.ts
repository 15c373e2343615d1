import type { Fact } from '../records/fact.ts';
import type { BakePlace } from '../records/position.ts';
import { HEADS_UP } from '../records/task.ts';
import { MINUTE, type Instant, type Minutes } from '../units.ts';
import type { BakeLoad } from './bake-loads.ts';
import type { BakeRows } from './bake-rows.ts';
import { CALL_STAGES } from './call-stages.ts';
import { visitsIn, type Visit } from './visits.ts';

/** A task's mark, and its call's stage, begin so. */
const LEAD = 'lead.';

/** One time the program asked for the baker, for a bake or for its loaves in the oven. */
export interface BakeCall {
  /** As attention has it: `who:stage:since`. */
  readonly id: string;
  readonly who: string;
  /** A stage, or `lead.` and the task that a wait asked for. */
  readonly stage: string;
  readonly kind: 'look' | 'act' | 'hot';
  readonly due: Instant;
  /** First silenced or put off; null: it never was. */
  readonly heard: Instant | null;
  /** First press of what it called for; null: none came. */
  readonly acted: Instant | null;
  /** From the call to its first answer, hush or press; null: nobody has answered. */
  readonly late: Minutes | null;
  /** Until when it was put off, each time. */
  readonly snoozes: readonly Instant[];
}

type Asked = Pick<BakeCall, 'who' | 'stage' | 'kind' | 'due'> & {
  /** Until when a press of `who` answers it; null: there is no end yet. */
  readonly to: Instant | null;
  /** Of a task: only what says that it is done. */
  readonly task?: string;
};

function answered(facts: readonly Fact[], asked: Asked): BakeCall {
  const { who, stage, kind, due, to, task } = asked;
  const id = `${who}:${stage}:${due}`;
  const hushes = facts.filter(
    (fact) => (fact.kind === 'heard' || fact.kind === 'snoozed') && fact.call === id,
  );
  const press = facts.find(
    (fact) =>
      fact.kind === 'press' &&
      fact.who === who &&
      fact.at >= due &&
      (task === undefined
        ? fact.act !== 'taskDone' && fact.act !== 'fewer'
        : fact.act === 'taskDone' && fact.item === task),
  );
  // A lid may have been off before the press that says so: then its stage ended there.
  const pressed = press?.kind === 'press' ? Math.max(due, press.was ?? press.at) : null;
  const acted = pressed !== null && (to === null || pressed <= to) ? pressed : null;
  const heard = hushes[0]?.at ?? null;
  const answers = [heard, acted].filter((at) => at !== null);
  return {
    id,
    who,
    stage,
    kind,
    due,
    heard,
    acted,
    late: answers.length === 0 ? null : (Math.min(...answers) - due) / MINUTE,
    snoozes: hushes.flatMap((fact) => (fact.kind === 'snoozed' ? [fact.until] : [])),
  };
}

/** The calls among the stays of one machine. */
const ofVisits = (who: string, visits: readonly Visit[]): readonly Asked[] =>
  visits.flatMap(({ stage, from, to, byDue }): Asked[] => {
    const kind = CALL_STAGES[stage];
    return byDue && kind !== undefined ? [{ who, stage, kind, due: from, to }] : [];
  });

/** Where a bake stood at the last that was seen of each of its stays. */
function lastSeen({ start, rows, live }: BakeRows): ReadonlyMap<string, BakePlace> {
  const seen = new Map<string, BakePlace>();
  for (const { bakes } of [...rows.map(({ position }) => position), ...(live ? [live] : [])]) {
    const place = bakes[start.bake];
    if (place) seen.set(`${place.stage} ${place.entered[place.stage]}`, place);
  }
  return seen;
}

/** Tasks that a wait of this bake called for; one that was due as the wait began is only shown. */
function ofTasks(facts: BakeRows, stays: readonly Visit[]): readonly Asked[] {
  const { start, rows, live, end } = facts;
  const known = live?.now ?? end?.fact.at ?? rows.at(-1)!.fact.at;
  const seen = lastSeen(facts);
  return stays.flatMap(({ stage: wait, from, to }) => {
    const place = seen.get(`${wait} ${from}`);
    return Object.entries(place?.marks ?? {}).flatMap(([stage, mark]): Asked[] => {
      const task = stage.startsWith(LEAD) ? stage.slice(LEAD.length) : null;
      if (task === null || task === HEADS_UP) return [];
      const { called = null, done = null } = place?.tasks[task] ?? {};
      const due = called ?? mark;
      const isDoneBefore = called === null && done !== null;
      // What falls due as the wait ends is done with by going on.
      const isPast = to === null ? due <= known : due < to;
      if (isDoneBefore || due <= from || !isPast) return [];
      return [{ who: start.bake, stage, kind: 'look', due, to, task }];
    });
  });
}

/** The stages of a bake from which the oven is its own matter. */
const AT_OVEN = ['proof.soon', 'oven.queued'];

/**
 * The calls of a bake: of its own waits and their tasks, of the lanes its loaves were in, and of the oven
 * while one of them waited for it. The first due first.
 */
export function bakeCalls(
  facts: BakeRows,
  stays: readonly Visit[],
  loads: readonly BakeLoad[],
): readonly BakeCall[] {
  const { start, standing, end } = facts;
  const over = end?.fact.at ?? null;
  const queued = stays.find(({ stage }) => AT_OVEN.includes(stage))?.from;
  const own = ofVisits(start.bake, stays);
  const lanes = loads.flatMap(({ lane, loaves, in: put, out }) => {
    const visits = visitsIn(
      facts,
      (position) => {
        const place = position.lanes[lane];
        return place?.loaves.includes(loaves[0]!) ? place : undefined;
      },
      out ?? over,
    );
    return ofVisits(
      lane,
      visits.filter(({ from }) => from >= put),
    );
  });
  const oven = visitsIn(
    facts,
    ({ oven: place }) =>
      place.waiting.some((loaf) => start.loaves.includes(loaf)) ? place : undefined,
    over,
  ).filter(({ from }) => from >= (queued ?? Infinity));
  return [...own, ...ofTasks(facts, stays), ...lanes, ...ofVisits('oven', oven)]
    .map((asked) => answered(standing, asked))
    .toSorted((a, b) => a.due - b.due);
}
