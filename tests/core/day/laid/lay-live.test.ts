import { describe, expect, it } from 'vitest';
import type { DayPlan } from '../../../../src/core/day/laid/day-plan.ts';
import { liveDayOf } from '../../../../src/core/day/laid/live-day.ts';
import { liveInput } from '../../../../src/core/day/laid/live-input.ts';
import type { Anew, LiveQuestion } from '../../../../src/core/day/laid/live-question.ts';
import { layLive } from '../../../../src/core/day/laid/lay-live.ts';
import { plan as lay } from '../../../../src/core/day/plan.ts';
import { lookTimes } from '../../../../src/core/day/plan/look-times.ts';
import type { PlannedTouch } from '../../../../src/core/day/plan/types.ts';
import type { BakePlace } from '../../../../src/core/records/position.ts';
import { HOUR, MINUTE } from '../../../../src/core/units.ts';
import { askedBake, askWorld, dayAsk, laidDay, SATURDAY_NOON } from '../../../fakes/laid-day.ts';
import { RECIPE } from '../../../machines/support/recipe.ts';
import { bakeAt, OVEN_OFF } from '../support/live-day.ts';

const [A, B] = ['cherry', 'wheat'];
/** Minutes past the first load that are spent out. */
const OUT = 40;
const TWO = dayAsk({
  bakes: [
    askedBake({ name: A, bake: 'a' }),
    askedBake({ name: B, bake: 'b', due: SATURDAY_NOON + 100 * MINUTE }),
  ],
});
const touch = (plan: DayPlan, batch: string, name: string): PlannedTouch =>
  plan.touches.find((one) => one.batch === batch && one.name === name)!;

/** The plan's question with its bakes at their places. */
function asked(plan: DayPlan, bakes: Readonly<Record<string, BakePlace>>, now: number) {
  const running = {
    places: { bakes, oven: OVEN_OFF, lanes: {} },
    bakes: Object.keys(bakes).map((bake) => ({
      bake,
      recipe: RECIPE,
      loaves: [`${bake}1`, `${bake}2`],
    })),
  };
  return {
    plan,
    world: askWorld({ now, running }),
    asks: { kind: 'anew' },
  } as const satisfies LiveQuestion;
}
const anew = (question: LiveQuestion): Anew => {
  const answer = layLive(question);
  if (answer.kind !== 'anew') throw new Error(answer.kind);
  return answer.anew;
};
/** The first bake's dough, likely so many minutes after the plan divides it. */
function bulk(plan: DayPlan, by: number, spread = 25): BakePlace {
  const [salt, divide] = [touch(plan, A, 'salt and water'), touch(plan, A, 'divide')];
  const likely = divide.at + by * MINUTE;
  const marks = {
    earliest: likely - spread * MINUTE,
    likely,
    latest: likely + spread * MINUTE,
    look: likely,
  };
  const entered = { 'mix.salt': salt.at, 'bulk.proving': divide.at - 3 * HOUR };
  return bakeAt('bulk.proving', entered, { touches: 3, marks });
}

/** A bake that is as it was planned, between mixing and dividing. */
function placeOf(plan: DayPlan, batch: string, now: number): BakePlace {
  const [mix, salt, divide] = ['mix', 'salt and water', 'divide'].map(
    (name) => touch(plan, batch, name).at,
  ) as [number, number, number];
  const window = (likely: number) => ({
    earliest: likely - 25 * MINUTE,
    likely,
    latest: likely + 25 * MINUTE,
  });
  if (now < mix) {
    const fed = touch(plan, batch, 'feed levain');
    const entered = { 'levain.ripening': fed.at + fed.hands * MINUTE };
    return bakeAt('levain.ripening', entered, { marks: window(mix) });
  }
  const sides = plan.touches.filter(
    (one) => one.batch === batch && /^(?:fold|lamination)/.test(one.name),
  );
  const touches = sides.filter(({ at }) => at <= now).length;
  const next = sides[touches];
  return bakeAt(
    next ? 'bulk.between' : 'bulk.proving',
    { 'mix.salt': salt, 'bulk.between': salt + 20 * MINUTE, 'bulk.proving': salt + 3 * HOUR },
    { touches, marks: { ...window(divide), ...(next ? { touch: next.at } : {}) } },
  );
}

describe('a bake laid anew beside another', () => {
  const plan = laidDay(TWO, askWorld());
  const divide = touch(plan, A, 'divide').at;

  it('leaves the other where it stands, though the cheapest plan would move it', () => {
    let apart = 0;
    for (const by of [-60, -45, -30, 30, 45, 60]) {
      const now = divide - 100 * MINUTE;
      const question = asked(plan, { a: bulk(plan, by), b: placeOf(plan, B, now) }, now);
      const found = anew(question);
      if (found.is !== 'moved') continue;
      expect(found.others).toEqual([]);
      for (const was of plan.touches.filter(({ batch, at }) => batch === B && at > now)) {
        const is = touch(found.next, B, was.name);
        expect([was.name, is.at, is.frozen]).toEqual([was.name, was.at, was.frozen]);
        expect(is.latest).toBeLessThanOrEqual(is.fineUntil);
        expect(is.fineUntil).toBeLessThanOrEqual(is.lastPossible);
      }
      expect(found.moves.every(({ batch }) => batch === A)).toBe(true);
      const whole = lay(liveInput(liveDayOf(question)!).input);
      if (!whole.fits) throw new Error('No plan.');
      const moved = whole.touches.some(
        ({ batch, name, at }) => batch === B && touch(plan, B, name).at !== at,
      );
      if (moved) apart += 1;
    }
    // Laid all at once the other would have moved in some: what is held is held by this alone.
    expect(apart).toBeGreaterThan(0);
  });

  it('moves the other only where nothing fits else, and says so', () => {
    // Nobody is there for the first one's loads: they come to lie where the other's are.
    const load = touch(plan, A, 'load 1').at;
    const span = { name: 'out', from: load - 90 * MINUTE, to: load + OUT * MINUTE };
    const out = { ...plan, ask: { ...plan.ask, away: [span] } };
    const now = divide - 100 * MINUTE;
    const question = asked(out, { a: bulk(plan, 0), b: placeOf(plan, B, now) }, now);
    const found = anew(question);
    if (found.is !== 'moved') throw new Error(found.is);
    expect(found.others).toEqual([B]);
    expect(found.moves.some(({ batch }) => batch === B)).toBe(true);
    expect(found.next.ready).toEqual(plan.ready);
    for (const { at, hands, frozen } of found.next.touches)
      if (!frozen) expect(at < span.to && at + hands * MINUTE > span.from).toBe(false);
  });
});

describe('looks at what waits', () => {
  const plan = laidDay(dayAsk({ bakes: [askedBake({ name: A, bake: 'a' })] }));
  const divide = touch(plan, A, 'divide').at;
  const now = divide - 2 * HOUR;

  it('begin with the bench’s own and go on where looks and overshoot cost least', () => {
    const place = bulk(plan, 0, 60);
    const [dough] = anew(asked(plan, { a: place }, now)).stands.looks;
    expect(dough).toMatchObject({ batch: A, touch: 'salt and water' });
    const [first, ...then] = dough!.looks;
    expect(first!.at).toBe(place.marks['look']);
    expect(first!.chanceReady).toBeCloseTo(0.5, 6);
    const times = { p10: divide - HOUR, p50: divide, p90: divide + HOUR };
    expect(then).toEqual(lookTimes(times, { now: divide, free: () => true }));
    expect(then.length).toBeGreaterThan(0);
  });

  it('are where somebody is there, and none is told of a dough that is at hand', () => {
    const away = [{ name: 'out', from: divide - 30 * MINUTE, to: divide + 35 * MINUTE }];
    const out = { ...plan, ask: { ...plan.ask, away } };
    const [dough] = anew(asked(out, { a: bulk(plan, 0, 60) }, now)).stands.looks;
    expect(dough!.looks.length).toBeGreaterThan(0);
    for (const { at } of dough!.looks) expect(at < away[0]!.from || at >= away[0]!.to).toBe(true);
    const inHand = bakeAt('shape.divide', { 'shape.divide': now }, { touches: 3 });
    expect(anew(asked(plan, { a: inHand }, now)).stands.looks).toEqual([]);
  });
});
