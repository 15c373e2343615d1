import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { Control } from '../../../src/parts/Control.tsx';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { down, place, turnedClock, up } from './touching.ts';

afterEach(cleanup);

/** A control that has been there long enough, and whether a lifted touch is left to the browser. */
const room = (firstTouch = false) => {
  const clock = turnedClock();
  const onPress = vi.fn();
  render(() => (
    <PressGround now={clock} firstTouch={() => firstTouch}>
      <Control label="Go" onPress={onPress} />
      <p>Words</p>
    </PressGround>
  ));
  clock.at += 1_100;
  const go = screen.getByRole('button', { name: 'Go' });
  place(go, 0, 0, 100, 100);
  const touch = (el: Element, to = { clientX: 50, clientY: 50 }): boolean => {
    down(el, { clientX: 50, clientY: 50 });
    up(el, to);
    return fireEvent.touchEnd(el);
  };
  return { go, onPress, touch };
};

describe('a mouse and a click made of a touch', () => {
  it('are not asked for where it pressed something', () => {
    const { go, onPress, touch } = room();
    expect(touch(go)).toBe(false);
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it('are not asked for where it took away what it pressed', () => {
    const { go, onPress, touch } = room();
    onPress.mockImplementation(() => go.remove());
    expect(touch(go.firstElementChild!)).toBe(false);
    expect(onPress).toHaveBeenCalledTimes(1);
    expect(go.isConnected).toBe(false);
  });

  it('are left to the browser beside everything', () => {
    const { go, touch } = room();
    expect(touch(screen.getByText('Words'))).toBe(true);
    touch(go);
    expect(touch(screen.getByText('Words'))).toBe(true);
  });

  it('are left to it where the finger slid off, and where the touch only silenced a call', () => {
    const { go, onPress, touch } = room();
    expect(touch(go, { clientX: 500, clientY: 50 })).toBe(true);
    cleanup();
    const rings = room(true);
    expect(rings.touch(rings.go)).toBe(true);
    expect(onPress).not.toHaveBeenCalled();
    expect(rings.onPress).not.toHaveBeenCalled();
  });
});
