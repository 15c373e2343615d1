import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterEach, expect, it, vi } from 'vitest';
import { Control } from '../../../src/parts/Control.tsx';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { Slab } from '../../../src/parts/Slab.tsx';
import { ARMED, place, tap, turnedClock } from './touching.ts';

afterEach(cleanup);
const IN = { clientX: 1000, clientY: 500 };

it('stays armed while only what it is drawn from is made anew, as every second is', () => {
  const clock = turnedClock();
  const onPress = vi.fn();
  const [view, setView] = createSignal({ act: 'judge', late: '+0:07', label: 'Golden' });
  render(() => (
    <PressGround now={clock}>
      <Slab label={view().label} fresh={`${view().act} ${view().label}`} onPress={onPress} />
    </PressGround>
  ));
  const slab = screen.getByRole('button', { name: 'Golden' });
  place(slab, 880, 240, 376, 536);
  clock.at += ARMED;
  setView({ ...view(), late: '+0:08' });
  tap(slab, IN);
  expect(onPress).toHaveBeenCalledTimes(1);
  clock.at += 1_000;
  setView({ act: 'unload', late: '', label: 'Golden' });
  tap(slab, IN);
  expect(onPress).toHaveBeenCalledTimes(1);
});

it('takes no focus from another control at a tick, and takes it for the next act', () => {
  const [view, setView] = createSignal({ act: 'judge', late: '+0:07' });
  render(() => (
    <PressGround now={turnedClock()}>
      <Slab label="Golden" fresh={`${view().act} Golden`} onPress={() => undefined} />
      <Control label="Take that back" onPress={() => undefined} />
    </PressGround>
  ));
  const back = screen.getByRole('button', { name: 'Take that back' });
  back.focus();
  fireEvent.keyDown(back, { key: 'Tab' });
  setView({ ...view(), late: '+0:08' });
  expect(document.activeElement).toBe(back);
  setView({ act: 'unload', late: '' });
  expect(document.activeElement).toBe(screen.getByRole('button', { name: 'Golden' }));
});
