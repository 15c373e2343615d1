/**
 * The oven and its pots as a baker would tell it, in plain data. It shares no code with the machines:
 * what it says is worked out anew.
 */

export type Vessel = 'pot' | 'stone' | 'tin';
type Instant = number;

const MINUTE = 60_000;
export const LID_MINUTES = 18;
/** How long each wait takes in tests, minutes. */
const MINUTES: Readonly<Record<string, number>> = {
  preheating: 45,
  standing: 20,
  lidded: LID_MINUTES,
  steaming: 15,
  open: 20,
  recover: 10,
  'cool.cooling': 120,
  'proof.warm': 60,
  'proof.soon': 45,
};
/** What calls where time led there: its stage. */
const CALLS = ['turnOn', 'poke', 'turnOff', 'lift', 'vent', 'judge', 'proof.poke', 'cool.handOver'];
/** A loaf that went over bakes flat in it, beside whatever else is in. */
export const TRAY = 'lane.tray';
/** Where pots are not told apart, and for tins and a stone, the oven is one. */
const ONE = 'lane.pot';

interface Spot {
  stage: string;
  since: Instant;
  ends: Instant | null;
  byTime: boolean;
  answers: Record<string, string>;
}
export interface ModelPot extends Spot {
  vessel: Vessel | 'tray';
  loaves: string[];
  onRack: boolean;
}
export interface ModelBatch extends Spot {
  vessel: Vessel;
  loaves: string[];
  /** When its loaves came to the oven. */
  came: Instant;
  /** The oven was wanted hot for it before it was looked at. */
  wasSoon: boolean;
}
export interface Pots {
  now: Instant;
  bakes: Record<string, ModelBatch>;
  oven: Spot;
  /** What is made ready for. */
  vessel: Vessel;
  /** Null: not told apart. */
  pots: string[] | null;
  queue: string[];
  soon: boolean;
  said: Record<string, 'flat' | 'first' | 'later'>;
  out: string[];
  ready: boolean;
  lanes: Record<string, ModelPot>;
  hushed: string[];
}

export type PotsDeed =
  | { kind: 'start'; bake: string; from: string; loaves: string[]; vessel: Vessel }
  | { kind: 'heard'; call: string }
  | {
      kind: 'press';
      who: string;
      act: string;
      item?: string;
      value?: string;
      loaves?: string[];
      lane?: string;
      lanes?: string[];
      was?: Instant;
    };
type Press = Extract<PotsDeed, { kind: 'press' }>;

const spot = (stage: string): Spot => ({
  stage,
  since: 0,
  ends: null,
  byTime: false,
  answers: {},
});

export const noPots = (): Pots => ({
  now: 0,
  bakes: {},
  oven: spot('off'),
  vessel: 'pot',
  pots: null,
  queue: [],
  soon: false,
  said: {},
  out: [],
  ready: false,
  lanes: {},
  hushed: [],
});

const enter = (one: Spot, stage: string, since: Instant, byTime = false): void => {
  const minutes = MINUTES[stage];
  Object.assign(one, spot(stage), { since, byTime });
  if (minutes !== undefined) one.ends = since + minutes * MINUTE;
};

const lanesIn = (m: Pots): ModelPot[] => Object.values(m.lanes);
export const inOven = (m: Pots): string[] => lanesIn(m).flatMap(({ loaves }) => loaves);
const ownerOf = (m: Pots, loaf: string | undefined): ModelBatch | undefined =>
  Object.values(m.bakes).find(({ loaves }) => loaves.includes(loaf ?? ''));

const TURNS = { flat: -2, first: -1, later: 1 };
const turnOf = (m: Pots, loaf: string): number => {
  const said = m.said[loaf];
  return said === undefined ? 0 : TURNS[said];
};
const isFlat = (m: Pots): boolean => m.said[m.queue[0] ?? ''] === 'flat';
const inTurn = (m: Pots, loaves: string[]): string[] => {
  const kinds = [-2, -1, 0, 1].map((kind) => loaves.filter((loaf) => turnOf(m, loaf) === kind));
  return kinds.flat();
};

/** A batch that came first goes first; of two that came at once the one named first. */
const queueOf = (m: Pots): string[] => {
  const gone = [...inOven(m), ...m.out];
  const batches = Object.entries(m.bakes).filter(([, { stage }]) => stage === 'oven.queued');
  batches.sort(([a, x], [b, y]) => x.came - y.came || (a < b ? -1 : 1));
  const loaves = batches.flatMap(([, batch]) => batch.loaves);
  return inTurn(
    m,
    loaves.filter((loaf) => !gone.includes(loaf)),
  );
};

const comingOf = (m: Pots): ModelBatch[] =>
  Object.values(m.bakes).filter(
    ({ stage, wasSoon }) => stage === 'proof.soon' || (stage === 'proof.poke' && wasSoon),
  );

/** Pots a load of this kind could go into. */
export const freePots = (m: Pots, vessel: Vessel): string[] => {
  const alone = m.pots === null || vessel !== 'pot';
  if (alone) return Object.keys(m.lanes).length === 0 ? [ONE] : [];
  if (lanesIn(m).some((pot) => pot.vessel !== 'pot' && pot.vessel !== 'tray')) return [];
  return m.pots!.filter((pot) => !(pot in m.lanes));
};

/** The oven goes where it has to by who comes, and by what room there is. */
const tellOven = (m: Pots, byTime: boolean): void => {
  const queue = queueOf(m);
  const coming = comingOf(m);
  const soon = coming.length > 0;
  const full = inOven(m).length > 0;
  const vessel = ownerOf(m, queue[0])?.vessel ?? coming[0]?.vessel ?? m.vessel;
  const news = String(queue) !== String(m.queue) || soon !== m.soon || !full;
  const other = news && vessel !== m.vessel;
  if (other) [m.vessel, m.ready] = [vessel, false];
  [m.queue, m.soon] = [queue, soon];
  const { stage } = m.oven;
  const called = (byTime && stage === 'baking') || coming.some((batch) => batch.byTime);
  const to = (next: string): void => {
    const { since } = m.oven;
    enter(m.oven, next, m.now, called && next !== 'baking');
    // Nothing begins where only its pots have something to do.
    if (next === 'baking') m.oven.since = since;
    if (next === 'off') clear(m);
  };
  const nobody = queue.length === 0 && !soon;
  const reheats = lanesIn(m).some((pot) => pot.stage === 'recover');
  const fits = queue.length > 0 && freePots(m, vessel).length > 0;
  const atDoor = ['poke', 'standing', 'before', 'score', 'load', 'tray'].includes(stage);
  if (stage === 'off') return nobody ? undefined : to('turnOn');
  if (stage === 'turnOn') return nobody ? to('off') : undefined;
  if (stage === 'turnOff') return nobody ? undefined : to(soon && called ? 'turnOn' : 'preheating');
  if (nobody && !full) return to('turnOff');
  if (stage === 'preheating') return;
  if (stage === 'holding') return queue.length > 0 ? to('before') : undefined;
  if (queue.length === 0 && !full && !reheats) return to('holding');
  if (atDoor && !fits) return to('baking');
  if (stage === 'baking') return fits ? to('poke') : undefined;
  if (other && ['before', 'score', 'load'].includes(stage)) return to('poke');
  if (stage === 'tray' && !isFlat(m)) return to('poke');
  const fresh = m.pots !== null && queue.some((loaf) => m.said[loaf] !== 'later');
  if (stage === 'standing' && fresh) to('poke');
};

const clear = (m: Pots): void => {
  Object.assign(m, { out: [], pots: null, said: {}, ready: false });
};

/** Whether a pot that is emptied is to be hot again. */
const isWanted = (m: Pots, pot: string): boolean => {
  const dropped = m.pots !== null && m.vessel === 'pot' && !m.pots.includes(pot);
  return !dropped && pot !== TRAY && (m.soon || m.queue.length > 0);
};

const settle = (m: Pots, byTime = false): void => {
  tellOven(m, byTime);
  for (const [name, pot] of Object.entries(m.lanes)) {
    if (pot.stage === 'recover' && !isWanted(m, name)) delete m.lanes[name];
  }
  for (const batch of Object.values(m.bakes)) {
    const allOut = batch.loaves.every((loaf) => m.out.includes(loaf));
    if (batch.stage === 'oven.queued' && allOut) enter(batch, 'cool.cooling', m.now);
  }
  const calls = callsOf(m);
  m.hushed = m.hushed.filter((id) => calls.includes(id));
};

const placesOf = (m: Pots): [string, Spot][] => {
  const sorted = (all: Record<string, Spot>): [string, Spot][] =>
    Object.entries(all).sort(([a], [b]) => (a < b ? -1 : 1));
  return [['oven', m.oven], ...sorted(m.lanes), ...sorted(m.bakes)];
};

/** An oven that should be off calls anew each time so many minutes are over, so many times at most. */
const AGAIN = 10 * MINUTE;
const MOST_AGAIN = 12;
const againOf = ({ oven, now }: Pots): number =>
  Math.max(0, Math.min(MOST_AGAIN, Math.floor((now - oven.since) / AGAIN)));

/** What calls, as `who:stage:since`. */
export const callsOf = (m: Pots): string[] =>
  placesOf(m).flatMap(([who, { stage, since, byTime }]) => {
    const again = stage === 'turnOff' ? againOf(m) : 0;
    const calls = again > 0 || (byTime && CALLS.includes(stage));
    return calls ? [`${who}:${stage}:${since + again * AGAIN}`] : [];
  });

/** When something falls due next. */
export const nextEnd = (m: Pots): Instant | null => {
  const again = m.oven.stage === 'turnOff' ? againOf(m) + 1 : Infinity;
  const left = again > MOST_AGAIN ? [] : [m.oven.since + again * AGAIN];
  const ends = [...placesOf(m).flatMap(([, { ends: end }]) => end ?? []), ...left];
  return ends.length > 0 ? Math.min(...ends) : null;
};

const AFTER: Readonly<Record<string, string>> = {
  standing: 'poke',
  lidded: 'lift',
  steaming: 'vent',
  open: 'judge',
  'cool.cooling': 'cool.handOver',
  'proof.warm': 'proof.soon',
  'proof.soon': 'proof.poke',
};

const hot = (m: Pots, at: Instant, byTime: boolean): void =>
  enter(m.oven, m.queue.length > 0 ? 'poke' : 'holding', at, byTime);

export const passTime = (m: Pots, to: Instant): void => {
  for (;;) {
    const at = nextEnd(m);
    if (at === null || at > to) break;
    m.now = Math.max(m.now, at);
    const [who, place] = placesOf(m).find(([, { ends }]) => ends === at) ?? ['', spot('')];
    if (place.stage === '') {
      // The oven that should be off calls anew: nothing moves.
    } else if (place.stage === 'preheating') hot(m, at, true);
    else if (place.stage === 'recover') delete m.lanes[who];
    else enter(place, AFTER[place.stage]!, at, true);
    if (place.stage === 'proof.soon') (place as ModelBatch).wasSoon = true;
    settle(m, true);
  }
  m.now = Math.max(m.now, to);
};

export const BEFORE: Readonly<Record<Vessel, readonly string[]>> = {
  pot: ['mitts', 'floor', 'child', 'landing', 'parchment', 'knob', 'blade'],
  stone: ['mitts', 'floor', 'child', 'landing', 'parchment', 'blade'],
  tin: ['mitts', 'floor', 'child', 'landing', 'blade'],
};
export const POKE = ['dent', 'grown'];
export const CRUST = ['colour', 'base', 'core'];

const answer = (one: Spot, asked: readonly string[], { item = '', value }: Press): boolean => {
  if (value === undefined || !asked.includes(item)) return false;
  one.answers[item] = value;
  return true;
};

const load = (m: Pots, { loaves = [], lane }: Press, at: Instant): boolean => {
  const free = freePots(m, m.vessel);
  const into = lane ?? free[0];
  const many = m.pots === null || m.vessel !== 'pot';
  if (m.oven.stage !== 'load' || into === undefined || !free.includes(into)) return false;
  if (loaves.length === 0 || new Set(loaves).size < loaves.length) return false;
  if (loaves.length > 1 && !many) return false;
  const mine = (loaf: string) => m.queue.includes(loaf) && ownerOf(m, loaf)?.vessel === m.vessel;
  if (!loaves.every(mine)) return false;
  const pot = { ...spot(''), vessel: m.vessel, loaves: [...loaves], onRack: false };
  enter(pot, { pot: 'lidded', stone: 'steaming', tin: 'open' }[m.vessel], at);
  m.queue = m.queue.filter((loaf) => !loaves.includes(loaf));
  m.lanes[into] = pot;
  const next = ownerOf(m, m.queue[0])?.vessel;
  const more = next === 'pot' && m.vessel === 'pot' && freePots(m, 'pot').length > 0;
  const { since } = m.oven;
  enter(m.oven, more ? 'poke' : 'baking', at);
  if (!more) m.oven.since = since;
  return true;
};

/** Flat in its tray, alone; the next may go into a pot that is free. */
const loadTray = (m: Pots, { loaves = [], lane = TRAY }: Press, at: Instant): boolean => {
  const [first] = m.queue;
  if (lane !== TRAY || TRAY in m.lanes || loaves.length !== 1 || loaves[0] !== first) return false;
  const pot = { ...spot(''), vessel: 'tray' as const, loaves: [...loaves], onRack: false };
  enter(pot, 'open', at);
  m.queue = m.queue.slice(1);
  const pots = m.pots !== null && m.vessel === 'pot' && freePots(m, 'pot').length > 0;
  m.lanes[TRAY] = pot;
  const more = pots && ownerOf(m, m.queue[0])?.vessel === 'pot';
  const { since } = m.oven;
  enter(m.oven, more ? 'poke' : 'baking', at);
  if (!more) m.oven.since = since;
  return true;
};

const OVEN: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  standing: { pokeNow: 'poke' },
  score: { scored: 'load' },
};

const pressOven = (m: Pots, press: Press, at: Instant): boolean => {
  const { oven } = m;
  const { act, item = '', lanes } = press;
  const { stage } = oven;
  const to = (next: string): boolean => {
    enter(oven, next, at);
    return true;
  };
  if (act === 'loafFirst' || act === 'loafLater') {
    if (!m.queue.includes(item)) return false;
    const turn = act === 'loafFirst' ? 'first' : 'later';
    // A loaf that was looked at goes in next, whatever is said of it or of another.
    const looked = stage === 'poke' && Object.keys(oven.answers).length > 0;
    if (looked || stage === 'before' || stage === 'score' || stage === 'load') {
      const said = { ...m, said: { ...m.said, [item]: turn } as Pots['said'] };
      const then = inTurn(said, [...m.queue.filter((loaf) => loaf !== item), item]);
      if (then[0] !== m.queue[0]) return false;
    }
    const again = stage === 'tray' && isFlat(m) && m.queue[0] === item;
    m.said[item] = turn;
    m.queue = inTurn(m, [...m.queue.filter((loaf) => loaf !== item), item]);
    if (again) return to('poke');
    return act === 'loafLater' || stage !== 'standing' || to('poke');
  }
  if (act === 'potOut') {
    if (m.pots === null || m.pots.length < 2 || !m.pots.includes(item)) return false;
    m.pots = m.pots.filter((pot) => pot !== item);
    return true;
  }
  if (act === 'loaded') return (stage === 'tray' ? loadTray : load)(m, press, at);
  if (stage === 'turnOn' && act === 'ovenOn') {
    const each = new Set(lanes).size === lanes?.length && lanes.length > 0;
    if (lanes && !(each && lanes.every((pot) => /^lane\.(?!tray$)/.test(pot)))) return false;
    if (lanes) m.pots = lanes;
    return to('preheating');
  }
  if (stage === 'preheating' && act === 'ovenHot') {
    hot(m, at, false);
    return true;
  }
  if (stage === 'turnOff' && act === 'ovenOff') {
    clear(m);
    return to('off');
  }
  if (stage === 'poke') {
    if (act === 'answer') return answer(oven, POKE, press);
    const [first = ''] = m.queue;
    const say = (turn: 'flat' | 'first' | 'later'): void => {
      m.said[first] = turn;
      m.queue = inTurn(m, [...m.queue.slice(1), first]);
    };
    if (act === 'pokeReady' || act === 'pokeOver') {
      if (isFlat(m)) say('first');
      return to(m.ready ? 'score' : 'before');
    }
    if (act === 'pokeFlat') {
      if (m.vessel === 'tin' || TRAY in m.lanes) return false;
      say('flat');
      return to(m.ready ? 'tray' : 'before');
    }
    if (act !== 'pokeNotYet') return false;
    const others = m.queue.slice(1).some((loaf) => m.said[loaf] !== 'later');
    const apart = m.pots !== null;
    if (apart) say('later');
    return to(apart && others ? 'poke' : 'standing');
  }
  if (stage === 'before' && act === 'answer') {
    if (!answer(oven, BEFORE[m.vessel], press)) return false;
    const closed = (one: string): boolean => !['wet', undefined].includes(oven.answers[one]);
    if (!BEFORE[m.vessel].every(closed)) return true;
    m.ready = m.pots !== null;
    return to(isFlat(m) ? 'tray' : 'score');
  }
  const next = OVEN[stage]?.[act];
  return next !== undefined && to(next);
};

const LANE: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  open: { colourSeen: 'judge' },
  judge: { crustReady: 'unload', crustOver: 'unload', crustNotYet: 'open' },
};
/** What is taken off, by where: the lid, or the steam. */
const OFF: Readonly<Record<string, string>> = {
  lidded: 'lidOff',
  lift: 'lidOff',
  steaming: 'steamOut',
  vent: 'steamOut',
};

const pressLane = (m: Pots, press: Press, at: Instant): boolean => {
  const { who, act, was = at } = press;
  const pot = m.lanes[who];
  if (pot === undefined) return false;
  const { stage } = pot;
  if (OFF[stage] === act) {
    const waited = MINUTES[act === 'lidOff' ? 'lidded' : 'steaming']! * MINUTE;
    const closed = stage === 'lift' || stage === 'vent' ? pot.since - waited : pot.since;
    if (was > at || was < closed) return false;
    enter(pot, 'open', was);
    return true;
  }
  if (stage === 'judge' && act === 'answer') return answer(pot, CRUST, press);
  if (stage === 'judge' && act === 'crustOnRack') {
    if (pot.vessel !== 'pot' || pot.onRack) return false;
    enter(pot, 'open', at);
    pot.onRack = true;
    return true;
  }
  if (stage === 'unload' && act === 'unloaded') {
    m.out = [...m.out, ...pot.loaves];
    pot.loaves = [];
    if (isWanted(m, who)) enter(pot, 'recover', at);
    else delete m.lanes[who];
    return true;
  }
  if (stage === 'recover' && act === 'ovenHot') return delete m.lanes[who];
  const next = LANE[stage]?.[act];
  if (next !== undefined) enter(pot, next, at);
  return next !== undefined;
};

const BAKE: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'proof.warm': { loafSeen: 'proof.poke', loafReady: 'oven.queued' },
  'proof.soon': { loafSeen: 'proof.poke', loafReady: 'oven.queued' },
  'proof.poke': { loafReady: 'oven.queued', loafOver: 'oven.queued' },
  'cool.cooling': { cooled: 'cool.handOver' },
  'cool.handOver': { handedOver: 'cool.note' },
  'cool.note': { noted: 'done' },
};

const pressBake = (m: Pots, { who, act, loaves = [] }: Press, at: Instant): boolean => {
  const batch = m.bakes[who];
  if (batch === undefined) return false;
  if (act === 'ended') return delete m.bakes[who];
  if (act === 'fewer') {
    const own = batch.loaves;
    const baked = [...inOven(m), ...m.out].filter((loaf) => own.includes(loaf));
    const few = loaves.length > 0 && loaves.length < own.length;
    const each = new Set(loaves).size === loaves.length && loaves.every((l) => own.includes(l));
    const kept = baked.every((loaf) => loaves.includes(loaf));
    if (!few || !each || !kept || batch.stage.startsWith('cool.')) return false;
    batch.loaves = own.filter((loaf) => loaves.includes(loaf));
    return true;
  }
  const next = BAKE[batch.stage]?.[act];
  if (next === undefined) return false;
  enter(batch, next, at);
  if (next === 'oven.queued') batch.came = at;
  if (next === 'done') delete m.bakes[who];
  return true;
};

const start = (m: Pots, { bake, from, loaves, vessel }: PotsDeed & { kind: 'start' }): boolean => {
  const known = [...Object.values(m.bakes).flatMap((b) => b.loaves), ...inOven(m), ...m.out];
  if (bake in m.bakes || loaves.some((loaf) => known.includes(loaf))) return false;
  const batch = { ...spot(''), vessel, loaves, came: m.now, wasSoon: false };
  enter(batch, from, m.now);
  m.bakes[bake] = batch;
  return true;
};

const act = (m: Pots, deed: PotsDeed, at: Instant): boolean => {
  if (deed.kind === 'start') return start(m, deed);
  if (deed.kind === 'heard') {
    if (!callsOf(m).includes(deed.call) || m.hushed.includes(deed.call)) return false;
    m.hushed.push(deed.call);
    return true;
  }
  if (deed.who === 'oven') return pressOven(m, deed, at);
  return deed.who.startsWith('lane.') ? pressLane(m, deed, at) : pressBake(m, deed, at);
};

/** One deed, or the waking that a take-back is; false where nothing should answer to it. */
const fold = (m: Pots, deed: PotsDeed | 'wake', at: Instant): boolean => {
  passTime(m, at);
  if (deed === 'wake') m.hushed = [];
  else if (!act(m, deed, at)) return false;
  settle(m);
  settle(m);
  passTime(m, at);
  return true;
};

/** The deeds that stand, and where they lead. */
export class PotsLog {
  model = noPots();
  private deeds: { readonly id: string; readonly at: Instant; readonly deed: PotsDeed | 'wake' }[] =
    [];

  do(id: string, at: Instant, deed: PotsDeed): boolean {
    const next = structuredClone(this.model);
    if (!fold(next, deed, at)) return false;
    this.model = next;
    this.deeds.push({ id, at, deed });
    return true;
  }

  /** The press or start that a take-back withdraws. */
  get latest(): string | null {
    const hands = ({ deed }: { deed: PotsDeed | 'wake' }) =>
      deed !== 'wake' && deed.kind !== 'heard';
    return this.deeds.findLast(hands)?.id ?? null;
  }

  /** What stands is gone through again without it; then all that calls speaks anew. */
  takeBack(id: string, at: Instant): void {
    const { latest } = this;
    const rest = this.deeds.filter((one) => one.id !== latest);
    this.model = noPots();
    this.deeds = [...rest, { id, at, deed: 'wake' as const }].filter(({ deed, at: then }) =>
      fold(this.model, deed, then),
    );
  }
}
