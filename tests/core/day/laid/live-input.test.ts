import { describe, expect, it } from 'vitest';
import { laidAgain, movesOf, whyMoved } from '../../../../src/core/day/laid/moved.ts';
import { asItStands, isWorthMoving } from '../../../../src/core/day/laid/still-stands.ts';
import { plan } from '../../../../src/core/day/plan.ts';
import {
  askedDay,
  at,
  bakeAt,
  dayPlan,
  fitting,
  HOUR,
  hoursIn,
  kitchenWith,
  laneAt,
  live,
  MINUTE,
  NAME,
  OVEN_OFF,
  touchOf,
} from '../support/live-day.ts';

const asked = askedDay();
const first = dayPlan(asked);
const { t, ended } = hoursIn(first);

/** The levain as it ripens, likely so many minutes after the plan has the mix. */
const ripening = (by: number) => {
  const likely = t('mix') + by * MINUTE;
  return bakeAt(
    'levain.ripening',
    { 'levain.ripening': ended('feed levain') },
    { marks: { earliest: likely - HOUR, likely, latest: likely + HOUR, look: likely } },
  );
};
const bulk = (by: number) => {
  const likely = t('divide') + by * MINUTE;
  return bakeAt(
    'bulk.proving',
    { 'mix.salt': t('salt and water'), 'bulk.proving': t('divide') - 3 * HOUR },
    {
      touches: 3,
      marks: { earliest: likely - 20 * MINUTE, likely, latest: likely + 30 * MINUTE, look: likely },
    },
  );
};

describe('a plan that runs, asked anew', () => {
  it('is a Saturday bake through the fridge, begun on Thursday or Friday', () => {
    expect(first.ready).toEqual([{ batch: NAME, at: at(5, 12) }]);
    expect(t('to fridge')).toBeLessThan(at(4, 22, 30));
    expect(t('load 1')).toBeGreaterThanOrEqual(at(5, 6, 30));
  });

  /** What the baker is asked, if anything. */
  const asks = (kitchen: Parameters<typeof live>[2], now: number): boolean => {
    const again = live(first, asked, kitchen, now);
    const fresh = fitting(again.input);
    const moves = movesOf(first, again, fresh);
    const still = asItStands(first, again);
    return isWorthMoving(still && plan(still), fresh, { moves, whys: whyMoved(first, again, now) });
  };

  it('as planned, nobody is asked anything; an hour late or forty minutes early, one is', () => {
    const now = t('mix') - HOUR;
    expect(asks(kitchenWith(ripening(0)), now)).toBe(false);
    expect(asks(kitchenWith(ripening(20)), now)).toBe(false);
    expect(asks(kitchenWith(ripening(60)), now)).toBe(true);
    expect(asks(kitchenWith(bulk(0)), t('divide') - HOUR)).toBe(false);
    expect(asks(kitchenWith(bulk(-40)), t('divide') - 90 * MINUTE)).toBe(true);
    expect(asks(kitchenWith(bulk(-20)), t('divide') + HOUR)).toBe(true);
    expect(whyMoved(first, live(first, asked, kitchenWith(ripening(0)), now), now)).toEqual([]);
  });

  it('drops what is done behind a marker at its real time', () => {
    const now = t('mix') - HOUR;
    const { input, done } = live(first, asked, kitchenWith(ripening(0)), now);
    const [marker, mix] = input.batches[0]!.steps;
    expect(marker).toMatchObject({ name: 'feed levain', hands: 0 });
    expect(mix!.name).toBe('mix');
    expect(input.batches[0]!.fixed).toEqual({ 'feed levain': ended('feed levain') });
    expect(done[NAME]).toEqual(['feed levain']);
    expect(input.planFrom).toBe(now);
  });

  it('a levain two hours late moves the mix by hours, and the bread not at all', () => {
    const now = t('mix') - HOUR;
    const again = live(first, asked, kitchenWith(ripening(120)), now);
    const result = fitting(again.input);
    const moves = movesOf(first, again, result);
    expect(moves[0]).toMatchObject({ name: 'mix', from: t('mix') });
    expect(moves[0]!.to - t('mix')).toBeGreaterThanOrEqual(50 * MINUTE);
    expect(moves.map(({ name }) => name)).not.toContain('ready');
    expect(moves.map(({ name }) => name)).not.toContain('load 1');
    expect(whyMoved(first, again, now)[0]).toEqual({
      why: 'wait',
      batch: NAME,
      touch: 'feed levain',
      by: 120,
    });
  });

  it('a bulk forty minutes early is divided early; the fridge takes the rest', () => {
    const now = t('divide') - 90 * MINUTE;
    const again = live(first, asked, kitchenWith(bulk(-40)), now);
    const result = fitting(again.input);
    const divide = touchOf(result, 'divide').at - t('divide');
    expect(divide).toBeLessThanOrEqual(-20 * MINUTE);
    expect(divide).toBeGreaterThanOrEqual(-50 * MINUTE);
    expect(touchOf(result, 'load 1').at).toBe(t('load 1'));
    expect(result.ready).toEqual(first.ready);
  });

  it('a touch that was announced stays, though the dough is sooner', () => {
    const now = t('divide') - 15 * MINUTE;
    const again = live(first, asked, kitchenWith(bulk(-40)), now);
    expect(touchOf(fitting(again.input), 'divide')).toMatchObject({
      at: t('divide'),
      frozen: true,
    });
    const sooner = live(first, asked, kitchenWith(bulk(-40)), now - MINUTE);
    expect(touchOf(fitting(sooner.input), 'divide').frozen).toBe(false);
  });

  it('a touch that was missed is from now on, and says since when', () => {
    const now = t('divide') + HOUR;
    const again = live(first, asked, kitchenWith(bulk(-20)), now);
    const result = fitting(again.input);
    expect(touchOf(result, 'divide').at).toBeGreaterThanOrEqual(now);
    expect(whyMoved(first, again, now)).toContainEqual({
      why: 'overdue',
      batch: NAME,
      touch: 'divide',
      by: 60,
    });
  });

  it('folds that are done are gone, the next stands where the bench calls it', () => {
    const now = ended('salt and water') + 40 * MINUTE;
    const place = bakeAt(
      'bulk.between',
      { 'mix.salt': t('salt and water'), 'bulk.between': now - 5 * MINUTE },
      {
        touches: 1,
        marks: {
          earliest: t('divide') - HOUR,
          likely: t('divide'),
          latest: t('divide') + HOUR,
          touch: now + 20 * MINUTE,
        },
      },
    );
    const again = live(first, asked, kitchenWith(place), now);
    expect(again.input.batches[0]!.steps[0]!.during!.map(({ name, at: m }) => [name, m])).toEqual([
      ['lamination', 25],
      ['fold 2', 55],
    ]);
    expect(again.done[NAME]).toContain('fold 1');
    const result = fitting(again.input);
    expect(Math.abs(touchOf(result, 'lamination').at - (now + 20 * MINUTE))).toBeLessThanOrEqual(
      20 * MINUTE,
    );
  });

  it('lid and unload stand by the iron once a loaf is in, through an absence too', () => {
    const loaded = t('load 1') + 90_000;
    const lid = loaded + 18 * MINUTE;
    const oven = { ...OVEN_OFF, stage: 'baking', waiting: [`${NAME}.2`] };
    const place = bakeAt('oven.queued', { 'oven.queued': t('load 1') - HOUR });
    const lanes = {
      'pot-1': laneAt('lidded', { lidded: loaded }, [`${NAME}.1`], { lid }),
    };
    const now = loaded + 5 * MINUTE;
    const away = { name: 'out', from: now, to: now + HOUR };
    const question = { ...asked, blocked: [...asked.blocked, away] };
    const again = live(first, question, kitchenWith(place, oven, lanes), now);
    // An hour out leaves the second loaf too late for noon: what stands is what was promised.
    const result = plan({
      ...again.input,
      batches: again.input.batches.map((one) => ({ ...one, due: at(5, 15) })),
    });
    if (!result.fits) throw new Error('No plan.');
    expect(touchOf(result, 'lid lift 1')).toMatchObject({ at: lid, frozen: true });
    expect(touchOf(result, 'unload 1')).toMatchObject({ frozen: true });
    expect(touchOf(result, 'unload 1').at - lid).toBe(20 * MINUTE);
    expect(touchOf(result, 'load 2').at).toBeGreaterThanOrEqual(away.to);
    expect(again.done[NAME]).toContain('oven on');
  });

  it('accepted, it keeps what is done as it stood and counts one more', () => {
    const now = t('mix') - HOUR;
    const again = live(first, asked, kitchenWith(ripening(120)), now);
    const next = laidAgain(first, again, fitting(again.input));
    expect(next).toMatchObject({ id: first.id, sequence: 1 });
    expect(touchOf(next, 'feed levain')).toEqual({
      ...touchOf(first, 'feed levain'),
      frozen: true,
    });
    expect(next.touches.map(({ name }) => name).sort()).toEqual(
      first.touches.map(({ name }) => name).sort(),
    );
  });

  it('as it stands it costs what it costs; a touch that is late or in an absence stands no more', () => {
    const now = t('mix') - HOUR;
    const on = live(first, asked, kitchenWith(ripening(0)), now);
    const stands = fitting(asItStands(first, on)!);
    for (const { name, at: one } of stands.touches.slice(1))
      expect([name, one]).toEqual([name, t(name)]);
    const late = live(first, asked, kitchenWith(bulk(-20)), t('divide') + HOUR);
    expect(asItStands(first, late)).toBeNull();
    const out = { name: 'out', from: t('mix'), to: t('mix') + HOUR };
    const away = { ...asked, blocked: [...asked.blocked, out] };
    expect(asItStands(first, live(first, away, kitchenWith(ripening(0)), now))).toBeNull();
  });

  it('a bake that is over asks for nothing', () => {
    const { input } = live(first, asked, { bakes: {}, oven: OVEN_OFF, lanes: {} }, at(5, 12));
    expect(input.batches).toEqual([]);
  });
});
