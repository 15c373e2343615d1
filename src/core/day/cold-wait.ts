import { PROOF_WINDOW } from '../clock/proof-index.ts';
import { beliefOf } from '../readiness/posterior.ts';
import { HOUR, MINUTE, type Hours, type Instant } from '../units.ts';
import { proofCourse, type IndexAt } from './proof-course.ts';
import { proofDough } from './proof-dough.ts';
import { MODEL, type Wait, type WaitInput } from './waits.ts';

/** Step of the search, hours: the window is told in whole hours. */
const STEP: Hours = 1 / 4;
/** A spooned dough of much rye has no index that anyone fitted: hours in the cold seen in print, minutes. */
const PRINTED = { earliest: 480, latest: 1080 } as const;
/** No loaf is left longer in the cold, h. Common practice, no source. */
const MOST: Hours = 48;
/** Nothing about a loaf that goes in full is mended by looking sooner, minutes. Judgement. */
const SOONEST = 60;
/** Minutes to the next look after a "not yet": half of what is left, between these. Judgement. */
const AGAIN = { least: 60, most: 180 } as const;

/** Hours of the path until a loaf is there, by one reading of the course; its end where it never is. */
const firstHour = (course: readonly IndexAt[], is: (at: IndexAt) => boolean): Hours =>
  (course.find(is) ?? course.at(-1)!).hours;

/**
 * When the loaf is looked at first: as the plan has the oven on, so that a ready one goes in on its hour;
 * else as the process has it. A plan that was laid before the loaf came so late says nothing of it.
 */
const plannedLook = ({ recipe, ovenOn }: WaitInput, chilled: Instant): Instant =>
  ovenOn !== undefined && ovenOn >= chilled + SOONEST * MINUTE
    ? ovenOn
    : chilled + recipe.process.retard * MINUTE;

/** After a "not yet" no later than the plan has the oven on, where that is still to come. */
const sooner = (look: Instant, { now, ovenOn }: WaitInput): Instant =>
  ovenOn !== undefined && ovenOn > now + MINUTE ? Math.min(look, ovenOn) : look;

/** The window that print gives, stretched to hold the process's own time. */
const printedWait = (input: WaitInput, chilled: Instant): Wait => {
  const { now, recipe, again } = input;
  const minutes = Math.max(1, recipe.process.retard);
  const look = again
    ? sooner(now + AGAIN.least * MINUTE, input)
    : Math.max(now + MINUTE, plannedLook(input, chilled));
  const earliest = chilled + Math.min(PRINTED.earliest, minutes) * MINUTE;
  const latest = Math.max(chilled + PRINTED.latest * MINUTE, look);
  return { model: MODEL, marks: { look, earliest, latest }, doubt: 'coldProof' };
};

/**
 * A cold loaf's ready window, in whole hours, since in the fridge no minute is known: from the hour
 * at which a quick one in ten could be ready to the one at which all but a slow one in ten are, or at
 * which a likely one goes past. The look stands where the plan or the process has it, sooner where the loaf is likely over by
 * then, and after a "not yet" half-way to the likely hour.
 */
export function coldWait(input: WaitInput): Wait {
  const { now, recipe, again } = input;
  const chilled = input.chilled ?? now;
  if (recipe.process.shaping === 'scoop') return printedWait(input, chilled);
  const dough = proofDough({ ...input, chilled });
  const since = (chilled - dough.begin) / HOUR;
  const course = proofCourse(dough, since, since + MOST, STEP);
  const at = (hours: Hours): Instant => dough.begin + hours * HOUR;
  const hour = {
    earliest: firstHour(course, ({ high }) => high >= PROOF_WINDOW.full),
    likely: firstHour(course, ({ likely }) => likely >= PROOF_WINDOW.full),
    latest: firstHour(
      course,
      ({ low, likely }) => low >= PROOF_WINDOW.full || likely >= PROOF_WINDOW.most,
    ),
    past: firstHour(course, ({ likely }) => likely >= PROOF_WINDOW.past),
  };
  const whole = (hours: Hours, round: (x: number) => number): Instant =>
    round(Math.round(at(hours)) / HOUR) * HOUR;
  const likely = whole(hour.likely, Math.round);
  const half = (at(hour.likely) - now) / 2;
  const next = Math.min(AGAIN.most * MINUTE, Math.max(AGAIN.least * MINUTE, half));
  const over = Math.max(chilled + SOONEST * MINUTE, at(hour.past));
  const planned = Math.min(plannedLook(input, chilled), over);
  const later = now + next;
  return {
    model: MODEL,
    belief: beliefOf(dough.bulk),
    marks: {
      look: Math.round(again ? sooner(later, input) : Math.max(now + MINUTE, planned)),
      earliest: Math.min(likely, whole(hour.earliest, Math.floor)),
      likely,
      latest: Math.max(likely, whole(hour.latest, Math.ceil)),
    },
    doubt: 'coldProof',
  };
}
