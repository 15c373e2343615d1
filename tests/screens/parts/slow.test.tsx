import { cleanup, render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { Control } from '../../../src/parts/Control.tsx';
import { NumberPad } from '../../../src/parts/NumberPad.tsx';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { ARMED, down, place, turnedClock, up } from './touching.ts';

afterEach(cleanup);
const IN = { clientX: 100, clientY: 700 };

/** A page that hears of every touch `late` ms after the hand made it. */
const busy = () => {
  const clock = turnedClock();
  const page = { late: 0 };
  const onBack = vi.fn();
  const [label, setLabel] = createSignal('Take that back');
  render(() => (
    <PressGround now={clock} when={() => clock.at - page.late}>
      <Control label={label()} onPress={onBack} />
    </PressGround>
  ));
  const control = screen.getByRole('button');
  place(control, 96, 640, 200, 136);
  clock.at += ARMED;
  /** A tap of so many ms after `since`, heard of at `heard`. */
  const tap = (made: number, heard: number): void => {
    clock.at = heard;
    page.late = heard - made;
    down(control, IN);
    up(control, IN);
  };
  return { clock, tap, onBack, setLabel, since: clock.at };
};

describe('a page that is busy', () => {
  it('takes a double tap once, though it hears of the second long after the first', () => {
    const { tap, onBack, since } = busy();
    tap(since, since + 100);
    tap(since + 300, since + 1_000);
    expect(onBack).toHaveBeenCalledTimes(1);
  });

  it('takes a second press that was late enough, though it hears of both at once', () => {
    const { tap, onBack, since } = busy();
    tap(since, since + 900);
    tap(since + 650, since + 910);
    expect(onBack).toHaveBeenCalledTimes(2);
  });

  it('takes no press that was made before what it presses was there, however late it hears of it', () => {
    const { clock, tap, onBack, setLabel, since } = busy();
    clock.at = since + 200;
    setLabel('Look now');
    tap(since + 100, since + 900);
    tap(since + 599, since + 1_100);
    expect(onBack).not.toHaveBeenCalled();
    tap(since + 600, since + 1_200);
    expect(onBack).toHaveBeenCalledTimes(1);
  });
});

describe('a keypad on a busy page', () => {
  const typed = (made: readonly number[]): string => {
    const clock = turnedClock();
    let late = 0;
    let text = '';
    render(() => (
      <PressGround now={clock} when={() => clock.at - late}>
        <NumberPad
          label="Dough"
          unit="°C"
          words={{ point: '.', clear: 'clear' }}
          onText={(keys) => (text = keys)}
        />
      </PressGround>
    ));
    const key = screen.getByRole('button', { name: '2' });
    place(key, 96, 640, 100, 100);
    clock.at += ARMED;
    const since = clock.at;
    // All of them are heard of at once, when the page is free again.
    clock.at = since + 1_000;
    for (const at of made) {
      late = 1_000 - at;
      down(key, IN);
      up(key, IN);
    }
    return text;
  };

  it('has both digits of two quick taps', () => {
    expect(typed([0, 150])).toBe('22');
  });

  it('has one digit of a tap that bounced', () => {
    expect(typed([0, 60])).toBe('2');
  });
});
