import { describe, expect, it } from 'vitest';
import type { LiveKitchen } from '../../../../src/core/day/laid/at-touch.ts';
import { laidAgain } from '../../../../src/core/day/laid/moved.ts';
import { plan } from '../../../../src/core/day/plan.ts';
import type { PlannedTouch } from '../../../../src/core/day/plan/types.ts';
import { TIN } from '../../../machines/support/recipe.ts';
import { checkPlan } from '../support/check-plan.ts';
import { seeded, type Seeded } from '../support/seeded.ts';
import {
  askedDay,
  at,
  bakeAt,
  dayPlan,
  HOUR,
  kitchenWith,
  laneAt,
  live,
  MINUTE,
  NAME,
  OVEN_OFF,
} from '../support/live-day.ts';

const DAYS = [
  (() => {
    const asked = askedDay();
    return { asked, first: dayPlan(asked), isTin: false };
  })(),
  (() => {
    const asked = askedDay([{ name: NAME, due: at(4, 19), recipe: TIN }]);
    return { asked, first: dayPlan(asked, TIN), isTin: true };
  })(),
];
type Made = (typeof DAYS)[number];

/** A touch of the plan, and the stage a bake stands at while it waits behind it. */
const WAITS = [
  ['feed levain', 'levain.ripening', 0],
  ['mix', 'mix.rest', 0],
  ['salt and water', 'bulk.between', 0],
  ['fold 1', 'bulk.between', 1],
  ['fold 2', 'bulk.proving', 3],
  ['divide', 'shape.benchRest', 3],
  ['shape', 'proof', 3],
  ['to fridge', 'proof.retard', 3],
  ['load 1', 'oven.queued', 3],
] as const;

interface Case {
  readonly kitchen: LiveKitchen;
  readonly now: number;
  /** Main touches and folds that are done. */
  readonly behind: readonly string[];
}

/** A bake that came to some touch up to two hours late or an hour early, and is somewhere in its wait. */
function anyCase({ first, isTin }: Made, random: Seeded): Case | null {
  const [name, where, touches] = random.of(WAITS);
  const found = first.touches.findIndex((one) => one.name === name);
  const touch = first.touches[found];
  if (touch === undefined || (isTin && where === 'proof.retard')) return null;
  const next = first.touches[found + 1]!;
  const late = random.whole(-12, 24) * 5 * MINUTE;
  const since = touch.at + touch.hands * MINUTE + late;
  const now = since + random.whole(0, 60) * random.whole(0, 6) * MINUTE;
  const likely = next.at + random.whole(-30, 60) * 5 * MINUTE;
  const marks = {
    earliest: likely - random.whole(0, 24) * 5 * MINUTE,
    likely,
    latest: likely + random.whole(0, 24) * 5 * MINUTE,
  };
  const behind = first.touches.slice(0, found + 1).map((one) => one.name);
  const stage = where === 'proof' ? (isTin ? 'proof.warm' : 'proof.counter') : where;
  const entered = { [stage]: since, 'proof.toFridge': since, 'mix.salt': since };
  if (stage !== 'oven.queued') {
    const more = stage === 'bulk.between' ? { touch: since + 30 * MINUTE } : {};
    const place = bakeAt(stage, entered, { touches, marks: { ...marks, ...more } });
    return { kitchen: kitchenWith(place), now, behind };
  }
  const loaded = touch.at + late;
  const lid = loaded + 18 * MINUTE;
  const lane = isTin
    ? laneAt('open', { open: loaded }, [`${NAME}.1`], { colour: loaded + 40 * MINUTE })
    : laneAt('lidded', { lidded: loaded }, [`${NAME}.1`], { lid });
  const oven = { ...OVEN_OFF, stage: 'baking', waiting: [`${NAME}.2`] };
  return {
    kitchen: kitchenWith(bakeAt(stage, entered), oven, { 'pot-1': lane }),
    now: loaded + random.whole(0, 17) * MINUTE,
    behind,
  };
}

/** The rule again, in a line: from now on within a quarter of an hour, and nothing before it late. */
function announcedIn(first: Made['first'], { now, behind }: Case): readonly PlannedTouch[] {
  const ahead = first.touches.filter(({ name }) => !behind.includes(name));
  const late = ahead.some((touch) => touch.at < now);
  return late ? [] : ahead.filter((touch) => touch.at <= now + 15 * MINUTE);
}

describe('whatever happens to a bake', () => {
  const random = seeded(2031);
  const cases = Array.from({ length: 900 }, () => {
    const made = random.of(DAYS);
    const one = anyCase(made, random);
    return one ? [{ made, one }] : [];
  }).flat();

  it('what was announced, is done or is promised to the iron never moves', () => {
    const seen = { plans: 0, announced: 0, iron: 0 };
    for (const { made, one } of cases) {
      const { asked, first } = made;
      const length = random.whole(0, 4) * HOUR;
      const begin = one.now + random.whole(0, 3) * HOUR;
      const away = { name: 'out', from: begin, to: begin + length };
      const question = { ...asked, blocked: [...asked.blocked, away] };
      const again = live(first, question, one.kitchen, one.now);
      const later = {
        ...again.input,
        batches: again.input.batches.map((b) => ({ ...b, due: b.due! + 2 * HOUR })),
      };
      const result = plan(later, { why: false });
      if (!result.fits) continue;
      seen.plans += 1;
      const next = laidAgain(first, again, result);
      const place = (name: string): number | undefined =>
        next.touches.find((touch) => touch.name === name)?.at;
      for (const touch of announcedIn(first, one)) {
        const lane = one.kitchen.lanes['pot-1'];
        if (lane && /lid lift 1|unload 1/.test(touch.name)) continue;
        expect([touch.name, place(touch.name)]).toEqual([touch.name, touch.at]);
        seen.announced += 1;
      }
      for (const touch of first.touches.filter(({ name }) => again.done[NAME]!.includes(name)))
        expect(next.touches).toContainEqual({ ...touch, frozen: true });
      for (const lane of Object.values(one.kitchen.lanes)) {
        const promise = lane.marks['lid'] ?? lane.marks['colour'];
        expect(place(lane.stage === 'lidded' ? 'lid lift 1' : 'unload 1')).toBe(promise);
        seen.iron += 1;
      }
      for (const touch of result.touches)
        if (!touch.frozen && touch.hands > 0) {
          expect(touch.at).toBeGreaterThanOrEqual(one.now);
          const end = touch.at + touch.hands * MINUTE;
          expect(touch.at < away.to && end > away.from && length > 0).toBe(false);
        }
      expect(checkPlan(later, result).wrong).toEqual([]);
    }
    expect(seen.plans).toBeGreaterThan(300);
    expect(seen.announced).toBeGreaterThan(20);
    expect(seen.iron).toBeGreaterThan(30);
  });
});
