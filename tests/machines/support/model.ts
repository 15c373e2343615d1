import { closes } from '../../../src/core/records/lists.ts';
import type { Vessel } from '../../../src/core/formula/formula.ts';
import type { Recipe } from '../../../src/core/formula/recipe.ts';
import type { Reading } from '../../../src/core/records/fact.ts';
import { MINUTE, type Instant } from '../../../src/core/units.ts';
import {
  BAKE_CHART,
  CALL_AT,
  itemsOf,
  LIST_AT,
  NONE_WAIT,
  NONE_YET,
  OVEN_CHART,
  SOME_WAIT,
  waitsForFilling,
} from './chart.ts';
import { RECIPE, STONE, TIN } from './recipe.ts';
import { put, starterCall, type ModelStarter } from './model-starter.ts';
import { LAID_LOOK, MINUTES_A_DEGREE, WAITS } from './waits.ts';

/** Where one machine should stand. */
export interface ModelPlace {
  stage: string;
  /** Entry into the stage. */
  since: Instant;
  deadline: Instant | null;
  byDue: boolean;
  answers: Record<string, string>;
  touches: number;
}

export interface ModelBake extends ModelPlace {
  loaves: readonly string[];
  recipe: Recipe;
  celsius: number;
  /** Its warm proof has come so far that the oven was wanted. */
  ovenWanted: boolean;
}

/** What the kitchen should be. `quiet`: silenced calls, until when (null: till their act). */
export interface Model {
  now: Instant;
  bakes: Record<string, ModelBake>;
  oven: ModelPlace;
  lidded: Instant;
  /** What is in the oven bakes in, and whether it was taken out of it already. */
  inVessel: Vessel | 'tray';
  onRack: boolean;
  /** What the oven is made ready for. */
  vessel: Vessel;
  /** Loaves of a warm proof are coming. */
  soon: boolean;
  waiting: string[];
  load: string[];
  out: string[];
  /** Loaves that were told to bake flat, and those that went into a pot after all. */
  said: Record<string, 'flat' | 'first'>;
  starter: ModelStarter;
  quiet: Record<string, Instant | null>;
  times: Record<string, number>;
}

export const emptyModel = (): Model => ({
  now: 0,
  bakes: {},
  oven: { stage: 'off', since: 0, deadline: null, byDue: false, answers: {}, touches: 0 },
  lidded: 0,
  inVessel: 'pot',
  onRack: false,
  vessel: 'pot',
  soon: false,
  waiting: [],
  load: [],
  out: [],
  said: {},
  starter: { where: null, since: 0, fresh: false, remind: null },
  quiet: {},
  times: {},
});

export const copyOf = (model: Model): Model => structuredClone(model);

/** `oven` and the bakes, in the order their dues go. */
export const placesOf = (model: Model): [string, ModelPlace][] => [
  ['oven', model.oven],
  ...Object.keys(model.bakes)
    .toSorted()
    .map((id): [string, ModelPlace] => [id, model.bakes[id]!]),
];

export interface ModelCall {
  readonly id: string;
  readonly who: string;
  readonly kind: 'hot' | 'act' | 'look';
  readonly since: Instant;
  /** It makes no sound. */
  readonly mute?: boolean;
}

/** Pending calls; of equal ones the oven's first, then bakes as they were started, then the starter's. */
export const pendingCalls = ({ oven, bakes, starter, now }: Model): readonly ModelCall[] => [
  ...[['oven', oven] as const, ...Object.entries(bakes)].flatMap(
    ([who, { stage, byDue, since }]): ModelCall[] => {
      const kind = CALL_AT[stage];
      // An oven that is to be off calls anew every ten minutes, for two hours.
      if (stage === 'turnOff' && kind) {
        const over = Math.min(12, Math.floor((now - since) / (10 * MINUTE)));
        const at = since + over * 10 * MINUTE;
        return byDue || over > 0 ? [{ id: `${who}:${stage}:${at}`, who, kind, since: at }] : [];
      }
      return kind && byDue ? [{ id: `${who}:${stage}:${since}`, who, kind, since }] : [];
    },
  ),
  ...starterCall(starter, now),
];

/** Where a load of its kind bakes first. */
const FIRST: Readonly<Record<Vessel | 'tray', string>> = {
  pot: 'lidded',
  stone: 'steaming',
  tin: 'open',
  tray: 'open',
};

/** When an oven that is to be off calls next. */
export const leftOnDue = ({ oven: { stage, since }, now }: Model): Instant | null => {
  const over = Math.floor((now - since) / (10 * MINUTE));
  return stage === 'turnOff' && over < 12 ? since + (over + 1) * 10 * MINUTE : null;
};

const URGENCY = ['hot', 'act', 'look'];

export const ringingCall = (model: Model): ModelCall | null =>
  pendingCalls(model)
    .filter(({ id, mute }) => !mute && !(id in model.quiet))
    .toSorted(
      (a, b) => URGENCY.indexOf(a.kind) - URGENCY.indexOf(b.kind) || a.since - b.since,
    )[0] ?? null;

const enter = (place: ModelPlace, stage: string, since: Instant, byDue: boolean): void => {
  Object.assign(place, { stage, since, byDue, deadline: null, answers: {} });
};

const isFlat = ({ said, waiting }: Model): boolean => said[waiting[0] ?? ''] === 'flat';

/** Loaves that bake flat first, then those that were to. */
const inTurn = ({ said }: Model, loaves: readonly string[]): string[] =>
  loaves.toSorted((a, b) => {
    const rank = (loaf: string): number => ['flat', 'first', undefined].indexOf(said[loaf]);
    return rank(a) - rank(b);
  });

/** Where an emptied oven goes: a tray leaves it as hot as it was. */
const nextOf = ({ waiting, soon, inVessel }: Model): string => {
  if (waiting.length === 0 && !soon) return 'turnOff';
  if (inVessel !== 'tray') return 'recover';
  return waiting.length > 0 ? 'poke' : 'holding';
};

const go = (model: Model, who: string, to: string, at: Instant, byDue = false): void => {
  const bake = model.bakes[who];
  if (!bake) {
    const somebody = model.waiting.length > 0;
    const ways: Readonly<Record<string, string>> = {
      NEXT: nextOf(model),
      IN: FIRST[model.inVessel],
      SCORED: isFlat(model) ? 'tray' : 'score',
      HOT: somebody ? 'poke' : 'holding',
    };
    const stage = ways[to] ?? to;
    enter(model.oven, stage, at, byDue);
    if (stage === 'off') Object.assign(model, { out: [], said: {} });
    if (to === 'IN') model.lidded = at;
    return;
  }
  const { touches } = bake.recipe.process;
  if (to === 'AWAY') delete model.bakes[who];
  else if (to === 'TOUCH') {
    const fold = touches[bake.touches]?.kind === 'fold';
    enter(bake, fold ? 'bulk.fold' : 'bulk.spread', at, byDue);
  } else if (to === 'ONWARD') {
    if (bake.stage !== 'mix.temperature') bake.touches += 1;
    enter(bake, bake.touches < touches.length ? 'bulk.between' : 'bulk.proving', at, byDue);
  } else {
    const { shaping, retard } = bake.recipe.process;
    const ways: Readonly<Record<string, string>> = {
      SHAPED: shaping === 'scoop' ? 'shape.scoop' : 'shape.divide',
      PROVED: retard === 0 ? 'proof.warm' : 'proof.counter',
      AGAIN: bake.ovenWanted ? 'proof.soon' : 'proof.warm',
    };
    const stage = ways[to] ?? to;
    const laid = bake.since + LAID_LOOK * MINUTE;
    enter(bake, stage, at, byDue);
    if (stage !== 'proof.soon') return;
    bake.ovenWanted = true;
    if (byDue) bake.deadline = laid;
  }
};

/** What a loaf bakes in; null for none that is known. */
export const vesselOf = ({ bakes }: Model, loaf: string | undefined): Vessel | null =>
  Object.values(bakes).find(({ loaves }) => loaf !== undefined && loaves.includes(loaf))?.recipe
    .process.vessel ?? null;

/** Bakes whose warm loaves come soon, as they were started. */
const comingIn = ({ bakes }: Model): readonly ModelBake[] =>
  Object.values(bakes).filter(
    ({ stage, ovenWanted }) => stage === 'proof.soon' || (stage === 'proof.poke' && ovenWanted),
  );

/** Who waits, who is out, which silences are over: told in that order. */
export const settle = (model: Model): void => {
  const gone = [...model.load, ...model.out];
  const came = Object.entries(model.bakes)
    .filter(([, { stage }]) => stage === 'oven.queued')
    .toSorted(([a, x], [b, y]) => x.since - y.since || (a < b ? -1 : 1))
    .flatMap(([, { loaves }]) => loaves)
    .filter((loaf) => !gone.includes(loaf));
  const waiting = inTurn(model, came);
  const coming = comingIn(model);
  const soon = coming.length > 0;
  const first = vesselOf(model, waiting[0]) ?? coming[0]?.recipe.process.vessel;
  const other = (first ?? model.vessel) !== model.vessel;
  const emptied = other && model.load.length === 0;
  if (waiting.join() !== model.waiting.join() || soon !== model.soon || emptied) {
    model.waiting = waiting;
    model.soon = soon;
    model.vessel = first ?? model.vessel;
    const { stage } = model.oven;
    const some = waiting.length > 0;
    const arrived = some && stage === 'holding' ? 'before' : undefined;
    const to = some || soon ? (arrived ?? SOME_WAIT[stage]) : NONE_WAIT[stage];
    const back = !some && soon ? NONE_YET[stage] : undefined;
    const called = coming.some(({ byDue }) => byDue);
    if (stage === 'turnOff' && called) go(model, 'oven', 'turnOn', model.now, called);
    else if (to) go(model, 'oven', to, model.now, called);
    else if (back) go(model, 'oven', back, model.now, called);
    else if (stage === 'tray' && !isFlat(model)) go(model, 'oven', 'poke', model.now, called);
    else if (other && ['before', 'score', 'load'].includes(model.oven.stage)) {
      go(model, 'oven', 'poke', model.now, called);
    }
  }
  for (const [who, { stage, loaves }] of Object.entries(model.bakes)) {
    if (stage === 'oven.queued' && loaves.every((loaf) => model.out.includes(loaf))) {
      go(model, who, 'cool.cooling', model.now);
    }
  }
  const ids = pendingCalls(model).map(({ id }) => id);
  for (const kept of [model.quiet, model.times]) {
    for (const id of Object.keys(kept)) if (!ids.includes(id)) delete kept[id];
  }
};

/** Deadlines and ends of silences up to `to`, each at its own instant. */
export const advance = (model: Model, to: Instant): void => {
  for (;;) {
    const dues = [
      ...placesOf(model).map(([who, { deadline }]) => ({ who, at: deadline })),
      { who: 'left on', at: leftOnDue(model) },
      ...Object.entries(model.quiet).map(([id, at]) => ({ who: `quiet ${id}`, at })),
    ].filter((due): due is { who: string; at: Instant } => due.at !== null && due.at <= to);
    if (dues.length === 0) break;
    const due = dues.reduce((first, next) => (next.at < first.at ? next : first));
    model.now = Math.max(model.now, due.at);
    if (due.who === 'left on') {
      settle(model);
      continue;
    }
    if (due.who.startsWith('quiet ')) delete model.quiet[due.who.slice(6)];
    else {
      const { stage } = due.who === 'oven' ? model.oven : model.bakes[due.who]!;
      const next = (due.who === 'oven' ? OVEN_CHART : BAKE_CHART)[stage]?.['due'];
      if (!next) throw new Error(`The model has a deadline at ${stage}.`);
      go(model, due.who, next, due.at, true);
    }
    settle(model);
  }
  model.now = Math.max(model.now, to);
};

export interface Press {
  readonly who: string;
  readonly act: string;
  readonly item?: string;
  readonly value?: string;
  readonly loaves?: readonly string[];
  readonly was?: Instant;
  readonly grams?: number;
}

/** The recipe of a bake, or one of the kind the oven is made ready for. */
export const recipeAt = (model: Model, who: string): Recipe =>
  model.bakes[who]?.recipe ?? { pot: RECIPE, stone: STONE, tin: TIN }[model.vessel];

const answer = (model: Model, { who, item, value }: Press, at: Instant): boolean => {
  const place = who === 'oven' ? model.oven : model.bakes[who]!;
  const asked = LIST_AT[place.stage];
  if (!asked || item === undefined || value === undefined) return false;
  const items = itemsOf(asked.list, recipeAt(model, who));
  if (!items.includes(item)) return false;
  place.answers[item] = value;
  const complete = items.every((each) => closes(asked.list, each, place.answers[each]));
  if (asked.next !== null && complete) go(model, who, asked.next, at);
  return true;
};

/** Loaves are given up while none of them is baked, and one at least remains. */
const fewer = (model: Model, who: string, remain: readonly string[]): boolean => {
  const bake = model.bakes[who];
  if (!bake || bake.stage.startsWith('cool.') || bake.stage.startsWith('rescue.')) return false;
  const gone = bake.loaves.filter((loaf) => !remain.includes(loaf));
  const known = remain.every((loaf) => bake.loaves.includes(loaf));
  if (!known || new Set(remain).size !== remain.length) return false;
  if (remain.length === 0 || gone.length === 0) return false;
  if (gone.some((loaf) => [...model.load, ...model.out].includes(loaf))) return false;
  bake.loaves = bake.loaves.filter((loaf) => remain.includes(loaf));
  return true;
};

/** One press on the model: false where nothing answers to it. */
export const press = (model: Model, deed: Press, at: Instant): boolean => {
  const { who, act, loaves = [], was } = deed;
  const place = who === 'oven' ? model.oven : model.bakes[who];
  if (!place || act === 'due') return false;
  if (act === 'answer') return answer(model, deed, at);
  if (act === 'fewer') return fewer(model, who, loaves);
  if (act === 'ended' && who !== 'oven') {
    delete model.bakes[who];
    return true;
  }
  const to = (who === 'oven' ? OVEN_CHART : BAKE_CHART)[place.stage]?.[act];
  if (!to || waitsForFilling(act, recipeAt(model, who), place.answers)) return false;
  if (act === 'loaded') {
    const fits = loaves.length > 0 && new Set(loaves).size === loaves.length;
    if (!fits || !loaves.every((loaf) => model.waiting.includes(loaf))) return false;
    if (place.stage === 'load' && loaves.some((loaf) => vesselOf(model, loaf) !== model.vessel))
      return false;
    const flat = place.stage === 'tray';
    if (flat && (loaves.length > 1 || loaves[0] !== model.waiting[0])) return false;
    model.load = [...loaves];
    model.inVessel = flat ? 'tray' : model.vessel;
    model.onRack = false;
    model.waiting = model.waiting.filter((loaf) => !loaves.includes(loaf));
  }
  if (act === 'crustOnRack') {
    if (model.inVessel !== 'pot' || model.onRack) return false;
    model.onRack = true;
  }
  const [first = ''] = model.waiting;
  if (act === 'pokeFlat') {
    if (model.vessel === 'tin') return false;
    model.said[first] = 'flat';
  }
  if ((act === 'pokeReady' || act === 'pokeOver') && isFlat(model)) model.said[first] = 'first';
  const early = act === 'lidOff' || act === 'steamOut';
  if (early && was !== undefined && (was > at || was < model.lidded)) return false;
  if (act === 'unloaded') {
    model.out = [...model.out, ...model.load];
    model.load = [];
  }
  go(model, who, to, early ? (was ?? at) : at);
  if (act === 'starterKept' && deed.grams !== undefined) put(model.starter, 'fridge', at);
  return true;
};

/** A reading on the model: it is kept, and answers the question where one is put. */
export const measure = (model: Model, who: string, reading: Reading, at: Instant): boolean => {
  const bake = model.bakes[who];
  if (!bake) return false;
  if (reading.what === 'doughTemperature') {
    bake.celsius = reading.celsius;
    if (bake.stage === 'mix.temperature') go(model, who, 'ONWARD', at);
  }
  return true;
};

/** The instants a wait should end at, reckoned from its entry. */
export const endOf = ({ stage, since }: ModelPlace, celsius: number): Instant => {
  const shift = stage === 'bulk.proving' ? (24 - celsius) * MINUTES_A_DEGREE : 0;
  return since + (WAITS[stage]!.minutes + shift) * MINUTE;
};

export const waits = ({ stage }: ModelPlace): boolean => stage in WAITS;
