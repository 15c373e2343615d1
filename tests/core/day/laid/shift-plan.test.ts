import { expect, it } from 'vitest';
import { shiftPlan } from '../../../../src/core/day/laid/shift-plan.ts';
import { HOUR } from '../../../../src/core/units.ts';
import { askedBake, dayAsk, laidDay, SATURDAY_NOON, THURSDAY } from '../../../fakes/laid-day.ts';

it('moves all that lies ahead, of the ask too, and nothing that was', () => {
  const plan = laidDay();
  const mix = plan.touches.find(({ name }) => name === 'mix')!.at;
  const away = [{ name: 'out', from: THURSDAY, to: mix + HOUR }];
  const taken = [
    {
      change: 'blocked',
      name: 'out',
      from: THURSDAY,
      to: mix + HOUR,
      endEarlierBy: 5,
      startLaterBy: null,
    },
    { change: 'due', batch: 'x', laterBy: 5 },
  ] as const;
  const ask = dayAsk({
    bakes: [askedBake({ pins: { mix, 'feed levain': THURSDAY } })],
    away,
    taken,
  });
  const moved = shiftPlan({ ...plan, ask }, HOUR, mix - 1);
  expect(moved.sequence).toBe(plan.sequence + 1);
  expect(moved.ask.bakes[0]).toMatchObject({
    due: SATURDAY_NOON + HOUR,
    startAt: null,
    pins: { mix: mix + HOUR, 'feed levain': THURSDAY },
  });
  expect(moved.ask.away).toEqual([{ ...away[0], to: mix + 2 * HOUR }]);
  expect(moved.ask.taken).toEqual([{ ...taken[0], to: mix + 2 * HOUR }, taken[1]]);
  const by = moved.touches.map(({ at }, i) => at - plan.touches[i]!.at);
  expect(by).toEqual(plan.touches.map(({ at }) => (at < mix ? 0 : HOUR)));
  const { at: _, ...last } = moved.touches.at(-1)!;
  expect(last).toMatchObject({
    earliest: plan.touches.at(-1)!.earliest + HOUR,
    latest: plan.touches.at(-1)!.latest + HOUR,
    fineUntil: plan.touches.at(-1)!.fineUntil + HOUR,
    lastPossible: plan.touches.at(-1)!.lastPossible + HOUR,
  });
  expect(shiftPlan(plan, 0, THURSDAY)).toEqual({ ...plan, sequence: 2 });
});
