import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterEach, expect, it } from 'vitest';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import type { Face } from '../../../src/screens/circle/face.ts';
import { DayTurns } from '../../../src/screens/circle/orders/DayTurns.tsx';
import { tap, turnedClock } from '../parts/touching.ts';

const clock = turnedClock();
const DAY = '2031-05-10';

afterEach(() => cleanup());

const show = (today: string): Face[] => {
  const opened: Face[] = [];
  render(() => (
    <PressGround now={clock}>
      <DayTurns day={DAY} today={today} onOpen={(face) => opened.push(face)} />
    </PressGround>
  ));
  return opened;
};
const labels = () => screen.getAllByRole('button').map(({ textContent }) => textContent);
const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};

it('has the dough at hand before the day, and the rest of it behind one press', () => {
  const opened = show('2031-05-09');
  expect(labels()).toEqual([expect.stringMatching(/dough/i), 'More of this day']);
  press(/dough/i);
  press(/^More of this day/);
  press(/^Shopping list/);
  expect(opened).toEqual([
    { at: 'dough', day: DAY },
    { at: 'shopping', day: DAY },
  ]);
  press(/^Close/);
  expect(labels()).toHaveLength(2);
});

it('has on the day itself at hand what is done then, and the dough behind the press', () => {
  show(DAY);
  expect(labels().join()).not.toMatch(/dough/i);
  press(/^More of this day/);
  expect(labels().join()).toMatch(/dough/i);
});
