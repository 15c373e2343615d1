import type { Doubt } from '../clock/doubt.ts';
import type { Recipe } from '../formula/recipe.ts';
import type { Belief } from '../readiness/belief.ts';
import type { Seen } from '../records/seen.ts';
import type { BakeStage, OvenStage } from '../records/stage.ts';
import { MINUTE, type Celsius, type Instant, type Minutes } from '../units.ts';
import { TRAY } from '../oven/tray.ts';
import { bulkWait } from './bulk-wait.ts';
import { coldWait } from './cold-wait.ts';
import { counterMinutes } from './counter-minutes.ts';
import { headsUp } from './heads-up.ts';
import { leadTasks } from './lead-tasks.ts';
import { levainWait } from './levain-wait.ts';
import { riseAsks } from './rise-asks.ts';
import { standOutWait } from './stand-out-wait.ts';
import { warmWait } from './warm-wait.ts';

/** Everything a wait's instants may depend on. */
export interface WaitInput {
  /** A waiting stage, or one that foretells the next wait. */
  readonly stage: BakeStage | OvenStage;
  /** When the wait begins or is judged again. */
  readonly now: Instant;
  readonly recipe: Recipe;
  /** Kitchen temperature, constant until a reading says otherwise. */
  readonly kitchen: Celsius;
  /** Last entry into each stage. */
  readonly entered: Readonly<Record<string, Instant>>;
  /** Bulk touches already done. */
  readonly touches: number;
  /** What was believed of the starter when the bake began; what was seen since is weighed in anew. */
  readonly prior: Belief;
  /** Every reading of the bake that stands, and what its looks said, in any order. */
  readonly seen: readonly Seen[];
  /** Tasks of this bake that are done. */
  readonly done: readonly string[];
  /** After a "not yet": the next look, not the first. */
  readonly again: boolean;
  /** Of a loaf at the oven's door: how long its poke lets it stand out, where one was told. */
  readonly stands?: Minutes;
  /** Of a loaf whose core was low: minutes to its next look, where they were foretold. */
  readonly more?: Minutes;
  /** Of a lane: a loaf that went over bakes flat in it. */
  readonly inTray?: true;
  /** When the levain's jar was filled; left out where nobody knows. */
  readonly fedAt?: Instant;
  /** When the loaves went into the fridge, and when they were taken out to stand; left out where not. */
  readonly chilled?: Instant;
  readonly takenOut?: Instant;
  /** When the plan that stands has the oven on for these loaves; left out where none has. */
  readonly ovenOn?: Instant;
}

/** All instants of one wait by name, and what they rest on. */
export interface Wait {
  readonly marks: Readonly<Record<string, Instant>>;
  readonly belief?: Belief;
  readonly model: string;
  readonly doubt?: Doubt;
}

/** Written with every result, so that an old bake says which model it was judged by. */
export const MODEL = 'clock-5';

/**
 * Minutes to the next look after a "not yet": a crust whose core foretells none (`more-minutes.ts`), a
 * loaf left standing. Judgement. They are no
 * matter of the kitchen or the plan, and the oven knows no loaf's way: its load may be of several bakes.
 */
const AGAIN = { crust: 5, standing: 20 } as const;

const after = (at: Instant, minutes: Minutes): Instant => Math.round(at + minutes * MINUTE);

/** The wait alone, without what it asks of free hands. */
function plainWait(input: WaitInput): Wait {
  const { stage, now, recipe, entered, touches, again } = input;
  const { process } = recipe;
  const plain = (mark: string, minutes: Minutes): Wait => ({
    marks: { [mark]: after(now, minutes) },
    model: MODEL,
  });
  switch (stage) {
    case 'levain.ripening':
      return levainWait(input);
    case 'mix.rest':
      return plain('end', process.rest);
    case 'bulk.between': {
      const { marks, ...wait } = bulkWait(input);
      const { look: _, ...window } = marks;
      return {
        ...wait,
        marks: { ...window, touch: after(now, process.touches[touches]?.after ?? 0) },
      };
    }
    case 'bulk.proving':
      return bulkWait(input);
    case 'shape.benchRest':
      return plain('end', process.benchRest);
    case 'shape.basket':
      return plain('fridge', counterMinutes(input));
    // As it was said while the baskets were filled.
    case 'proof.counter':
      return plain('end', counterMinutes({ ...input, now: entered['shape.basket'] ?? now }));
    case 'proof.warm':
    case 'proof.soon':
      return input.takenOut === undefined ? warmWait(input) : standOutWait(input, input.takenOut);
    case 'proof.retard':
      return coldWait(input);
    case 'preheating':
      return plain('hot', process.preheat);
    case 'standing':
      return plain('poke', input.stands ?? AGAIN.standing);
    case 'steaming':
      return plain('vent', process.lidded);
    case 'lidded':
      return plain('lid', process.lidded);
    case 'open':
      return plain(
        'colour',
        again ? (input.more ?? AGAIN.crust) : input.inTray ? TRAY.least : process.open,
      );
    case 'recover':
      return plain('hot', process.recovery);
    case 'cool.cooling':
      return plain('end', process.cool);
    default:
      throw new Error(`The stage ${stage} does not wait.`);
  }
}

/** The mark each wait that carries tasks runs to. */
const ENDS: Readonly<Partial<Record<BakeStage | OvenStage, string>>> = {
  'levain.ripening': 'look',
  'mix.rest': 'end',
  'bulk.between': 'touch',
  'bulk.proving': 'look',
  'shape.benchRest': 'end',
  'proof.counter': 'end',
  preheating: 'hot',
  recover: 'hot',
  open: 'colour',
  lidded: 'lid',
  steaming: 'vent',
};

/**
 * The instants of a waiting stage, levain, dough and loaf by the dough clock, the rest by the process;
 * of the baskets being filled, when they would go into the fridge; and
 * as `lead.<task>` when each task falls due that it asks of free hands.
 * Pure; every instant is finite and in whole milliseconds.
 *
 * @throws Error `The stage x does not wait.`
 */
export function waitFor(input: WaitInput): Wait {
  const wait = plainWait(input);
  const end = wait.marks[ENDS[input.stage] ?? ''];
  if (end === undefined) return wait;
  const asks = riseAsks(input, { likely: wait.marks['likely'], end });
  const tasks = leadTasks(input, end, wait.marks['earliest']);
  const leads = Object.entries({ ...tasks, ...headsUp(input, end), ...asks }).map(([task, at]) => [
    `lead.${task}`,
    at,
  ]);
  return { ...wait, marks: { ...wait.marks, ...(Object.fromEntries(leads) as Wait['marks']) } };
}
