import type { Fact, Result } from '../../src/core/records/fact.ts';
import { sounding } from '../attention/attention.ts';
import { advance } from './advance.ts';
import { deliver } from './deliver.ts';
import { emptyKitchen, type Kitchen, type Machines } from './kitchen.ts';
import { machineOf } from './machine-of.ts';
import { kitchenAt, positionOf } from './position.ts';
import { settle } from './settle.ts';
import { STARTER } from './starter.ts';
import { starterJudged } from './tend-starter.ts';
import { stageOf } from './stage-of.ts';
import { stepBake, type Say, type Stepped } from './step.ts';
import { stepMachine } from './step-machine.ts';
import { takeBackTarget, without } from './take-back.ts';

/** Whether results are of the very wait a machine stands in, not of another at the same stage. */
const isOf = (
  machine: NonNullable<ReturnType<typeof machineOf>>,
  { stage, since }: Result,
): boolean => stageOf(machine) === stage && (machine.context.entered[stage] ?? since) === since;

/** The models' results of a fact; one that names a wait no longer stood in is ignored. */
const judge = (kitchen: Kitchen, machines: Machines, fact: Fact): Kitchen => {
  const at = fact.at;
  return (fact.results ?? []).reduce((next, result) => {
    const { who, marks, belief, doubt } = result;
    if (who === STARTER) return starterJudged(next, result, at);
    const machine = machineOf(next, who);
    if (machine === undefined || !isOf(machine, result)) return next;
    if (!(who in next.bakes)) {
      return stepMachine(next, machines, who, { type: 'judged', at, marks }).kitchen;
    }
    const event = {
      type: 'judged',
      at,
      marks,
      ...(belief ? { belief } : {}),
      ...(doubt ? { doubt } : {}),
    } as const;
    return stepBake(next, machines, who, event).kitchen;
  }, kitchen);
};

/** Nothing bakes, nothing calls, nothing waits: a fold that begins here knows all there is to know. */
const isIdle = ({ bakes, oven }: Kitchen): boolean =>
  Object.keys(bakes).length === 0 && stageOf(oven) === 'off';

/** A start is pinned with what was believed at it: what was delivered was bare. */
const pinned = (kitchen: Kitchen, fact: Fact): Kitchen =>
  fact.kind === 'start' ? { ...kitchen, starts: { ...kitchen.starts, [fact.id]: fact } } : kitchen;

/**
 * A fact on its way: its act is done, its results are not. `close` gives it them, as often as asked:
 * so that one that is judged is folded once, bare and with what the models said of where it led.
 */
export interface Begun {
  /** False where nothing answers to it; then only time has passed. */
  readonly taken: boolean;
  /** The kitchen after the fact, results and all; it is the bare fact or the same with results. */
  close(fact: Fact): Stepped;
}

/** One fact as it stands in the log: advance, act, settle, results, settle, advance. */
const beginPlain = (kitchen: Kitchen, machines: Machines, bare: Fact): Begun => {
  const before = advance(kitchen, machines, bare.at);
  const acted = deliver(before.kitchen, machines, bare);
  if (!acted.taken) return { taken: false, close: () => ({ ...before, taken: false }) };
  const settled = settle(acted.kitchen, machines);
  const idle = bare.kind === 'start' && isIdle(before.kitchen) ? before.kitchen : kitchen.idle;
  return {
    taken: true,
    close(fact) {
      const judged = settle(judge(settled.kitchen, machines, fact), machines);
      const after = advance(judged.kitchen, machines, fact.at);
      return {
        kitchen: pinned(
          { ...after.kitchen, standing: [...after.kitchen.standing, fact], idle },
          fact,
        ),
        taken: true,
        says: [...before.says, ...acted.says, ...settled.says, ...judged.says, ...after.says],
      };
    },
  };
};

/** Where a fold begins: an empty kitchen, or the one the last jump set. Its own starts come again. */
const baseKitchen = (kitchen: Kitchen, machines: Machines): Kitchen => {
  const { base, starts, standing, planAtBase } = kitchen;
  if (base === null) return { ...emptyKitchen(machines), plan: planAtBase, planAtBase };
  const again = new Set(standing.map((fact) => fact.id));
  const earlier = Object.fromEntries(Object.entries(starts).filter(([id]) => !again.has(id)));
  const at = kitchenAt(base, earlier, machines);
  return settle({ ...at, plan: planAtBase, planAtBase }, machines).kitchen;
};

/**
 * What stands is folded again, and the take-back after it: it wakes every pending call, else a lid
 * call re-armed by it would be kept silent by an earlier hush. It stays among what stands, for its
 * results belong to every later fold.
 */
const beginTakeBack = (
  kitchen: Kitchen,
  machines: Machines,
  bare: Fact & { kind: 'takeBack' },
): Begun => {
  // At its own instant: what was put off till then rings again, and is no press to take back.
  if (takeBackTarget(advance(kitchen, machines, bare.at).kitchen)?.id !== bare.target) {
    return { taken: false, close: () => ({ kitchen, taken: false, says: [] }) };
  }
  // A start is itself the latest press until another follows: the target is never before `idle`.
  const from = kitchen.idle ?? baseKitchen(kitchen, machines);
  const again = without(kitchen.standing, bare.target)
    .slice(from.standing.length)
    .reduce((next, standing) => beginPlain(next, machines, standing).close(standing).kitchen, from);
  const begun = beginPlain(again, machines, bare);
  return {
    taken: true,
    close(fact) {
      const { kitchen: after } = begun.close(fact);
      return {
        // A start taken back is still known: a jump to a stored position may name it.
        kitchen: { ...after, seq: kitchen.seq, starts: { ...kitchen.starts, ...after.starts } },
        taken: true,
        says: saysAfter(kitchen, after),
      };
    },
  };
};

/** A take-back says where it leads back to, not what the refold passed through, and what rings anew. */
const saysAfter = (before: Kitchen, after: Kitchen): readonly Say[] => {
  const moved = (who: string, a: string | null, b: string): Say[] =>
    a === b ? [] : [{ who, stage: b }];
  const rang = new Set(sounding(before.attention.context).map(({ id }) => id));
  const places = [
    ...moved('oven', stageOf(before.oven), stageOf(after.oven)),
    ...Object.entries({ ...after.lanes, ...after.bakes }).flatMap(([who, machine]) => {
      const earlier = machineOf(before, who);
      return moved(who, earlier ? stageOf(earlier) : null, stageOf(machine));
    }),
  ];
  const rings = sounding(after.attention.context).flatMap(({ id, who, stage }): Say[] =>
    rang.has(id) || places.some((say) => say.who === who && say.stage === stage)
      ? []
      : [{ who, stage }],
  );
  return [...places, ...rings];
};

/**
 * Rebuilt where someone said we are; nothing before it can be taken back. A place named without its
 * instants gets them from the results, so the base of later folds is where the jump ended.
 */
const beginJump = (kitchen: Kitchen, machines: Machines, bare: Fact & { kind: 'jump' }): Begun => {
  const at = kitchenAt(bare.position, kitchen.starts, machines);
  const { seq, plan } = kitchen;
  const placed = settle({ ...at, seq, plan, planAtBase: plan }, machines).kitchen;
  const now = advance(placed, machines, bare.at).kitchen;
  return {
    taken: true,
    close(fact) {
      const judged = settle(judge(now, machines, fact), machines).kitchen;
      const { kitchen: next } = advance(judged, machines, fact.at);
      return {
        kitchen: { ...next, base: positionOf(next) },
        taken: true,
        says: saysAfter(kitchen, next),
      };
    },
  };
};

/** Does a fact's act; `close` ends it. Pure: effects come back in `says`, and replay ignores them. */
export const begin = (kitchen: Kitchen, machines: Machines, bare: Fact): Begun => {
  const begun =
    bare.kind === 'takeBack'
      ? beginTakeBack(kitchen, machines, bare)
      : bare.kind === 'jump'
        ? beginJump(kitchen, machines, bare)
        : beginPlain(kitchen, machines, bare);
  return {
    taken: begun.taken,
    close(fact) {
      const stepped = begun.close(fact);
      return stepped.taken
        ? { ...stepped, kitchen: { ...stepped.kitchen, seq: kitchen.seq + 1 } }
        : stepped;
    },
  };
};

/** Folds one fact in. `taken` is false where nothing answers to it; then only time has passed. */
export const apply = (kitchen: Kitchen, machines: Machines, fact: Fact): Stepped =>
  begin(kitchen, machines, fact).close(fact);
