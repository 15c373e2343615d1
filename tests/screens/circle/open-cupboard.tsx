import { render, screen } from '@solidjs/testing-library';
import type { JSX } from 'solid-js';
import type { Circle } from '../../../src/core/circle/circle.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import type { House } from '../../../src/screens/house.ts';
import type { NotWritten } from '../../../src/screens/house-circle.ts';
import { openBaking } from '../../fakes/baking.ts';
import { fakeCircle } from '../../fakes/circle.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

const clock = turnedClock();

/** A page of the cupboard over a house and a circle that stays in memory. */
export async function openOver(
  page: (house: House, circle: ReturnType<typeof fakeCircle>) => JSX.Element,
  first: Partial<Circle> = {},
  fails?: () => NotWritten | null,
) {
  const world = makeFakeWorld();
  const { house, begin } = await openBaking(world);
  const circle = fakeCircle(first, fails);
  render(() => <PressGround now={clock}>{page(house, circle)}</PressGround>);
  return { house, circle, begin, world };
}

export const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};
export const key = (text: string): void => {
  for (const digit of text) press(digit === '.' ? /^\.$/ : new RegExp(`^${digit}$`));
};
export const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
/** What stands on the page, its blanks plain ones. */
export const shown = (): string => document.body.textContent?.replace(/\s/g, ' ') ?? '';
