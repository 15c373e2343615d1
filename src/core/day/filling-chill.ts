import { goesIn } from '../formula/goes-in.ts';
import { prepareOf } from '../formula/prepare-of.ts';
import { mixedIn } from '../heat/mixed-in.ts';
import type { Filling } from '../formula/formula.ts';
import { HOUR, MINUTE, type Celsius, type Hours, type Instant, type Minutes } from '../units.ts';
import { bulkWait } from './bulk-wait.ts';
import { lastRead } from './mix-known.ts';
import { roomOf } from './dough-path.ts';
import type { WaitInput } from './waits.ts';

/** What a filling holds of warmth, kJ/kg·K: wet ones 3.5, dried fruit, nuts and seeds 2. Judgement. */
const heatOf = (filling: Filling): number =>
  prepareOf(filling).some((how) => how === 'drain' || how === 'soak') ? 3.5 : 2;

/**
 * How warm a filling goes in: as it was measured; else out of the fridge where it was kept there (a
 * soaker, a hard cheese nobody took out, what its baker keeps cold; what was frozen thaws there), and
 * as warm as the kitchen. Judgement.
 */
const warmthOf = (
  { recipe, done }: WaitInput,
  filling: Filling,
  read: Celsius | null,
  kitchen: Celsius,
): Celsius => {
  const { keeps, from = 'shelf' } = filling;
  const cold = from !== 'shelf' || keeps === 'hardCheese';
  const chilled = prepareOf(filling).includes('soak') || (cold && !done.includes('takeOut'));
  return read ?? (chilled ? recipe.process.fridge : kitchen);
};

/** What the filling does to a dough of some temperature; null where nothing is laminated in. */
export function withFilling(
  input: WaitInput,
  begin: Instant,
): ((dough: Celsius) => Celsius) | null {
  const { recipe, kitchen, seen } = input;
  const { lines, formula, process } = recipe;
  if (lines.filling.length === 0) return null;
  if (!process.touches.some(({ kind }) => kind === 'laminate')) return null;
  const read = lastRead(input, 'fillingTemperature', begin);
  const room = roomOf({ kitchen, seen, begin, hours: 0, tau: 1 }).at(-1)!.celsius;
  const ready = goesIn(lines.filling);
  const all = ready.reduce((sum, { grams }) => sum + grams, 0);
  return (dough) =>
    formula.fillings.reduce(
      (mixed, filling) => {
        const grams = ready.find(({ item }) => item === `filling:${filling.id}`)?.grams ?? 0;
        const celsius = warmthOf(input, filling, read, room);
        const into = { grams: mixed.grams, celsius: mixed.celsius };
        return {
          grams: mixed.grams + grams,
          celsius: mixedIn(into, { grams, celsius, heat: heatOf(filling) }),
        };
      },
      { grams: recipe.dough - all, celsius: dough },
    ).celsius;
}

/** When the filling went in and what it did to the dough, for the dough's path; else undefined. */
export function fillingChill(
  input: WaitInput,
  begin: Instant,
): { readonly hours: Hours; readonly to: (celsius: Celsius) => Celsius } | undefined {
  const rolled = input.entered['bulk.roll'];
  const to = rolled === undefined || rolled < begin ? null : withFilling(input, begin);
  return to === null ? undefined : { hours: (rolled! - begin) / HOUR, to };
}

/** Minutes that the filling, going in now, puts the dough's likely hour off; below 0 it is hurried. */
export function slowedBy(input: WaitInput, now: Instant): Minutes {
  const { 'bulk.roll': _, ...before } = input.entered;
  const likely = (entered: WaitInput['entered']): number =>
    bulkWait({ ...input, now, entered }).marks['likely'] ?? 0;
  return (likely({ ...before, 'bulk.roll': now }) - likely(before)) / MINUTE;
}
