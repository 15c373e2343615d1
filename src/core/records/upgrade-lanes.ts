import { ONE_LANE } from './lane.ts';
import { LANE_STAGES } from './stage.ts';

/** Plain data of a row, as it was found. */
type Data = Readonly<Record<string, unknown>>;

const isData = (value: unknown): value is Data =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isOfLane = (stage: unknown): boolean => (LANE_STAGES as readonly unknown[]).includes(stage);

/** What hands did to what was in the oven, whatever the stage. */
const LANE_ACTS: readonly unknown[] = [
  'lidOff',
  'steamOut',
  'colourSeen',
  'crustReady',
  'crustNotYet',
  'crustOver',
  'unloaded',
];
const CRUST: readonly unknown[] = ['colour', 'base', 'core'];

/** An instant of a row; where there is none, `otherwise`. */
const instant = (value: unknown, otherwise: number): number =>
  typeof value === 'number' ? value : otherwise;

const entries = (value: unknown): [string, unknown][] => Object.entries(isData(value) ? value : {});

/** Instants of entries, the oven's apart from the load's that is in it: those since the last load step. */
const partEntered = (entered: unknown): { oven: Data; lane: Data } => {
  const load = isData(entered) ? instant(entered['load'], 0) : 0;
  const all = entries(entered);
  return {
    oven: Object.fromEntries(all.filter(([stage]) => !isOfLane(stage))),
    lane: Object.fromEntries(
      all.filter(([stage, at]) => isOfLane(stage) && instant(at, -1) >= load),
    ),
  };
};

/** What a load began with tells what it bakes in. */
const vesselIn = (entered: Data): string =>
  'lidded' in entered ? 'pot' : 'steaming' in entered ? 'stone' : 'tin';

/** What was done stays known to the oven; what was called belongs to the wait that called it. */
const doneOnly = (tasks: unknown): Data =>
  Object.fromEntries(
    entries(tasks).flatMap(([task, state]) =>
      isData(state) && state['done'] !== null
        ? [[task, { called: null, done: state['done'] }]]
        : [],
    ),
  );

const call7 = (id: unknown, inLane: boolean): unknown => {
  if (typeof id !== 'string') return id;
  const [who, stage = ''] = id.split(':');
  const isLanes = isOfLane(stage) || (stage.startsWith('lead.') && inLane);
  return who === 'oven' && isLanes ? `${ONE_LANE}${id.slice(who.length)}` : id;
};

const attention7 = (attention: Data, inLane: boolean): Data => ({
  ...attention,
  heard: Array.isArray(attention['heard'])
    ? attention['heard'].map((id: unknown) => call7(id, inLane))
    : attention['heard'],
  snoozed: Object.fromEntries(
    entries(attention['snoozed']).map(([id, state]) => [String(call7(id, inLane)), state]),
  ),
});

/** A load's stages were the oven's own: now they are its lane's, and the oven is *baking* meanwhile. */
export const position7 = (position: Data): Data => {
  const { oven } = position;
  if (!isData(oven) || 'lanes' in position) return position;
  const { load, stage, marks, byDue, answers, tasks, ...rest } = oven;
  const inLane = isOfLane(stage);
  const entered = partEntered(oven['entered']);
  const place = { stage, marks, byDue, answers, tasks };
  const lane = {
    ...place,
    entered: entered.lane,
    vessel: vesselIn(entered.lane),
    loaves: stage === 'recover' ? [] : load,
  };
  const attention = position['attention'];
  return {
    ...position,
    oven: inLane
      ? {
          ...rest,
          entered: entered.oven,
          stage: 'baking',
          marks: {},
          byDue: false,
          answers: {},
          tasks: doneOnly(tasks),
        }
      : { ...rest, ...place, entered: entered.oven },
    lanes: inLane ? { [ONE_LANE]: lane } : {},
    ...(isData(attention) ? { attention: attention7(attention, inLane) } : {}),
  };
};

const result7 = (result: unknown): unknown =>
  isData(result) && result['who'] === 'oven' && isOfLane(result['stage'])
    ? { ...result, who: ONE_LANE }
    : result;

/** Whether a press on the oven was one on what was in it; `oven` is where it stood after the press. */
const isLanesPress = ({ act, item }: Data, oven: Data): boolean => {
  if (LANE_ACTS.includes(act)) return true;
  if (act === 'answer') return CRUST.includes(item);
  if (act === 'taskDone') return isOfLane(oven['stage']);
  if (act !== 'ovenHot') return false;
  const entered = isData(oven['entered']) ? oven['entered'] : {};
  return instant(entered['recover'], -1) > instant(entered['preheating'], -1);
};

/** A fact of before pots were told apart; `oven` is where it stood after it. */
export const fact7 = (fact: Data, oven: Data): Data => {
  const results = Array.isArray(fact['results']) ? { results: fact['results'].map(result7) } : {};
  const inLane = isOfLane(oven['stage']);
  const call =
    'call' in fact && fact['kind'] !== 'timer' ? { call: call7(fact['call'], inLane) } : {};
  const isLanes = fact['kind'] === 'press' && fact['who'] === 'oven' && isLanesPress(fact, oven);
  return { ...fact, ...results, ...call, ...(isLanes ? { who: ONE_LANE } : {}) };
};
