import { doughClock } from '../clock/dough-clock.ts';
import { gamma } from '../clock/gamma.ts';
import { readyCurve } from '../clock/hours-until.ts';
import { growthForProof } from '../clock/proof-index.ts';
import { temperatureAt } from '../clock/stretch.ts';
import { theta } from '../clock/theta.ts';
import { beliefOf } from '../readiness/posterior.ts';
import { HOUR, MINUTE } from '../units.ts';
import { proofDough, type ProofDough } from './proof-dough.ts';
import { MODEL, type Wait, type WaitInput } from './waits.ts';
import { HORIZON, readyMarks } from './window.ts';

/** The temperature a formula's own minutes of warm proof are given for, °C. */
const GIVEN_AT = 24;
/** Minutes the oven is on before it is needed, besides its own. Judgement. */
const EARLY = 5;

/**
 * Growth still needed from the end of bulk to ready: to proof index 1; a scooped dough of much rye,
 * whose index nobody has fitted, by the minutes its formula gives at 24 °C.
 */
const needed = ({ recipe, entered, now }: WaitInput, { path, grown, begin }: ProofDough) => {
  const { process, formula } = recipe;
  const { p, salted } = doughClock(formula);
  if (process.shaping !== 'scoop')
    return (celsius: number) => growthForProof(1, p, celsius) - grown;
  const shaped = ((entered['proof.warm'] ?? now) - begin) / HOUR;
  const own = theta(path, 0, shaped) + (process.warm / 60) * gamma(GIVEN_AT) * salted;
  return () => own;
};

/**
 * A warm proof's ready window, from the end of bulk; `oven`: when the oven goes on to be hot by the
 * likely end; `turn`: the first of oven and look. The poke alone decides it.
 */
export function warmWait(input: WaitInput): Wait {
  const { recipe, now } = input;
  const dough = proofDough(input);
  const clock = doughClock(recipe.formula);
  const { begin, path, posterior, bulk } = dough;
  const { marks, doubt } = readyMarks(
    begin,
    { ...input, posterior, doubt: clock.doubt(temperatureAt(path, (now - begin) / HOUR)) },
    readyCurve(path, 0, HORIZON, needed(input, dough)),
  );
  const before = (recipe.process.preheat + EARLY) * MINUTE;
  // Signs may want it sooner than the plan that stands; a plan never has it later.
  const own = Math.round(marks.likely - before);
  const oven = Math.max(now, Math.min(own, input.ovenOn ?? own));
  return {
    marks: { ...marks, oven, turn: Math.min(oven, marks.look) },
    belief: beliefOf(bulk),
    model: MODEL,
    ...(doubt === null ? {} : { doubt }),
  };
}
