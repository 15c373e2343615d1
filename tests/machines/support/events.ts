import type { EventFrom, SnapshotFrom } from 'xstate';
import { beforeOvenItems, LISTS } from '../../../src/core/records/lists.ts';
import { isTicked, tickedLines } from '../../../src/core/records/ticked.ts';
import type { BakeAct, OvenAct } from '../../../src/core/records/fact.ts';
import type { Machines } from '../../../machines/kitchen/kitchen.ts';
import { metaOf } from '../../../machines/kitchen/stage-of.ts';

type BakeEvent = EventFrom<Machines['bake']>;
type OvenEvent = EventFrom<Machines['oven']>;
type LaneEvent = EventFrom<Machines['lane']>;
type AttentionEvent = EventFrom<Machines['attention']>;

/** Every act a bake takes. `satisfies` and the lists' own types keep this complete. */
export const BAKE_ACTS = Object.keys({
  readThrough: 1,
  answer: 1,
  levainSeen: 1,
  levainRipe: 1,
  levainNotYet: 1,
  levainOver: 1,
  starterKept: 1,
  mixed: 1,
  rested: 1,
  workedIn: 1,
  unmeasured: 1,
  touchNow: 1,
  folded: 1,
  spread: 1,
  scattered: 1,
  rolled: 1,
  doughSeen: 1,
  bulkReady: 1,
  bulkNotYet: 1,
  bulkOver: 1,
  trayBaked: 1,
  divided: 1,
  preshaped: 1,
  benchRested: 1,
  shaped: 1,
  inBaskets: 1,
  scooped: 1,
  counterDone: 1,
  inFridge: 1,
  loafSeen: 1,
  loafReady: 1,
  loafNotYet: 1,
  loafOver: 1,
  standOut: 1,
  loafFlat: 1,
  cooled: 1,
  handedOver: 1,
  noted: 1,
  fewer: 1,
  taskDone: 1,
  ended: 1,
} satisfies Record<BakeAct, 1>) as BakeAct[];

/** Every act the oven and its lanes take. */
export const OVEN_ACTS = Object.keys({
  ovenOn: 1,
  ovenHot: 1,
  answer: 1,
  pokeReady: 1,
  pokeNotYet: 1,
  pokeOver: 1,
  pokeFlat: 1,
  pokeNow: 1,
  scored: 1,
  loaded: 1,
  lidOff: 1,
  steamOut: 1,
  colourSeen: 1,
  crustReady: 1,
  crustNotYet: 1,
  crustOver: 1,
  crustOnRack: 1,
  unloaded: 1,
  loafFirst: 1,
  loafLater: 1,
  potOut: 1,
  ovenOff: 1,
  taskDone: 1,
} satisfies Record<OvenAct, 1>) as OvenAct[];

/** The next unanswered item of a list, an unknown one, and one without a value. */
const answers = (items: readonly string[], answered: Readonly<Record<string, string>>) => {
  const next = items.find((item) => !(item in answered));
  return [
    ...(next === undefined ? [] : [{ item: next, value: 'ready' }, { item: next }]),
    { item: 'nonsense', value: 'ready' },
  ].map((payload) => ({ type: 'answer' as const, at: 0, ...payload }));
};

/** A task falls due and is done, the one that `judged` brings and one that no wait carries. */
const TASKS = ['nuts', 'nonsense'].flatMap((task) => [
  { type: 'lead' as const, at: 0, task },
  { type: 'taskDone' as const, at: 0, item: task },
]);

type BakeSnapshot = SnapshotFrom<Machines['bake']>;

/** Everything that may reach a bake where it stands. Time is `at`, 1 a step, so that paths stay finite. */
export const bakeEvents = (bake: BakeSnapshot): readonly BakeEvent[] => {
  const { context } = bake;
  const { list } = metaOf(bake);
  const items =
    list !== undefined && isTicked(list)
      ? tickedLines(context.recipe, list).map(({ item }) => item)
      : (LISTS[list as keyof typeof LISTS] ?? []);
  return [
    ...BAKE_ACTS.filter((act) => act !== 'answer' && act !== 'fewer' && act !== 'taskDone').map(
      (type) => ({ type: type as Exclude<BakeAct, 'answer' | 'fewer' | 'taskDone'>, at: 0 }),
    ),
    { type: 'fewer', at: 0, loaves: context.loaves.slice(1) },
    ...TASKS,
    ...answers(items, context.answers),
    { type: 'due', at: 0 },
    { type: 'sync', at: 0, out: [] },
    { type: 'sync', at: 0, out: context.loaves },
    { type: 'reading', at: 0, reading: { what: 'doughTemperature', celsius: 24 } },
    { type: 'reading', at: 0, reading: { what: 'firstPiece', grams: 900 } },
    { type: 'corrected', at: 0, measured: 0, reading: { what: 'doughTemperature', celsius: 25 } },
    {
      type: 'judged',
      at: 0,
      marks: { look: 1, oven: 1, turn: 1, end: 1, touch: 1, 'lead.nuts': 1 },
    },
    { type: 'judged', at: 0, marks: { look: 1, oven: 2, turn: 1, end: 1, touch: 1, fridge: 0 } },
  ];
};

const PLAIN = ['answer', 'loaded', 'ovenOn', 'lidOff', 'steamOut', 'unloaded', 'taskDone'];
type Plain = Exclude<
  OvenAct,
  'answer' | 'loaded' | 'ovenOn' | 'lidOff' | 'steamOut' | 'unloaded' | 'taskDone'
>;
const plainActs = OVEN_ACTS.filter((act) => !PLAIN.includes(act)).map((type) => ({
  type: type as Plain,
  at: 0,
}));

/** What lanes may be at: nothing in them, one full and another free, all full, one that reheats. */
const RACKS = [
  { full: false, free: true, reheats: false },
  { full: true, free: true, reheats: false },
  { full: true, free: false, reheats: false },
  { full: false, free: false, reheats: true },
];

/** Everything that may reach the oven where it stands. */
export const ovenEvents = (oven: SnapshotFrom<Machines['oven']>): readonly OvenEvent[] => {
  const { context } = oven;
  const { list } = metaOf(oven);
  const waiting = ['a1', 'a2'];
  return [
    ...plainActs,
    ...(['loafFirst', 'loafLater'] as const).map((type) => ({ type, at: 0, item: 'a1' })),
    { type: 'potOut', at: 0, item: 'lane.left' },
    ...[['lane.left', 'lane.right'], ['left']].map((lanes) => ({
      type: 'ovenOn' as const,
      at: 0,
      ...(lanes ? { lanes } : {}),
    })),
    ...answers(
      list === 'beforeOven'
        ? beforeOvenItems(context.vessel)
        : (LISTS[list as keyof typeof LISTS] ?? []),
      context.answers,
    ),
    ...TASKS,
    { type: 'taskKept', at: 0, task: 'rack' },
    { type: 'cameOut', at: 0, loaves: [] },
    ...[true, false].map((more) => ({
      type: 'loaded' as const,
      at: 0,
      loaves: context.waiting.slice(0, 1),
      more,
    })),
    { type: 'loaded', at: 0, loaves: ['nonsense'], more: true },
    { type: 'due', at: 0 },
    ...RACKS.flatMap((rack) => [
      ...[true, false].map((soon) => ({
        type: 'sync' as const,
        at: 0,
        waiting: [],
        vessel: context.vessel,
        soon,
        rack,
        called: soon,
      })),
      ...(rack.full ? (['pot'] as const) : (['pot', 'tin'] as const)).map((vessel) => ({
        type: 'sync' as const,
        at: 0,
        waiting,
        vessel,
        soon: false,
        rack,
        called: false,
      })),
    ]),
    { type: 'judged', at: 0, marks: { hot: 1, poke: 1, 'lead.nuts': 1 } },
  ];
};

/** Everything that may reach a lane where it stands. */
export const laneEvents = (lane: SnapshotFrom<Machines['lane']>): readonly LaneEvent[] => {
  const { context } = lane;
  const { list } = metaOf(lane);
  return [
    ...plainActs,
    ...answers(LISTS[list as keyof typeof LISTS] ?? [], context.answers),
    ...TASKS,
    ...(['lidOff', 'steamOut'] as const).flatMap((type) => [
      { type, at: 0 },
      { type, at: 0, was: 1 },
    ]),
    ...[true, false].flatMap((wanted) => [
      { type: 'unloaded' as const, at: 0, more: wanted },
      { type: 'sync' as const, at: 0, wanted },
    ]),
    { type: 'due', at: 0 },
    { type: 'judged', at: 0, marks: { hot: 1, lid: 1, vent: 1, colour: 1, 'lead.nuts': 1 } },
  ];
};

export const CALLS = [
  { id: 'oven:lift:1', who: 'oven', stage: 'lift', kind: 'hot', since: 1 },
  { id: 'a:bulk.look:1', who: 'a', stage: 'bulk.look', kind: 'look', since: 1 },
] as const;

/** Everything that may reach attention. */
export const attentionEvents = (): readonly AttentionEvent[] => [
  { type: 'sync', at: 0, calls: [] },
  { type: 'sync', at: 0, calls: CALLS },
  ...CALLS.map((call) => ({ type: 'sync' as const, at: 0, calls: [call] })),
  ...['nonsense', ...CALLS.map(({ id }) => id)].flatMap((call) => [
    { type: 'heard' as const, at: 0, call },
    { type: 'snoozed' as const, at: 0, call, until: 60_000 },
  ]),
  { type: 'due', at: 60_000 },
  { type: 'wake', at: 0 },
];
