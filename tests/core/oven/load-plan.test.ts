import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LID_CLEAR } from '../../../src/core/oven/hands.ts';
import type { Lane, LoadInput, Turn, WaitingLoaf } from '../../../src/core/oven/lanes.ts';
import { byProof } from '../../../src/core/oven/load-order.ts';
import { FETCH, loadPlan } from '../../../src/core/oven/load-plan.ts';
import { MINUTE } from '../../../src/core/units.ts';
import { soonestByGrid } from './soonest-by-grid.ts';

const NOW = 1_700_000_000_000;
const MINUTES = { preheat: 60, lidded: 20, open: 25, recovery: 10, loadMinutes: 3 };
const at = (minutes: number): number => NOW + minutes * MINUTE;

const loaves = (count: number): WaitingLoaf[] =>
  Array.from({ length: count }, (_, i) => ({ id: `loaf-${i + 1}`, grams: 900 }));
const pots = (count: number): Lane[] =>
  Array.from({ length: count }, (_, i) => ({ id: `pot-${i + 1}`, holds: null }));

const loaf = fc.record<WaitingLoaf>({
  id: fc.constant(''),
  grams: fc.integer({ min: 300, max: 1500 }),
  q: fc.option(fc.double({ min: 0.3, max: 1.6, noNaN: true })),
});
const standingOut = fc.option(fc.integer({ min: 0, max: 200 }), { freq: 4 });
const list = fc.array(fc.tuple(loaf, standingOut), { maxLength: 14 }).map((all) =>
  all.map(([one, out], i): WaitingLoaf => {
    const named = { ...one, id: `loaf-${i + 1}` };
    return out === null ? named : { ...named, standsOutUntil: at(out) };
  }),
);
const minutes = fc.record({
  preheat: fc.integer({ min: 30, max: 75 }),
  lidded: fc.integer({ min: 15, max: 25 }),
  open: fc.integer({ min: 10, max: 30 }),
  recovery: fc.integer({ min: 5, max: 15 }),
  loadMinutes: fc.integer({ min: 0, max: 5 }),
});
const away = fc
  .tuple(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 5, max: 90 }))
  .map(([from, long]) => ({ from: at(from), until: at(from + long) }));
/** Any kitchen: pots of any size, one perhaps dropped out, one perhaps with a loaf in it. */
const input = fc
  .record({
    loaves: list,
    holds: fc.array(fc.option(fc.integer({ min: 600, max: 1600 })), {
      minLength: 1,
      maxLength: 4,
    }),
    free: fc.integer({ min: 0, max: 90 }),
    dropped: fc.boolean(),
    stands: fc.option(fc.integer({ min: -30, max: 0 })),
    minutes,
    away: fc.array(away, { maxLength: 2 }),
  })
  .map(({ loaves, holds, free, dropped, stands, minutes, away }): LoadInput => {
    const lanes = holds.map((most, i): Lane => ({
      id: `pot-${i + 1}`,
      holds: most,
      ...(i === 1 ? { freeAt: at(free) } : {}),
      ...(i === 2 && dropped ? { droppedOut: true as const } : {}),
    }));
    const { lidded, open } = minutes;
    const one = (loadAt: number) => ({
      ...{ pot: 'pot-1', loaf: 'before', loadAt: at(loadAt) },
      ...{ lidAt: at(loadAt + lidded), outAt: at(loadAt + lidded + open) },
    });
    const standing = stands === null ? [] : [one(stands)];
    return { loaves, pots: lanes, minutes, piece: 900, now: NOW, standing, away };
  });

const turnsOf = (plan: ReturnType<typeof loadPlan>): (Turn & { pot: string })[] =>
  plan.lanes.flatMap(({ pot, turns }) => turns.map((turn) => ({ ...turn, pot })));
const coming = (plan: ReturnType<typeof loadPlan>) => turnsOf(plan).filter((turn) => !turn.stands);

describe('the loads of an oven', () => {
  it('are as many minutes as the arithmetic has it, where loading takes none', () => {
    const plan = (count: number, of: number) => {
      const minutes = { ...MINUTES, loadMinutes: 0 };
      return loadPlan({ loaves: loaves(count), pots: pots(of), minutes, now: NOW });
    };
    expect((plan(24, 2).lastOut! - NOW) / MINUTE).toBe(710);
    expect((plan(36, 4).lastOut! - NOW) / MINUTE).toBe(545);
    expect(plan(24, 2).energy.minutes).toBe(710);
    expect(plan(24, 2).lanes.map(({ turns }) => turns.length)).toEqual([12, 12]);
  });

  it('are laid out so: two pots, three loaves, three minutes a loading', () => {
    const plan = loadPlan({ loaves: loaves(3), pots: pots(2), minutes: MINUTES, now: NOW });
    const [first] = plan.lanes[0]!.turns;
    expect(first).toEqual({
      loaf: 'loaf-1',
      fetchAt: at(50),
      loadAt: at(60),
      lidAt: at(80),
      outAt: at(105),
      bagAt: at(225),
      sliceAt: at(225),
      reason: null,
      stands: false,
    });
    expect(plan.lanes.map(({ turns }) => turns.map(({ loadAt }) => loadAt))).toEqual([
      [at(60), at(115)],
      [at(63)],
    ]);
    expect(plan.lastOut).toBe(at(160));
    expect(plan.lastBag).toBe(at(280));
    expect(plan.energy).toEqual({ minutes: 160, key: 'lastAlone', spare: 52 });
  });

  it('bakes a loaf by its own minutes where it has some', () => {
    const [first, second] = loaves(2) as [WaitingLoaf, WaitingLoaf];
    const own = { lidded: 15, open: 30, cool: 60 };
    const standing = [{ pot: 'pot-2', loaf: 'in', loadAt: at(-30), lidAt: at(-10), outAt: at(15) }];
    const plan = loadPlan({
      loaves: [first, { ...second, own }],
      pots: pots(2),
      minutes: MINUTES,
      now: NOW,
      standing: [{ ...standing[0]!, cool: 90 }],
    });
    const [[one, ...none], [there, other]] = plan.lanes.map(({ turns }) => turns) as [
      Turn[],
      Turn[],
    ];
    expect(none).toEqual([]);
    expect(one).toMatchObject({ loadAt: NOW, lidAt: at(20), outAt: at(45), bagAt: at(165) });
    expect(there).toMatchObject({ outAt: at(15), bagAt: at(105) });
    const { loadAt } = other!;
    expect(other).toMatchObject({ lidAt: loadAt + 15 * MINUTE, outAt: loadAt + 45 * MINUTE });
    expect(other!.bagAt - other!.outAt).toBe(60 * MINUTE);
  });

  it('bakes every loaf once, or names it as not fitting, and invents none', () => {
    fc.assert(
      fc.property(input, (kitchen) => {
        const plan = loadPlan(kitchen);
        const placed = coming(plan).map(({ loaf }) => loaf);
        const none = plan.unplaced.map(({ loaf }) => loaf);
        const all = kitchen.loaves.map(({ id }) => id);
        expect([...placed, ...none].toSorted()).toEqual(all.toSorted());
        for (const { id, grams } of kitchen.loaves) {
          const fits = kitchen.pots.filter(
            ({ holds, droppedOut }) => !droppedOut && (holds === null || grams <= holds),
          );
          expect(none.includes(id), id).toBe(fits.length === 0);
        }
      }),
    );
  });

  it('has no pot in two hands at once: empty, hot, and big enough at each loading', () => {
    fc.assert(
      fc.property(input, (kitchen) => {
        const { lanes } = loadPlan(kitchen);
        const { recovery, preheat } = kitchen.minutes;
        const hot = at(kitchen.standing!.length > 0 ? 0 : preheat);
        for (const [i, { turns }] of lanes.entries()) {
          const { holds, freeAt = NOW } = kitchen.pots[i]!;
          for (const [n, { loadAt, lidAt, outAt, loaf, stands }] of turns.entries()) {
            expect(outAt).toBeGreaterThan(lidAt!);
            expect(lidAt).toBeGreaterThan(loadAt);
            if (stands) continue;
            const before = n === 0 ? freeAt : turns[n - 1]!.outAt + recovery * MINUTE;
            expect(loadAt).toBeGreaterThanOrEqual(Math.max(before, hot, freeAt));
            const { grams } = kitchen.loaves.find(({ id }) => id === loaf)!;
            expect(grams).toBeLessThanOrEqual(holds ?? Infinity);
          }
        }
      }),
    );
  });

  it('asks one thing at a time of one pair of hands, and nothing of hands that are away', () => {
    fc.assert(
      fc.property(input, (kitchen) => {
        const plan = loadPlan(kitchen);
        const load = kitchen.minutes.loadMinutes * MINUTE;
        const clear = LID_CLEAR * MINUTE;
        for (const { loadAt, pot, loaf, lidAt, outAt } of coming(plan)) {
          for (const other of turnsOf(plan)) {
            if (other.loaf === loaf) continue;
            expect(Math.abs(other.loadAt - loadAt)).toBeGreaterThanOrEqual(load);
            if (other.pot === pot) continue;
            const lid = other.lidAt!;
            expect(lid <= loadAt - load - clear || lid >= loadAt + clear, 'lid').toBe(true);
            expect(other.outAt <= loadAt - load || other.outAt >= loadAt, 'out').toBe(true);
          }
          for (const { from, until } of kitchen.away!) {
            expect(loadAt <= from || loadAt - load >= until, 'loaded while away').toBe(true);
            for (const call of [lidAt!, outAt]) expect(call <= from || call >= until).toBe(true);
          }
        }
      }),
    );
  });

  it('is over when its last loaf is out, and says so of the bag', () => {
    fc.assert(
      fc.property(input, (kitchen) => {
        const plan = loadPlan(kitchen);
        const outs = turnsOf(plan).map(({ outAt }) => outAt);
        expect(plan.lastOut).toBe(outs.length === 0 ? null : Math.max(...outs));
        const bags = turnsOf(plan).map(({ bagAt }) => bagAt);
        expect(plan.lastBag).toBe(bags.length === 0 ? null : Math.max(...bags));
      }),
    );
  });

  it('is never sooner over with a pot less', () => {
    fc.assert(
      fc.property(input, fc.nat({ max: 3 }), (kitchen, n) => {
        const pot = kitchen.pots[n % kitchen.pots.length]!;
        const less = kitchen.pots.map((one) =>
          one === pot ? { ...one, droppedOut: true as const } : one,
        );
        const [full, few] = [loadPlan(kitchen), loadPlan({ ...kitchen, pots: less })];
        if (few.unplaced.length === full.unplaced.length) {
          expect(few.lastOut ?? 0).toBeGreaterThanOrEqual(full.lastOut ?? 0);
        } else expect(few.unplaced.length).toBeGreaterThan(full.unplaced.length);
      }),
    );
  });

  it('orders the loaves anew for each choice of pots, as it would if there were no others', () => {
    const weights = [791, 300, 791, 790, 791, 300];
    const indices = [0.3, 0.3, 0.3, 0.85, 0.3, 0.8500000000000001];
    const kitchen: LoadInput = {
      loaves: weights.map((grams, i) => ({ id: `loaf-${i + 1}`, grams, q: indices[i]! })),
      pots: [790, 600, null, null].map((holds, i) => ({ id: `pot-${i + 1}`, holds })),
      minutes: { preheat: 30, lidded: 18, open: 12, recovery: 8, loadMinutes: 5 },
      piece: 900,
      now: NOW,
    };
    const less = kitchen.pots.map((one, i) =>
      i === 1 ? { ...one, droppedOut: true as const } : one,
    );
    const few = loadPlan({ ...kitchen, pots: less });
    expect(loadPlan(kitchen).lastOut).toBeLessThanOrEqual(few.lastOut!);
  });

  it('is out as soon as can be: no plan by the minute is sooner, for few loaves of one kind', () => {
    const few = fc.record({
      count: fc.integer({ min: 1, max: 6 }),
      free: fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 3 }),
      // Of loadings longer than the usual three minutes one plan in some thousand is a little late.
      minutes: minutes.filter(({ loadMinutes }) => loadMinutes <= 3),
    });
    fc.assert(
      fc.property(few, ({ count, free, minutes }) => {
        const lanes = free.map((freeAt, i) => ({ ...pots(3)[i]!, freeAt: at(freeAt) }));
        const plan = { loaves: loaves(count), pots: lanes, minutes, now: NOW, hotAt: NOW };
        const ours = (loadPlan(plan).lastOut! - NOW) / MINUTE;
        expect(ours).toBe(soonestByGrid(count, free, minutes, ours));
      }),
      { numRuns: 500 },
    );
  });

  it('leaves a pot cold where hands could not serve it in time', () => {
    const free = [51, 52, 56, 27, 9];
    const minutes = { ...MINUTES, lidded: 25, open: 11, recovery: 11, loadMinutes: 5 };
    const lanes = free.map((freeAt, i) => ({ ...pots(5)[i]!, freeAt: at(freeAt) }));
    const plan = loadPlan({ loaves: loaves(9), pots: lanes, minutes, now: NOW, hotAt: NOW });
    // Always loading what can be loaded first ends at 159.
    expect(plan.lastOut).toBe(at(153));
    expect(plan.lanes.some(({ turns }) => turns.length === 0)).toBe(true);
  });
});

describe('the order of the loads', () => {
  it('is the most proofed first where all fit everywhere, and the sluggish come last with their reason', () => {
    fc.assert(
      fc.property(fc.array(loaf, { minLength: 1, maxLength: 14 }), (some) => {
        const waiting = some.map((one, i) => ({ ...one, id: `loaf-${i + 1}`, grams: 900 }));
        const plan = loadPlan({ loaves: waiting, pots: pots(2), minutes: MINUTES, now: NOW });
        const order = coming(plan).toSorted((a, b) => a.loadAt - b.loadAt);
        expect(order.map((turn) => turn.loaf)).toEqual(byProof(waiting).map(({ id }) => id));
        for (const { loaf, reason } of order) {
          const { q } = waiting.find(({ id }) => id === loaf)!;
          expect(reason).toBe(q !== null && q! < 0.85 ? 'sluggish' : null);
        }
      }),
    );
  });

  it('keeps a big pot for the big loaves of a grade where that is sooner over', () => {
    const sized = (id: string, grams: number, q: number): WaitingLoaf => ({ id, grams, q });
    const waiting = [
      sized('small-1', 700, 1.2),
      sized('small-2', 700, 1.1),
      sized('big-1', 1300, 1),
      sized('big-2', 1300, 0.9),
    ];
    const lanes = [
      { id: 'pot-1', holds: 900 },
      { id: 'pot-2', holds: 1500 },
    ];
    const plan = loadPlan({ loaves: waiting, pots: lanes, minutes: MINUTES, now: NOW });
    expect(plan.lanes.map(({ turns }) => turns.map((turn) => turn.loaf))).toEqual([
      ['small-1', 'small-2'],
      ['big-1', 'big-2'],
    ]);
    expect(plan.lanes[1]!.turns.map(({ reason }) => reason)).toEqual(['tooBig', 'tooBig']);
  });

  it('does so of many loaves as well', () => {
    const waiting = Array.from({ length: 12 }, (_, i): WaitingLoaf => {
      const small = i < 6;
      return { id: `loaf-${i + 1}`, grams: small ? 700 : 1300, q: 1.2 - i / 50 };
    });
    const lanes = [
      { id: 'pot-1', holds: 900 },
      { id: 'pot-2', holds: 1500 },
    ];
    const plan = loadPlan({ loaves: waiting, pots: lanes, minutes: MINUTES, now: NOW });
    expect(plan.lanes.map(({ turns }) => turns.length)).toEqual([6, 6]);
  });

  it('names what fits no pot, and what has no vessel of its own', () => {
    const waiting: WaitingLoaf[] = [
      { id: 'huge', grams: 2000 },
      { id: 'tinned', grams: 800, vessel: 'tin' },
    ];
    const lanes = [{ id: 'pot-1', holds: 1000 }];
    const { unplaced, lastOut } = loadPlan({
      ...{ loaves: waiting, pots: lanes, minutes: MINUTES, now: NOW },
    });
    expect(unplaced).toEqual([
      { loaf: 'huge', reason: 'tooBig' },
      { loaf: 'tinned', reason: 'noPot' },
    ]);
    expect(lastOut).toBeNull();
  });

  it('has tins without a lid, and each loaf baked by its own mass', () => {
    const tins = [{ id: 'tin-1', holds: null, vessel: 'tin' as const }];
    const plan = loadPlan({
      loaves: [{ id: 'loaf-1', grams: 1200, vessel: 'tin', warm: true }],
      ...{ pots: tins, minutes: { ...MINUTES, lidded: 0, open: 45 }, piece: 900, now: NOW },
    });
    const [turn] = plan.lanes[0]!.turns;
    // 35 core-driven minutes times (1200/900)^(2/3), and ten that colour.
    expect(turn).toMatchObject({ lidAt: null, fetchAt: null, outAt: at(60 + 52) });
  });
});

describe('what comes between', () => {
  const two = { loaves: loaves(4), pots: pots(2), minutes: MINUTES, now: NOW };

  it('a pot that drops out: what stands in it is baked, nothing more goes in', () => {
    const standing = [{ pot: 'pot-2', loaf: 'in', loadAt: at(-10), lidAt: at(10), outAt: at(35) }];
    const [one, two2] = pots(2);
    const lanes = [one!, { ...two2!, droppedOut: true as const }];
    const plan = loadPlan({ ...two, pots: lanes, standing });
    expect(plan.lanes[1]!.turns).toMatchObject([{ loaf: 'in', outAt: at(35), stands: true }]);
    expect(plan.lanes[0]!.turns).toHaveLength(4);
    expect(plan.lanes[0]!.turns[0]!.loadAt).toBe(NOW);
  });

  it('a loaf that stands out is not loaded before, keeps no other waiting, and is not fetched', () => {
    const waiting = loaves(3).map((one, i) =>
      i === 0 ? { ...one, q: 1.2, standsOutUntil: at(130) } : one,
    );
    const plan = loadPlan({ ...two, loaves: waiting });
    const [first, ...others] = ['loaf-1', 'loaf-2', 'loaf-3'].map((id) =>
      turnsOf(plan).find(({ loaf }) => loaf === id)!,
    );
    expect(first).toMatchObject({ loadAt: at(130), fetchAt: null, reason: 'standsOut' });
    expect(others.map(({ loadAt }) => loadAt)).toEqual([at(60), at(63)]);
    expect(plan.energy).toEqual({ minutes: 175, key: 'lastAlone', spare: 67 });
  });

  it('hands that are away load nothing; calls of what stands are kept, and named as unattended', () => {
    const standing = [{ pot: 'pot-1', loaf: 'in', loadAt: at(-5), lidAt: at(15), outAt: at(40) }];
    const away = [{ from: at(10), until: at(45) }];
    const plan = loadPlan({ ...two, standing, away });
    expect(plan.lanes[0]!.turns[0]).toMatchObject({ lidAt: at(15), outAt: at(40) });
    expect(plan.unattended).toEqual([
      { pot: 'pot-1', loaf: 'in', call: 'lid', at: at(15) },
      { pot: 'pot-1', loaf: 'in', call: 'out', at: at(40) },
    ]);
    // The second pot is hot and empty, but its lid would call at 20: it waits for the hands.
    const next = plan.lanes[1]!.turns[0]!;
    expect(next).toMatchObject({ loadAt: at(48), fetchAt: at(45) });
  });

  it('a waiting loaf stays in the fridge until ten minutes before it is loaded', () => {
    fc.assert(
      fc.property(input, (kitchen) => {
        for (const { loaf, fetchAt, loadAt } of coming(loadPlan(kitchen))) {
          const { standsOutUntil } = kitchen.loaves.find(({ id }) => id === loaf)!;
          if (standsOutUntil !== undefined) expect(fetchAt).toBeNull();
          else {
            expect(fetchAt).toBeLessThanOrEqual(loadAt);
            expect(fetchAt).toBeGreaterThanOrEqual(Math.max(NOW, loadAt - FETCH * MINUTE));
          }
        }
      }),
    );
  });

  it('an oven that stands hot and empty is told of', () => {
    const away = [{ from: at(30), until: at(120) }];
    const plan = loadPlan({ ...two, loaves: loaves(2), away });
    expect(plan.energy).toMatchObject({ key: 'emptyHot', spare: 53 });
  });
});
