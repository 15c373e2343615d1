import { saneCelsius } from '../clock/doubt.ts';
import { PROOF_WINDOW } from '../clock/proof-index.ts';
import { beliefOf } from '../readiness/posterior.ts';
import { HOUR, MINUTE, type Hours, type Instant, type Minutes } from '../units.ts';
import { roomOf } from './dough-path.ts';
import { proofCourse, type IndexAt } from './proof-course.ts';
import { proofDough } from './proof-dough.ts';
import { MODEL, type Wait, type WaitInput } from './waits.ts';

/** Hours no loaf is left standing beyond, and the step of the search. Judgement. */
const MOST: Hours = 12;
const STEP: Hours = 1 / 12;
/**
 * A loaf that has not grown in the cold stands out 60–120 min, then is looked at. Common practice, no
 * source; a loaf that hardly needs it is looked at sooner (judgement).
 */
const LOOK = { least: 30, most: 120 } as const;
/** Minutes to the next look after a "not yet". Judgement. */
const AGAIN = { least: 20, most: 60 } as const;
/** Minutes the oven is on before it is needed, besides its own. Judgement. */
const EARLY = 5;

const within = (minutes: Minutes, { least, most }: typeof LOOK | typeof AGAIN): Minutes =>
  Math.min(most, Math.max(least, minutes));

/**
 * Cold loaves that stand out in the room: by the dough clock as they warm. The first look is where a
 * likely loaf begins to be ready (index .85), not where a table has it; the oven is hot by the likely
 * end, as for a warm proof.
 */
export function standOutWait(input: WaitInput, takenOut: Instant): Wait {
  const { now, recipe, entered } = input;
  const dough = proofDough(input);
  const since = (takenOut - dough.begin) / HOUR;
  const course = proofCourse(dough, since, since + MOST, STEP);
  const at = (is: (one: IndexAt) => boolean): Instant => {
    const { hours } = course.find(is) ?? course.at(-1)!;
    return Math.round(dough.begin + hours * HOUR);
  };
  const { least, full } = PROOF_WINDOW;
  const likely = at((one) => one.likely >= full);
  const begins = (at((one) => one.likely >= least) - takenOut) / MINUTE;
  const again = 'proof.poke' in entered;
  const look = again
    ? now + within((likely - now) / 2 / MINUTE, AGAIN) * MINUTE
    : takenOut + within(begins, LOOK) * MINUTE;
  const oven = Math.max(now, likely - (recipe.process.preheat + EARLY) * MINUTE);
  const room = roomOf({ ...input, begin: takenOut, hours: MOST, tau: 1 }).at(-1)!.celsius;
  const { doubt } = saneCelsius(room);
  return {
    model: MODEL,
    belief: beliefOf(dough.bulk),
    marks: {
      look: Math.round(look),
      earliest: at((one) => one.high >= full),
      likely,
      latest: at((one) => one.low >= full || one.likely >= PROOF_WINDOW.most),
      oven,
      turn: Math.round(Math.min(oven, look)),
    },
    ...(doubt === null ? {} : { doubt }),
  };
}
