import { cleanup, render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterEach, expect, it, vi } from 'vitest';
import { MINUTE } from '../../src/core/units.ts';
import { PressGround } from '../../src/parts/PressGround.tsx';
import type { House } from '../../src/screens/house.ts';
import { RunningBakes } from '../../src/screens/start/RunningBakes.tsx';
import { ARMED, place, tap, turnedClock } from './parts/touching.ts';

afterEach(cleanup);

it('a bake that is late is gone to in the very moment in which its minutes go on', () => {
  const clock = turnedClock();
  const onBake = vi.fn();
  const [now, setNow] = createSignal(10 * MINUTE);
  const house = { now, ways: () => ({}), hour: () => '05:13' } as unknown as House;
  const late = { id: 'a', mark: 1, name: 'Olive', waits: '', stage: 'Fold', at: 0, late: true };
  render(() => (
    <PressGround now={clock}>
      <RunningBakes house={house} bakes={[late]} onBake={onBake} />
    </PressGround>
  ));
  const press = screen.getByRole('button', { name: /^Olive.*10/ });
  place(press, 0, 0, 100, 100);
  clock.at += ARMED;
  setNow(11 * MINUTE);
  expect(press.textContent).toContain('11');
  tap(press, { clientX: 50, clientY: 50 });
  expect(onBake).toHaveBeenCalledExactlyOnceWith('a');
});
