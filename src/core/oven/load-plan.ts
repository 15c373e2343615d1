import { MINUTE, type Instant, type Minutes } from '../units.ts';
import { coolingEnds } from './cooling-ends.ts';
import { energyOf } from './energy.ts';
import { fitBake } from './fit-bake.ts';
import { bestLoads } from './best-loads.ts';
import { vesselOf, type Laid, type Placeable } from './laid.ts';
import type { Lane, LateReason, LoadInput, LoadPlan, Turn, WaitingLoaf } from './lanes.ts';
import { byProof, gradeOf } from './load-order.ts';

/** A waiting loaf leaves the fridge this long before it is loaded. Common practice, no source. */
export const FETCH: Minutes = 10;
/** Until handed over, where the process does not say. Seen in print. */
const COOL: Minutes = 120;

const fits = (loaf: WaitingLoaf, pot: Lane): boolean =>
  vesselOf(loaf) === vesselOf(pot) && (pot.holds === null || loaf.grams <= pot.holds);

const hotFrom = ({ now, hotAt, minutes, standing = [] }: LoadInput): Instant =>
  Math.max(now, hotAt ?? (standing.length > 0 ? now : now + minutes.preheat * MINUTE));

/** From when a pot may be loaded; Infinity where it dropped out. */
const freeFrom = (input: LoadInput, { id, freeAt, droppedOut }: Lane): Instant => {
  const { standing = [], now, minutes } = input;
  if (droppedOut) return Infinity;
  const out = standing.flatMap(({ pot, outAt }) => (pot === id ? Math.max(now, outAt) : []));
  const recovered = out.map((at) => at + minutes.recovery * MINUTE);
  return Math.max(hotFrom(input), freeAt ?? now, ...recovered);
};

/** The pots a loaf may go into, by their place in the list. */
const potsOf = ({ pots }: LoadInput, loaf: WaitingLoaf): readonly number[] =>
  pots.flatMap((pot, i) => (!pot.droppedOut && fits(loaf, pot) ? i : []));

/** What a loaf asks of the hands, by its own mass, and where it may go. */
const placeable = (input: LoadInput, loaf: WaitingLoaf): Placeable => {
  const { minutes, piece, now } = input;
  const fitted = { ...minutes, vessel: vesselOf(loaf) };
  const all = piece === undefined ? minutes : fitBake(fitted, piece, loaf.grams);
  const { lidded, open } = loaf.own ?? all;
  return {
    loaf,
    asks: { load: minutes.loadMinutes, lid: lidded, out: lidded + open },
    pots: potsOf(input, loaf),
    from: Math.max(now, loaf.standsOutUntil ?? now),
  };
};

/** Out of the fridge in time, or when the hands are back. */
const fetchAt = (
  { now, away = [] }: LoadInput,
  { one: { loaf }, loadAt }: Laid,
): Instant | null => {
  if (loaf.warm || loaf.standsOutUntil !== undefined) return null;
  const at = Math.max(now, loadAt - FETCH * MINUTE);
  return away.find(({ from, until }) => from < at && at < until)?.until ?? at;
};

const reasonOf = ({ pots }: LoadInput, loaf: WaitingLoaf): LateReason | null => {
  if (loaf.standsOutUntil !== undefined) return 'standsOut';
  if (gradeOf(loaf) === 'sluggish') return 'sluggish';
  const usable = pots.filter((pot) => !pot.droppedOut && vesselOf(loaf) === vesselOf(pot));
  return usable.every((pot) => fits(loaf, pot)) ? null : 'tooBig';
};

/**
 * The loads of an oven, pot by pot: every loaf at most once, each pot refilled when it has recovered,
 * the most proofed loaves first. One pair of hands loads, so that loadings are `loadMinutes` apart and
 * keep clear of lids that come off (`hands.ts`). A plan, and no more: the lid and out calls of what
 * stands in a pot are never moved. Instants are ms, lengths minutes; what is not said is null.
 *
 * Up to six pots. Failure: none; what fits nowhere is named in `unplaced`.
 * Source: list scheduling (Graham 1966); minutes and margins as marked where they stand.
 *
 * @example
 * loadPlan({ loaves: [{ id: 'a', grams: 900 }], pots: [{ id: 'pot-1', holds: null }], minutes: { preheat: 60, lidded: 18, open: 20, recovery: 10, loadMinutes: 3 }, now: 0 }).energy.minutes // → 98
 */
export function loadPlan(input: LoadInput): LoadPlan {
  const { pots, standing = [], away = [], minutes, now } = input;
  const cool = minutes.cool ?? COOL;
  const room = (loaf: WaitingLoaf): number => potsOf(input, loaf).length;
  const [some, none] = [
    input.loaves.filter((loaf) => room(loaf) > 0),
    input.loaves.filter((loaf) => room(loaf) === 0),
  ];
  const laid = bestLoads(
    byProof(some).map((loaf) => placeable(input, loaf)),
    {
      free: pots.map((pot) => freeFrom(input, pot)),
      room: pots.map(({ holds }) => holds ?? Infinity),
      recovery: minutes.recovery * MINUTE,
      standing,
      away,
    },
  );
  const lanes = pots.map(({ id }, i) => {
    const there = standing
      .filter(({ pot }) => pot === id)
      .map(({ loaf, loadAt, lidAt, outAt, cool: own }): Turn => {
        const ends = coolingEnds(outAt, own ?? cool);
        return { loaf, fetchAt: null, loadAt, lidAt, outAt, ...ends, reason: null, stands: true };
      });
    const coming = laid
      .filter(({ pot }) => pot === i)
      .map((one): Turn => {
        const { loadAt, lidAt, outAt } = one;
        const { loaf } = one.one;
        const told = { reason: reasonOf(input, loaf), stands: false };
        const ends = { ...coolingEnds(outAt, loaf.own?.cool ?? cool), ...told };
        return { loaf: loaf.id, fetchAt: fetchAt(input, one), loadAt, lidAt, outAt, ...ends };
      });
    return { pot: id, turns: [...there, ...coming] };
  });
  const turns = lanes.flatMap((lane) => lane.turns);
  const latest = (of: (turn: Turn) => Instant): Instant | null =>
    turns.length === 0 ? null : Math.max(...turns.map(of));
  const gone = (at: Instant | null): at is Instant =>
    at !== null && at >= now && away.some(({ from, until }) => from <= at && at < until);
  return {
    lanes,
    unplaced: none.map((loaf) => ({
      loaf: loaf.id,
      reason: pots.some((pot) => !pot.droppedOut && vesselOf(loaf) === vesselOf(pot))
        ? 'tooBig'
        : 'noPot',
    })),
    lastOut: latest(({ outAt }) => outAt),
    lastBag: latest(({ bagAt }) => bagAt),
    unattended: standing.flatMap(({ pot, loaf, lidAt, outAt }) => [
      ...(gone(lidAt) ? [{ pot, loaf, call: 'lid' as const, at: lidAt }] : []),
      ...(gone(outAt) ? [{ pot, loaf, call: 'out' as const, at: outAt }] : []),
    ]),
    energy: energyOf(turns, {
      now,
      hotAt: hotFrom(input),
      recovery: minutes.recovery,
      pots: pots.filter(({ droppedOut }) => !droppedOut).length,
    }),
  };
}
