import { doughClock } from '../clock/dough-clock.ts';
import { temperatureAt } from '../clock/stretch.ts';
import type { DoorSigns } from '../oven/door-poke.ts';
import { quantile } from '../readiness/posterior.ts';
import { HOUR, type Instant } from '../units.ts';
import { proofCourse } from './proof-course.ts';
import { proofDough } from './proof-dough.ts';
import type { WaitInput } from './waits.ts';

/**
 * What the dough clock knows of a loaf at the oven's door at `at`: its proof index q, and what its
 * standing out is reckoned from. Nothing of one whose shaping and fridge nobody saw.
 * Source: the dough clock (`proof-course.ts`).
 */
export function doorLoaf(input: WaitInput, at: Instant): Pick<DoorSigns, 'q' | 'loaf'> {
  const { recipe, entered, chilled, kitchen } = input;
  const shaped = 'shape.divide' in entered || 'shape.scoop' in entered;
  if (!shaped && chilled === undefined) return { q: null };
  const dough = proofDough({ ...input, now: at });
  const hours = Math.max(0, (at - dough.begin) / HOUR);
  const { likely } = proofCourse(dough, hours, hours, 1)[0]!;
  return {
    q: likely,
    loaf: {
      p: dough.p,
      factor: doughClock(recipe.formula).salted,
      vigour: Math.exp(quantile(dough.posterior, 0.5)),
      grams: recipe.piece,
      celsius: temperatureAt(dough.path, hours),
      room: kitchen,
    },
  };
}
