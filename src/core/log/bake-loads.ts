import type { Fact, OvenAct, Reading } from '../records/fact.ts';
import { ONE_LANE } from '../records/lane.ts';
import type { LaneVessel } from '../records/position.ts';
import type { Instant } from '../units.ts';
import type { BakeRows } from './bake-rows.ts';

type Colour = Extract<Reading, { what: 'crust' }>['colour'];
type Press = Extract<Fact, { kind: 'press' }>;

/** What went into one pot at a time, or onto the stone, or into the tins, as far as it is of one bake. */
export interface BakeLoad {
  /** The lane's name (records/lane.ts). */
  readonly lane: string;
  readonly vessel: LaneVessel | null;
  readonly loaves: readonly string[];
  readonly in: Instant;
  /** The lid off, or the steam let out; null: there was none, or nobody said. */
  readonly opened: Instant | null;
  /** The crust was told ready, over, or not yet. */
  readonly looks: readonly { readonly at: Instant; readonly said: OvenAct }[];
  readonly colour: Colour | null;
  readonly out: Instant | null;
}

const LOOKS: readonly OvenAct[] = ['crustReady', 'crustNotYet', 'crustOnRack', 'crustOver'];
const COLOURS: readonly Colour[] = ['pale', 'golden', 'dark'];

/** The loads of a bake in the order they went in. */
export function bakeLoads({ start, rows, standing }: BakeRows): readonly BakeLoad[] {
  const presses = standing.filter((fact): fact is Press => fact.kind === 'press');
  const placeAfter = new Map(rows.map(({ fact, position }) => [fact.id, position]));
  return presses.flatMap((put, n): BakeLoad[] => {
    const loaves = put.loaves?.filter((loaf) => start.loaves.includes(loaf)) ?? [];
    if (put.act !== 'loaded' || loaves.length === 0) return [];
    const { lanes } = placeAfter.get(put.id)!;
    const lane =
      put.lane ??
      Object.keys(lanes).find((name) => lanes[name]!.loaves.includes(loaves[0]!)) ??
      ONE_LANE;
    const of = presses.slice(n + 1).filter(({ who }) => who === lane);
    const last = of.findIndex(({ act }) => act === 'unloaded');
    const own = last < 0 ? of : of.slice(0, last + 1);
    const opened = own.find(({ act }) => act === 'lidOff' || act === 'steamOut');
    const looks = own.flatMap(({ at, act }) =>
      LOOKS.includes(act as OvenAct) ? [{ at, said: act as OvenAct }] : [],
    );
    const said = own.findLast(({ act, item }) => act === 'answer' && item === 'colour')?.value;
    return [
      {
        lane,
        vessel: lanes[lane]?.vessel ?? null,
        loaves,
        in: put.at,
        opened: opened ? (opened.was ?? opened.at) : null,
        looks,
        colour: COLOURS.find((colour) => colour === said) ?? null,
        out: own[last]?.at ?? null,
      },
    ];
  });
}
