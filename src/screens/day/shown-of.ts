import { isBakeSpan } from '../../core/day/laid/bake-span.ts';
import type { DayAsk } from '../../core/day/laid/day-plan.ts';
import type { Batch, PlannedTouch, Span } from '../../core/day/plan/types.ts';
import { dayPlan } from '../../core/speech/words/day.ts';
import { planSlack } from '../../core/speech/words/plan.ts';
import { touchPage } from '../../core/speech/words/day.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { showHeat } from '../../core/speech/heats.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { tellTouch } from '../../core/speech/tell-plan.ts';
import { MINUTE, type Instant } from '../../core/units.ts';
import type { House } from '../house.ts';
import { dayAndHour } from './day-hours.ts';
import type { DayShown, ReadDay } from './day-shown.ts';

/** A plan with what it answers; the question's batches and blocked hours, where it could be asked. */
export const shownOf = (
  plan: {
    readonly touches: readonly PlannedTouch[];
    readonly ready: readonly { readonly batch: string; readonly at: Instant }[];
  },
  input: { readonly batches: readonly Batch[]; readonly blocked: readonly Span[] } | null,
): DayShown => ({
  touches: plan.touches,
  ready: plan.ready,
  batches: input?.batches ?? [],
  blocked: (input?.blocked ?? []).filter((span) => !isBakeSpan(span)),
});

/** How this house reads an ask's plan. */
export const readOf = (house: House, { bakes }: DayAsk): ReadDay => ({
  hour: (at) => house.hour(at),
  day: (at) => house.day(at),
  midnight: (at) => house.midnight(at),
  mark: (batch) => (bakes.length < 2 ? null : bakes.findIndex(({ name }) => name === batch) + 1),
  stays: ({ batch, name }) => bakes.find((bake) => bake.name === batch)?.pins[name] !== undefined,
});

const lastReady = ({ ready }: DayShown): Instant => Math.max(...ready.map(({ at }) => at));

const atLast = (house: House, day: DayShown) => {
  const at = lastReady(day);
  return { date: house.day(at), time: house.hour(at) };
};

/** 'Ready Sat 12:00' */
export const planHeadline = (house: House, day: DayShown): string =>
  fill(dayPlan.ready, atLast(house, day));

/** '1 Lane wheat, 2 loaves; 2 … Kitchen 22 °C.' */
export function planDetail(house: House, { bakes, kitchen }: DayAsk): string {
  const breads = bakes.map(
    ({ name, recipe }, i) =>
      `${bakes.length > 1 ? `${i + 1} ` : ''}${fill('{name}, {loaves}', {
        name: showBread(name),
        ...shown({ loaves: recipe.loaves }),
      })}`,
  );
  const warm = fill(dayPlan.kitchen, { celsius: showHeat(kitchen, house.ways()) });
  return `${breads.join('; ')}; ${warm}`;
}

export const planAlt = (house: House, day: DayShown): string =>
  fill(dayPlan.alt, { count: day.touches.length, ...atLast(house, day) });

/** What hours are told by. */
type Told = Pick<House, 'hour' | 'day' | 'midnight' | 'now'>;

/** Feeds of a plan: the ratio, and from when to when its levain may be used. */
export function feedOf(house: Told, day: DayShown, touch: PlannedTouch): string | null {
  const batch = day.batches.find(({ name }) => name === touch.batch);
  const step = batch?.steps.find(({ name }) => name === touch.name);
  if (!step || !('choices' in step.wait)) return null;
  const fed = step.wait.choices.find(({ name }) => name === touch.choice);
  if (!fed) return null;
  const from = touch.at + touch.hands * MINUTE;
  return fill(touchPage.usable, {
    ratio: fed.name,
    time: dayAndHour(house, from + fed.min * MINUTE),
    until: dayAndHour(house, from + fed.max * MINUTE),
  });
}

/** What is told of one touch: how late it may be, what it is fed with, whether it moves. */
export function touchWords(
  house: Told,
  day: DayShown,
  touch: PlannedTouch,
  isPinned: boolean,
): { readonly headline: string; readonly lines: readonly string[] } {
  const time = (at: Instant): string => dayAndHour(house, at);
  const slack =
    touch.frozen && !isPinned
      ? [touchPage.fixed]
      : isPinned
        ? [touchPage.set]
        : [
            ...(touch.fineUntil < touch.lastPossible
              ? [fill(planSlack.fine, { time: time(touch.fineUntil) })]
              : []),
            fill(planSlack.last, { time: time(touch.lastPossible) }),
          ];
  const fed = feedOf(house, day, touch);
  return {
    headline: fill(touchPage.title, { name: tellTouch(touch.name), time: time(touch.at) }),
    lines: [...(fed === null ? [] : [fed]), ...slack],
  };
}
