import { fireEvent } from '@solidjs/testing-library';

/** A clock the test turns, in milliseconds. */
export interface Turned {
  (): number;
  at: number;
}

/** Starts far from zero: nothing may depend on a clock's zero. */
export function turnedClock(): Turned {
  const clock = Object.assign(() => clock.at, { at: 50_000 });
  return clock;
}

/** Gives an element a place on the glass; jsdom lays nothing out. */
export function place(el: Element, x: number, y: number, width: number, height: number): void {
  el.getBoundingClientRect = () => new DOMRect(x, y, width, height);
}

interface Spot {
  readonly pointerId?: number;
  readonly clientX?: number;
  readonly clientY?: number;
  readonly button?: number;
}

export const down = (el: Element, spot: Spot = {}): boolean =>
  fireEvent.pointerDown(el, { pointerId: 1, button: 0, pointerType: 'touch', ...spot });
export const move = (el: Element, spot: Spot = {}): boolean =>
  fireEvent.pointerMove(el, { pointerId: 1, pointerType: 'touch', ...spot });
export const up = (el: Element, spot: Spot = {}): boolean =>
  fireEvent.pointerUp(el, { pointerId: 1, button: 0, pointerType: 'touch', ...spot });

/** One tap as a browser tells it: down, up, and the click made of them. */
export function tap(el: Element, spot: Spot = {}): void {
  down(el, spot);
  up(el, spot);
  fireEvent.click(el, { detail: 1, ...spot });
}

/** The state in which a button has been on the screen long enough. */
export const ARMED = 400;
