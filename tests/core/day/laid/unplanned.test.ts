import { describe, expect, it } from 'vitest';
import { askInput } from '../../../../src/core/day/laid/ask-input.ts';
import type { AskWorld } from '../../../../src/core/day/laid/ask-world.ts';
import type { DayAsk } from '../../../../src/core/day/laid/day-plan.ts';
import { plan as lay } from '../../../../src/core/day/plan.ts';
import { HOUR, MINUTE } from '../../../../src/core/units.ts';
import { askedBake, askWorld, dayAsk, SATURDAY_NOON } from '../../../fakes/laid-day.ts';
import { RECIPE } from '../../../machines/support/recipe.ts';
import { bakeAt, OVEN_OFF } from '../support/live-day.ts';

describe('a bake that nobody planned', () => {
  const alone = dayAsk({ bakes: [askedBake({ name: 'wheat' })] });
  /** Another bake that proves in the cold, and is looked at on Saturday morning. */
  const world = (stage: string, entered: Record<string, number>): AskWorld => {
    const place = bakeAt(stage, entered, { touches: 3 });
    return askWorld({
      now: SATURDAY_NOON - 30 * HOUR,
      running: {
        places: { bakes: { x: place }, oven: OVEN_OFF, lanes: {} },
        bakes: [{ bake: 'x', recipe: RECIPE, loaves: ['x1', 'x2'] }],
      },
    });
  };
  const inputFor = (ask: DayAsk, of: AskWorld) => askInput(ask, of).input!;

  it('keeps the oven and its hands, and a plan stays clear of both', () => {
    const now = SATURDAY_NOON - 30 * HOUR;
    const its = world('proof.retard', { 'proof.toFridge': now - HOUR, 'proof.retard': now - HOUR });
    const input = inputFor(alone, its);
    expect(input.ovenBusy).toHaveLength(1);
    const [busy] = input.ovenBusy!;
    expect(busy!.to - busy!.from).toBeGreaterThan(HOUR);
    const hands = input.blocked.filter((span) => 'bake' in span);
    expect(hands.length).toBeGreaterThan(4);
    for (const { canBend, name } of hands)
      expect([canBend, name]).toEqual([false, RECIPE.formula.name]);
    const result = lay(input);
    if (!result.fits) throw new Error('No plan.');
    for (const { at, hands: minutes } of result.touches)
      for (const span of hands)
        expect(at < span.to && at + minutes * MINUTE > span.from).toBe(false);
    const baked = result.touches.filter(({ name }) => /^(?:load|lid lift) /.test(name));
    expect(baked.some(({ at }) => at >= busy!.from && at < busy!.to)).toBe(false);
  });

  it('is no other than the ask’s own once it is planned, and nothing once it is over', () => {
    const now = SATURDAY_NOON - 30 * HOUR;
    const entered = { 'proof.toFridge': now - HOUR, 'proof.retard': now - HOUR };
    const its = world('proof.retard', entered);
    const planned = { ...alone, bakes: [{ ...alone.bakes[0]!, bake: 'x' }] };
    expect(inputFor(planned, its).ovenBusy).toBeUndefined();
    expect(inputFor(alone, world('cool.note', {})).ovenBusy).toBeUndefined();
    expect(inputFor(alone, world('cool.note', {})).blocked.some((span) => 'bake' in span)).toBe(
      false,
    );
  });
});
