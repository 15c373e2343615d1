import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { createSignal, Show } from 'solid-js';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { Control } from '../../../src/parts/Control.tsx';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { Slab } from '../../../src/parts/Slab.tsx';
import { ARMED, down, move, place, tap, turnedClock, up } from './touching.ts';

afterEach(cleanup);

/** A slab at 880,240 376×536 and a control at 96,640 200×136, both armed. */
function bench(firstTouch?: () => boolean) {
  const clock = turnedClock();
  const onPress = vi.fn();
  const onBack = vi.fn();
  const [label, setLabel] = createSignal('That’s done');
  const [shown, setShown] = createSignal(true);
  const [off, setOff] = createSignal(false);
  render(() => (
    <PressGround now={clock} {...(firstTouch ? { firstTouch } : {})}>
      <Show when={shown()}>
        <Slab label={label()} onPress={onPress} disabled={off()} />
      </Show>
      <Control label="Take that back" onPress={onBack} />
      <a href="#elsewhere">elsewhere</a>
    </PressGround>
  ));
  const slab = () => {
    const el = screen.getByRole('button', { name: label() });
    place(el, 880, 240, 376, 536);
    return el;
  };
  const control = screen.getByRole('button', { name: 'Take that back' });
  place(control, 96, 640, 200, 136);
  clock.at += ARMED;
  return { clock, onPress, onBack, slab, control, setLabel, setShown, setOff };
}
const IN = { clientX: 1000, clientY: 500 };
const OUT = { clientX: 700, clientY: 500 };

describe('an act that changes under a finger', () => {
  it('spends the press that was meant for the one before', () => {
    const { clock, onPress, slab, setLabel } = bench();
    down(slab(), IN);
    setLabel('Look now');
    clock.at += ARMED + 100;
    up(slab(), IN);
    expect(onPress).not.toHaveBeenCalled();
    tap(slab(), IN);
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it('spends the Space bar that was held for it', () => {
    const { clock, onPress, slab, setLabel } = bench();
    fireEvent.keyDown(slab(), { key: ' ' });
    setLabel('Look now');
    clock.at += ARMED + 100;
    fireEvent.keyUp(slab(), { key: ' ' });
    expect(onPress).not.toHaveBeenCalled();
  });
});

describe('what was pressed', () => {
  afterEach(() => void vi.useRealTimers());

  it('is seen to be for a moment, however short the touch, and then no more', () => {
    const { slab, control } = bench();
    vi.useFakeTimers();
    tap(slab(), IN);
    expect(slab().dataset['pressed']).toBe('');
    vi.advanceTimersByTime(119);
    expect(slab().dataset['pressed']).toBe('');
    vi.advanceTimersByTime(1);
    expect(slab().dataset['pressed']).toBeUndefined();
    // Within the dead time nothing is taken, and nothing is seen to be.
    tap(control, { clientX: 100, clientY: 700 });
    expect(control.dataset['pressed']).toBeUndefined();
  });

  it('rises at once where it stands for another act', () => {
    const { slab, setLabel } = bench();
    tap(slab(), IN);
    setLabel('Look now');
    expect(slab().dataset['pressed']).toBeUndefined();
  });

  it('and slid off is not seen any more', () => {
    const { slab, onPress } = bench();
    down(slab(), IN);
    move(slab(), OUT);
    up(slab(), OUT);
    expect(onPress).not.toHaveBeenCalled();
    expect(slab().dataset['pressed']).toBeUndefined();
  });
});

describe('dead time', () => {
  it.each([
    [[0, 150, 400, 590], 1],
    [[0, 599], 1],
    [[0, 600], 2],
    [[0, 1100], 2],
    [[0, 700, 1400], 3],
  ])('taps at %j ms are %i', (times, presses) => {
    const { clock, onPress, slab } = bench();
    const start = clock.at;
    for (const t of times) {
      clock.at = start + t;
      tap(slab(), IN);
    }
    expect(onPress).toHaveBeenCalledTimes(presses);
  });

  it('outlives the button that was pressed', () => {
    const { clock, onPress, slab, setShown } = bench();
    tap(slab(), IN);
    setShown(false);
    clock.at += 100;
    setShown(true);
    clock.at += 420;
    tap(slab(), IN);
    expect(onPress).toHaveBeenCalledTimes(1);
    clock.at += 80;
    tap(slab(), IN);
    expect(onPress).toHaveBeenCalledTimes(2);
  });

  it('holds for the other controls too', () => {
    const { clock, onBack, slab, control } = bench();
    tap(slab(), IN);
    clock.at += 500;
    tap(control, { clientX: 100, clientY: 700 });
    expect(onBack).not.toHaveBeenCalled();
    clock.at += 100;
    tap(control, { clientX: 100, clientY: 700 });
    expect(onBack).toHaveBeenCalledTimes(1);
  });

  it('is not begun by a press that was refused', () => {
    const { clock, onPress, slab } = bench();
    down(slab(), IN);
    up(slab(), OUT);
    clock.at += 10;
    tap(slab(), IN);
    expect(onPress).toHaveBeenCalledTimes(1);
  });
});

describe('arming', () => {
  it('leaves a fresh control inert to 400 ms', () => {
    const { clock, onPress, slab } = bench();
    clock.at -= 1;
    tap(slab(), IN);
    expect(onPress).not.toHaveBeenCalled();
    clock.at += 1;
    tap(slab(), IN);
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it('begins again when the words change', () => {
    const { clock, onPress, slab, setLabel } = bench();
    clock.at += 5_000;
    setLabel('It’s ready');
    clock.at += 399;
    tap(slab(), IN);
    expect(onPress).not.toHaveBeenCalled();
    clock.at += 1;
    tap(slab(), IN);
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it('counts from where the finger came down, not from where it left', () => {
    const { clock, onPress, slab, setLabel } = bench();
    setLabel('It’s ready');
    clock.at += 300;
    down(slab(), IN);
    clock.at += 300;
    up(slab(), IN);
    expect(onPress).not.toHaveBeenCalled();
  });
});

describe('contacts', () => {
  it('act on release, not on touch', () => {
    const { onPress, slab } = bench();
    down(slab(), IN);
    expect(onPress).not.toHaveBeenCalled();
    up(slab(), IN);
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it('that slide off cancel, and show it while they slide', () => {
    const { onPress, slab } = bench();
    down(slab(), IN);
    expect(slab().dataset['pressed']).toBe('');
    move(slab(), OUT);
    expect(slab().dataset['pressed']).toBeUndefined();
    up(slab(), OUT);
    expect(onPress).not.toHaveBeenCalled();
  });

  it('that slide on from outside do nothing', () => {
    const { onPress, onBack, slab, control } = bench();
    down(control, { clientX: 100, clientY: 700 });
    up(slab(), IN);
    expect(onPress).not.toHaveBeenCalled();
    expect(onBack).not.toHaveBeenCalled();
  });

  it('all inside the slab are one press, however long the palm lies', () => {
    const { clock, onPress, slab } = bench();
    for (const pointerId of [1, 2, 3, 4]) down(slab(), { ...IN, pointerId });
    for (const pointerId of [1, 2, 3, 4]) {
      up(slab(), { ...IN, pointerId });
      clock.at += 700;
    }
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it('spread over the screen by threes fire nothing', () => {
    const { clock, onPress, onBack, slab, control } = bench();
    down(slab(), { ...IN, pointerId: 1 });
    down(control, { clientX: 100, clientY: 700, pointerId: 2 });
    down(document.body, { clientX: 500, clientY: 100, pointerId: 3 });
    up(slab(), { ...IN, pointerId: 1 });
    up(control, { clientX: 100, clientY: 700, pointerId: 2 });
    up(document.body, { clientX: 500, clientY: 100, pointerId: 3 });
    expect(onPress).not.toHaveBeenCalled();
    expect(onBack).not.toHaveBeenCalled();
    clock.at += 1;
    tap(slab(), IN);
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it('of a thumb that holds the tablet do not spoil a press', () => {
    const { onPress, slab } = bench();
    down(document.body, { clientX: 2, clientY: 400, pointerId: 9 });
    tap(slab(), IN);
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it('the browser takes away cancel', () => {
    const { onPress, slab } = bench();
    down(slab(), IN);
    fireEvent.pointerCancel(slab(), { pointerId: 1 });
    fireEvent.pointerUp(slab(), { pointerId: 1, ...IN });
    expect(onPress).not.toHaveBeenCalled();
  });

  it('of a mouse take the focus from another button on their way, and press all the same', () => {
    const { onPress, slab, control } = bench();
    control.focus();
    down(slab(), IN);
    control.blur();
    up(slab(), IN);
    expect(onPress).toHaveBeenCalledOnce();
  });

  it('are given up when the window goes to the back', () => {
    const { onPress, slab } = bench();
    down(slab(), IN);
    window.dispatchEvent(new Event('blur'));
    up(slab(), IN);
    expect(onPress).not.toHaveBeenCalled();
  });

  it('by another mouse button do nothing', () => {
    const { onPress, slab } = bench();
    down(slab(), { ...IN, button: 2 });
    up(slab(), { ...IN, button: 2 });
    expect(onPress).not.toHaveBeenCalled();
  });

  it('and the click made of them are never two presses, even when the click is late', () => {
    const { clock, onPress, slab } = bench();
    down(slab(), IN);
    up(slab(), IN);
    clock.at += 700;
    fireEvent.click(slab(), { detail: 1 });
    expect(onPress).toHaveBeenCalledTimes(1);
  });
});

describe('keys', () => {
  it('Enter presses once while it is held', () => {
    const { clock, onPress, slab } = bench();
    fireEvent.keyDown(slab(), { key: 'Enter' });
    for (let i = 0; i < 60; i++) {
      clock.at += 33;
      fireEvent.keyDown(slab(), { key: 'Enter', repeat: true });
    }
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it('Space presses when it is let go, once', () => {
    const { clock, onPress, slab } = bench();
    fireEvent.keyDown(slab(), { key: ' ' });
    clock.at += 900;
    fireEvent.keyDown(slab(), { key: ' ', repeat: true });
    expect(onPress).not.toHaveBeenCalled();
    fireEvent.keyUp(slab(), { key: ' ' });
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it('Space let go elsewhere presses nothing', () => {
    const { onPress, slab } = bench();
    fireEvent.keyDown(slab(), { key: ' ' });
    fireEvent.blur(slab());
    fireEvent.keyUp(slab(), { key: ' ' });
    expect(onPress).not.toHaveBeenCalled();
  });

  it('keep the browser from making a click of them', () => {
    const { slab } = bench();
    expect(fireEvent.keyDown(slab(), { key: 'Enter' })).toBe(false);
    expect(fireEvent.keyUp(slab(), { key: ' ' })).toBe(false);
    expect(fireEvent.keyDown(slab(), { key: 'Tab' })).toBe(true);
  });

  it('are not needed: a screen reader’s bare click presses', () => {
    const { onPress, slab } = bench();
    slab().click();
    expect(onPress).toHaveBeenCalledTimes(1);
  });
});

describe('a disabled slab', () => {
  it('takes no touch, key or click, and says so', () => {
    const { onPress, slab, setOff } = bench();
    setOff(true);
    tap(slab(), IN);
    fireEvent.keyDown(slab(), { key: 'Enter' });
    slab().click();
    expect(onPress).not.toHaveBeenCalled();
    expect(slab().getAttribute('aria-disabled')).toBe('true');
  });
});

describe('while a call rings', () => {
  it('the first touch only silences it, and controls arm again after 400 ms', () => {
    let ringing = true;
    const firstTouch = vi.fn(() => {
      const was = ringing;
      ringing = false;
      return was;
    });
    const { clock, onPress, slab } = bench(firstTouch);
    tap(slab(), IN);
    expect(ringing).toBe(false);
    expect(onPress).not.toHaveBeenCalled();
    clock.at += 399;
    tap(slab(), IN);
    expect(onPress).not.toHaveBeenCalled();
    clock.at += 1;
    tap(slab(), IN);
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it('the first key only silences it', () => {
    let ringing = true;
    const { onPress, slab } = bench(() => ringing && !(ringing = false));
    fireEvent.keyDown(slab(), { key: 'Enter' });
    expect(ringing).toBe(false);
    expect(onPress).not.toHaveBeenCalled();
  });

  it('a key that is stuck silences nothing, and presses nothing', () => {
    let ringing = true;
    const { onPress, slab } = bench(() => ringing && !(ringing = false));
    for (let n = 0; n < 20; n += 1) fireEvent.keyDown(slab(), { key: 'Enter', repeat: true });
    expect([ringing, onPress.mock.calls.length]).toEqual([true, 0]);
    fireEvent.keyUp(slab(), { key: 'Enter' });
    fireEvent.keyDown(slab(), { key: 'Enter' });
    expect([ringing, onPress.mock.calls.length]).toEqual([false, 0]);
  });

  it('the first touch follows no link, the second does', () => {
    let ringing = true;
    bench(() => ringing && !(ringing = false));
    const link = screen.getByText('elsewhere');
    const followed = vi.fn((e: Event) => e.preventDefault());
    link.addEventListener('click', followed);
    tap(link);
    expect(followed).not.toHaveBeenCalled();
    tap(link);
    expect(followed).toHaveBeenCalledTimes(1);
  });
});
