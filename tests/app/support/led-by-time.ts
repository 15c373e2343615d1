import type { CallKind } from '../../../machines/ports.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import type { Position } from '../../../src/core/records/position.ts';
import type { Instant } from '../../../src/core/units.ts';

import { CALLS, ENDS, LEFT_ON, WARNING } from './time-table.ts';

/** A call as the rules of the bake want it, told apart by whose it is, where, and since when. */
export interface Owed {
  readonly id: string;
  readonly who: string;
  readonly stage: string;
  readonly kind: CallKind;
  readonly since: Instant;
}

interface Stand {
  stage: string;
  marks: Record<string, Instant>;
  entered: Record<string, Instant>;
  byDue: boolean;
  tasks: Record<string, { called: Instant | null; done: Instant | null }>;
}
interface Due {
  readonly at: Instant;
  readonly fall: () => void;
}

/**
 * A kitchen of which only the time passes: where a row of the log left it, and what its deadlines lead to
 * from there, by a table of its own.
 */
export class LedByTime {
  now: Instant;
  readonly #bakes: Record<string, Stand & { touches: number }>;
  readonly #lanes: Record<string, Stand & { loaves: string[] }>;
  readonly #oven: Stand & { waiting: string[]; soon: boolean };
  readonly #timers: Position['timers'];
  readonly #starter: Position['starter'];

  constructor(
    position: Position,
    private readonly recipeOf: (bake: string) => Recipe,
  ) {
    const { now, bakes, lanes, oven, timers, starter } = structuredClone(position) as never as {
      now: Instant;
      bakes: Record<string, Stand & { touches: number }>;
      lanes: Record<string, Stand & { loaves: string[] }>;
      oven: Stand & { waiting: string[]; soon: boolean };
      timers: Position['timers'];
      starter: Position['starter'];
    };
    this.now = now;
    this.#bakes = bakes;
    this.#lanes = lanes;
    this.#oven = oven;
    this.#timers = timers;
    this.#starter = starter;
  }

  /** The oven, its lanes, the bakes as they were begun: of calls at one instant the first rings first. */
  #stands(): [string, Stand][] {
    return [['oven', this.#oven], ...Object.entries(this.#lanes), ...Object.entries(this.#bakes)];
  }

  /** When the wait of each ends that waits, by name; a timer that runs is one. */
  ends(): Readonly<Record<string, Instant>> {
    const waits = this.#stands().flatMap(([who, { stage, marks }]) => {
      const at = marks[ENDS[stage]?.[0] ?? ''];
      return at === undefined ? [] : [[who, at] as const];
    });
    const timers = Object.entries(this.#timers).map(([id, { until }]) => [id, until] as const);
    return Object.fromEntries([...waits, ...timers.filter(([, until]) => until > this.now)]);
  }

  /** Where each stands that has a stage. */
  stages(): Readonly<Record<string, string>> {
    return Object.fromEntries(this.#stands().map(([who, { stage }]) => [who, stage]));
  }

  knows = (who: string): boolean => who in this.stages() || who in this.#timers;

  marksOf = (who: string): Readonly<Record<string, Instant>> => this.#standOf(who)?.marks ?? {};

  /** The first of the stages that were entered after an instant; null where none was. */
  firstEntered(who: string, from: Instant): Instant | null {
    const since = Object.values(this.#standOf(who)?.entered ?? {}).filter((at) => at > from);
    return since.length === 0 ? null : Math.min(...since);
  }

  /** Its stage, the end of its wait and its calls, all so much later. */
  standing(who: string, by: number) {
    const isIts = (call: Owed): boolean => call.who === who || call.stage === who;
    return {
      stage: this.stages()[who],
      end: (this.ends()[who] ?? NaN) + by,
      calls: this.calls()
        .filter(isIts)
        .map(({ stage, since }) => `${stage} ${since + by}`),
    };
  }

  #standOf = (who: string): Stand | undefined => this.#stands().find(([name]) => name === who)?.[1];

  /** Everything up to and at an instant falls due, each at its own. */
  to(until: Instant, atEach: () => void = () => undefined): void {
    for (let due = this.#next(); due !== null && due.at <= until; due = this.#next()) {
      this.now = Math.max(this.now, due.at);
      due.fall();
      atEach();
    }
    this.now = Math.max(this.now, until);
  }

  #next(): Due | null {
    const ends = this.#stands().flatMap(([who, stand]): Due[] => this.#dues(who, stand));
    const timers = Object.values(this.#timers).map(({ until }) => until);
    const remind = this.#starter.marks['remind'] ?? 0;
    const plain = [...timers, remind, this.#leftOn()?.next ?? 0]
      .filter((at) => at > this.now)
      .map((at): Due => ({ at, fall: () => undefined }));
    return [...ends, ...plain].reduce<Due | null>(
      (first, due) => (first && first.at <= due.at ? first : due),
      null,
    );
  }

  #dues(who: string, stand: Stand): Due[] {
    const [mark, next] = ENDS[stand.stage] ?? [];
    const at = mark === undefined ? undefined : stand.marks[mark];
    if (mark === undefined) return [];
    const end = at === undefined ? [] : [{ at, fall: () => this.#end(who, stand, next!, at) }];
    const tasks = this.#tasks(stand).filter(({ called }) => called === null);
    const leads = tasks.map(({ task, at: due }) => ({
      at: due,
      fall: () => void (stand.tasks[task] = { called: due, done: null }),
    }));
    return [...end, ...leads];
  }

  /** Open tasks of a wait. */
  #tasks({ marks, tasks }: Stand) {
    return Object.entries(marks)
      .filter(([mark]) => mark.startsWith('lead.'))
      .map(([mark, at]) => ({ task: mark.slice('lead.'.length), at }))
      .map(({ task, at }) => ({ task, at, ...(tasks[task] ?? { called: null, done: null }) }))
      .filter(({ done }) => done === null)
      .toSorted((a, b) => a.at - b.at || (a.task < b.task ? -1 : 1));
  }

  #go(stand: Stand, stage: string, at: Instant): void {
    stand.stage = stage;
    stand.entered[stage] = at;
    stand.byDue = true;
    stand.tasks = {};
    const goesOn = stage === 'proof.soon' ? Object.entries(stand.marks) : [];
    stand.marks = Object.fromEntries(goesOn.filter(([mark]) => !mark.startsWith('lead.')));
  }

  #end(who: string, stand: Stand, next: string, at: Instant): void {
    const oven = this.#oven;
    if (stand.stage === 'bulk.between') {
      const { touches } = stand as Stand & { touches: number };
      const kind = this.recipeOf(who).process.touches[touches]!.kind;
      return this.#go(stand, kind === 'fold' ? 'bulk.fold' : 'bulk.spread', at);
    }
    if (stand.stage === 'proof.warm') {
      if ((stand.marks['look'] ?? 0) < (stand.marks['oven'] ?? 0)) {
        return this.#go(stand, 'proof.poke', at);
      }
      this.#go(stand, 'proof.soon', at);
      oven.soon = true;
      if (oven.stage === 'off' || oven.stage === 'turnOff') this.#go(oven, 'turnOn', at);
      return;
    }
    if (stand.stage === 'preheating') {
      return this.#go(stand, oven.waiting.length > 0 ? 'poke' : 'holding', at);
    }
    if (stand.stage !== 'recover') return this.#go(stand, next, at);
    delete this.#lanes[who];
    if (oven.stage !== 'baking') return;
    const full = Object.values(this.#lanes).some(({ loaves }) => loaves.length > 0);
    if (oven.waiting.length > 0) this.#go(oven, 'poke', at);
    else if (!full) this.#go(oven, oven.soon ? 'holding' : 'turnOff', at);
  }

  #leftOn(): { readonly call: Owed | null; readonly next: Instant | null } | null {
    const { stage, entered, byDue } = this.#oven;
    const since = entered['turnOff'];
    if (stage !== 'turnOff' || since === undefined) return null;
    const over = Math.min(
      LEFT_ON.most,
      Math.max(0, Math.floor((this.now - since) / LEFT_ON.every)),
    );
    const at = since + over * LEFT_ON.every;
    return {
      call: over > 0 || byDue ? owed('oven', 'turnOff', 'act', at) : null,
      next: over < LEFT_ON.most ? at + LEFT_ON.every : null,
    };
  }

  /** What calls now. */
  calls(): readonly Owed[] {
    const stands = this.#stands().flatMap(([who, stand]): Owed[] => {
      const { stage, entered, byDue } = stand;
      const since = entered[stage] ?? 0;
      const kind = byDue ? CALLS[stage] : undefined;
      const tasks = ENDS[stage] === undefined ? [] : this.#tasks(stand);
      return [
        ...(kind === undefined ? [] : [owed(who, stage, kind, since)]),
        ...tasks
          .filter(({ task, called }) => called !== null && called > since && task !== WARNING)
          .map(({ task, called }) => owed(who, `lead.${task}`, 'look', called!)),
      ];
    });
    const timers = Object.entries(this.#timers)
      .filter(([, { until }]) => until <= this.now)
      .map(([id, { until, call }]) => owed('timer', id, call, until));
    const remind = this.#starter.marks['remind'];
    const hungry = remind !== undefined && remind <= this.now;
    const starter = hungry && this.#starter.put?.where === 'counter';
    const leftOn = this.#leftOn()?.call;
    return [
      ...(leftOn ? [leftOn] : []),
      ...stands,
      ...timers,
      ...(starter ? [owed('starter', 'counter', 'look', remind)] : []),
    ];
  }
}

const owed = (who: string, stage: string, kind: CallKind, since: Instant): Owed => ({
  id: `${who}:${stage}:${since}`,
  ...{ who, stage, kind, since },
});
