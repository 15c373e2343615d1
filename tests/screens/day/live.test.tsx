import { cleanup, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { openHouse } from '../../../src/app/open-house.ts';
import { HOUR, MINUTE } from '../../../src/core/units.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import LivePage from '../../../src/screens/day/live/LivePage.tsx';
import type { House } from '../../../src/screens/house.ts';
import { makeMemoryStore } from '../../fakes/memory-store.ts';
import { runningDay, type RunningDay } from '../../fakes/running-day.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

async function opened({ hand }: RunningDay) {
  const store = makeMemoryStore();
  await store.append(hand.records);
  const world = makeFakeWorld({ store, at: hand.now });
  const clock = turnedClock();
  const house: House = await createRoot(() => openHouse(world));
  const closed = vi.fn();
  render(() => (
    <PressGround now={clock} firstTouch={() => house.hush()}>
      <LivePage house={house} onClose={closed} />
    </PressGround>
  ));
  const press = async (name: RegExp): Promise<void> => {
    const found = await screen.findByRole('button', { name });
    clock.at += 1_100;
    tap(found);
  };
  const text = (): string => document.body.textContent.replaceAll('\u00a0', ' ');
  return { world, house, closed, press, text };
}

afterEach(cleanup);

describe('the day while it runs', () => {
  it('as planned, says so in a line and lists what comes', async () => {
    const day = runningDay('levain.ripening');
    day.hand.turn(30);
    const { text, house } = await opened(day);
    await vi.waitFor(() => expect(text()).toContain('All as planned.'));
    expect(text()).toContain('Mix flour and water');
    expect(house.records()).toHaveLength(day.hand.records.length);
  });

  it('a levain that is late: one sentence, one press, and nothing moves before it', async () => {
    const day = runningDay('levain.ripening', 120);
    day.hand.turn(30);
    const { text, press, house } = await opened(day);
    await vi.waitFor(() => expect(text()).toMatch(/the levain is ready \d\sh( \d\d)? later\./));
    expect(house.plan()!.sequence).toBe(day.plan.sequence);
    await press(/^Take the new plan$/);
    await vi.waitFor(() => expect(house.plan()!.sequence).toBe(day.plan.sequence + 1));
    const next = house.plan()!;
    expect(next.ready).toEqual(day.plan.ready);
    expect(next.touches.find(({ name }) => name === 'mix')!.at).toBeGreaterThan(day.at('mix'));
    await vi.waitFor(() => expect(text()).toContain('The new plan stands.'));
  });

  it('says when to go and look at what waits, the bench’s own look first', async () => {
    const day = runningDay('bulk.proving');
    const look = day.hand.kitchen.bakes['a']!.context.marks['look']!;
    const { text, house } = await opened(day);
    const first = `Look at the dough at ${house.hour(look)}`;
    await vi.waitFor(() => expect(text()).toContain(first));
    expect(text()).toMatch(/Look at the dough at \d\d:\d\d, then \d\d:\d\d/);
  });

  it('keeps its instants where the clock is set back an hour, and says what bread is at by it', async () => {
    const day = runningDay('levain.ripening');
    day.hand.turn(30);
    const { world, text, house } = await opened(day);
    await vi.waitFor(() => expect(text()).toContain('All as planned.'));
    expect(text()).not.toContain('set back');
    const before = house.plan()!;
    const now = house.now();
    const marks = house.kitchen().bakes['a']!.context.marks;
    world.clock.set(world.clock.now() - HOUR);
    world.beat();
    world.clock.turn(1_000);
    world.beat();
    // Kitchen time runs on: the dough has not risen for an hour less.
    expect(house.now()).toBeGreaterThanOrEqual(now);
    expect(house.now() - now).toBeLessThan(MINUTE);
    expect(house.kitchen().bakes['a']!.context.marks).toEqual(marks);
    expect(house.plan()).toEqual(before);
    expect(house.hour(before.ready[0]!.at)).toBe('09:00');
    await vi.waitFor(() =>
      expect(text()).toMatch(
        /The clock was set back 1 h\. The dough keeps its time: bread at .*09:00\./,
      ),
    );
    expect(house.records()).toHaveLength(day.hand.records.length);
  });

  it('an offer that is declined is not made again', async () => {
    const day = runningDay('levain.ripening', 120);
    day.hand.turn(30);
    const { text, press, house } = await opened(day);
    await press(/^Keep the old plan$/);
    await vi.waitFor(() => expect(text()).not.toContain('Take the new plan'));
    expect(house.plan()!.sequence).toBe(day.plan.sequence);
  });

  it('called away over the bulk’s end: one plan, one fallback, taken by one press', async () => {
    const day = runningDay('bulk.proving');
    const { text, press, house } = await opened(day);
    await press(/^Something came up$/);
    await press(/^Called away$/);
    await press(/^In 10\smin$/);
    await press(/^4\sh$/);
    await vi.waitFor(() => expect(text()).toContain('Otherwise'), { timeout: 15_000 });
    expect(text()).toContain('Do this');
    await press(/^Do this: Do it this way$/);
    await vi.waitFor(() => expect(house.plan()!.ask.away).toHaveLength(1));
    const [away] = house.plan()!.ask.away;
    expect(away!.to - away!.from).toBe(4 * HOUR);
    for (const { at, hands, frozen } of house.plan()!.touches)
      if (!frozen) expect(at < away!.to && at + hands * MINUTE > away!.from).toBe(false);
  });

  it('nothing that was answered about the old plan is offered once another stands', async () => {
    const day = runningDay('levain.ripening', 120);
    day.hand.turn(30);
    const { text, press, house } = await opened(day);
    await vi.waitFor(() => expect(text()).toContain('Take the new plan'));
    await press(/^Something came up$/);
    await press(/^Called away$/);
    await press(/^In 10\smin$/);
    await press(/^2\sh$/);
    await screen.findByRole('button', { name: /^Do this: Do it this way$/ }, { timeout: 15_000 });
    const planner = await house.planner();
    const asked = vi.spyOn(planner, 'layLive').mockImplementation(() => () => undefined);
    await press(/^Do this: Do it this way$/);
    await vi.waitFor(() => expect(asked).toHaveBeenCalled());
    await vi.waitFor(() => expect(text()).toContain('The day so far'));
    expect(house.plan()!.sequence).toBe(day.plan.sequence + 1);
    expect(text()).toContain('The new plan stands.');
    expect(text()).not.toContain('Take the new plan');
  });

  it('a fold that was called for and not done is done now, or left out', async () => {
    const day = runningDay('bulk.between');
    day.hand.turn(80);
    expect(day.hand.stage('a')).toBe('bulk.fold');
    const { text, press, house } = await opened(day);
    // What rings takes the first touch for itself.
    await press(/^Something came up$/);
    await vi.waitFor(() => expect(house.records().at(-1)!.fact.kind).toBe('heard'));
    await press(/^Something came up$/);
    await press(/^Missed a fold$/);
    await vi.waitFor(() => expect(text()).toContain('Otherwise'), { timeout: 15_000 });
    expect(text()).toMatch(/Fold now\. Then (?!fold 1)/);
    expect(text()).toContain('Leave out fold 1.');
    await press(/^Otherwise: Do it this way$/);
    await vi.waitFor(() => expect(house.plan()!.sequence).toBe(day.plan.sequence + 1));
    expect(house.plan()!.touches.map(({ name }) => name)).not.toContain('fold 1');
  });

  it('hands the calendar a file, and says what it is', async () => {
    const day = runningDay('levain.ripening');
    const handed: string[] = [];
    const { text, press, house } = await opened(day);
    house.handOn = (file) =>
      Promise.resolve(void handed.push(String(file.text))).then(() => 'shared');
    await press(/^To the calendar$/);
    await vi.waitFor(() => expect(text()).toContain('The calendar has a copy.'));
    expect(handed[0]).toContain('SUMMARY:Mix flour and water');
  });
});
