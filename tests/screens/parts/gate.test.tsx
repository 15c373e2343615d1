import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Control } from '../../../src/parts/Control.tsx';
import { HoldSlab } from '../../../src/parts/HoldSlab.tsx';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { TwoTaps } from '../../../src/parts/TwoTaps.tsx';
import { down, move, place, tap, up } from './touching.ts';

/** The page's own clock and timers, turned together. */
beforeEach(() => vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] }));
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

const IN = { clientX: 1000, clientY: 500 };
const OUT = { clientX: 700, clientY: 500 };

function gate() {
  const onHeld = vi.fn();
  const onBoth = vi.fn();
  render(() => (
    <PressGround>
      <HoldSlab label="Hold to open" holding="Keep holding" then="Lift the lid" onHeld={onHeld} />
      <TwoTaps
        label="Without holding"
        first="First here"
        second="then here"
        onBoth={onBoth}
        between={<Control label="Take that back" onPress={() => undefined} />}
      />
    </PressGround>
  ));
  vi.advanceTimersByTime(400);
  const slab = screen.getByRole('button', { name: /Hold to open/ });
  place(slab, 880, 240, 376, 536);
  const button = (name: string): HTMLElement => screen.getByRole('button', { name });
  return { onHeld, onBoth, slab, first: button('First here'), second: button('then here') };
}

describe('a hold', () => {
  it('of 1000 ms does not open', () => {
    const { onHeld, slab } = gate();
    down(slab, IN);
    vi.advanceTimersByTime(1000);
    up(slab, IN);
    vi.advanceTimersByTime(5000);
    expect(onHeld).not.toHaveBeenCalled();
  });

  it('of 1300 ms opens, once, while it is still held', () => {
    const { onHeld, slab } = gate();
    down(slab, IN);
    vi.advanceTimersByTime(1300);
    expect(onHeld).toHaveBeenCalledTimes(1);
    vi.advanceTimersByTime(5000);
    up(slab, IN);
    expect(onHeld).toHaveBeenCalledTimes(1);
  });

  it('shows that it fills, in words too', () => {
    const { slab } = gate();
    down(slab, IN);
    expect(slab.dataset['holding']).toBe('');
    expect(slab.textContent).toContain('Keep holding');
    up(slab, IN);
    expect(slab.dataset['holding']).toBeUndefined();
    expect(slab.textContent).toContain('Hold to open');
  });

  it('is not summed up from two', () => {
    const { onHeld, slab } = gate();
    for (let n = 0; n < 2; n++) {
      down(slab, IN);
      vi.advanceTimersByTime(700);
      up(slab, IN);
    }
    vi.advanceTimersByTime(2000);
    expect(onHeld).not.toHaveBeenCalled();
  });

  it('that slides off does not open', () => {
    const { onHeld, slab } = gate();
    down(slab, IN);
    vi.advanceTimersByTime(600);
    move(slab, OUT);
    vi.advanceTimersByTime(2000);
    expect(onHeld).not.toHaveBeenCalled();
  });

  it('does not begin on a gate that is new', () => {
    const onHeld = vi.fn();
    render(() => <HoldSlab label="Hold" holding="Keep" onHeld={onHeld} />);
    const slab = screen.getByRole('button');
    vi.advanceTimersByTime(399);
    down(slab);
    vi.advanceTimersByTime(3000);
    expect(onHeld).not.toHaveBeenCalled();
  });

  it('ends when two more touch the glass elsewhere, and a third touch begins none', () => {
    const { onHeld, slab } = gate();
    down(slab, { ...IN, pointerId: 1 });
    down(document.body, { clientX: 5, clientY: 5, pointerId: 2 });
    down(document.body, { clientX: 500, clientY: 5, pointerId: 3 });
    vi.advanceTimersByTime(2000);
    up(slab, { ...IN, pointerId: 1 });
    down(slab, { ...IN, pointerId: 4 });
    vi.advanceTimersByTime(2000);
    expect(onHeld).not.toHaveBeenCalled();
  });

  it('by Space opens when focused and held, repeats or not', () => {
    const { onHeld, slab } = gate();
    fireEvent.keyDown(slab, { key: ' ' });
    vi.advanceTimersByTime(500);
    fireEvent.keyDown(slab, { key: ' ', repeat: true });
    vi.advanceTimersByTime(500);
    expect(onHeld).not.toHaveBeenCalled();
    vi.advanceTimersByTime(300);
    expect(onHeld).toHaveBeenCalledTimes(1);
  });

  it('by Space let go early, or with the focus gone, does not open', () => {
    const { onHeld, slab } = gate();
    fireEvent.keyDown(slab, { key: ' ' });
    vi.advanceTimersByTime(1000);
    fireEvent.keyUp(slab, { key: ' ' });
    fireEvent.keyDown(slab, { key: ' ' });
    fireEvent.blur(slab);
    vi.advanceTimersByTime(3000);
    expect(onHeld).not.toHaveBeenCalled();
  });

  it('is never replaced by Enter or a click', () => {
    const { onHeld, slab } = gate();
    fireEvent.keyDown(slab, { key: 'Enter' });
    slab.click();
    vi.advanceTimersByTime(3000);
    expect(onHeld).not.toHaveBeenCalled();
  });
});

describe('two taps', () => {
  it('within 10 s open', () => {
    const { onBoth, first, second } = gate();
    tap(first);
    vi.advanceTimersByTime(9900);
    tap(second);
    expect(onBoth).toHaveBeenCalledTimes(1);
  });

  it('further apart do not, and begin anew', () => {
    const { onBoth, first, second } = gate();
    tap(first);
    vi.advanceTimersByTime(10_001);
    tap(second);
    expect(onBoth).not.toHaveBeenCalled();
    vi.advanceTimersByTime(700);
    tap(second);
    expect(onBoth).not.toHaveBeenCalled();
    tap(first);
    vi.advanceTimersByTime(700);
    tap(second);
    expect(onBoth).toHaveBeenCalledTimes(1);
  });

  it('in the other order do nothing', () => {
    const { onBoth, first, second } = gate();
    tap(second);
    vi.advanceTimersByTime(700);
    tap(first);
    expect(onBoth).not.toHaveBeenCalled();
  });

  it('are not made by keys, but by a screen reader’s clicks', () => {
    const { onBoth, first, second } = gate();
    vi.advanceTimersByTime(2000);
    for (const key of ['Enter', ' ']) {
      for (const el of [first, second]) {
        fireEvent.keyDown(el, { key });
        fireEvent.keyUp(el, { key });
        vi.advanceTimersByTime(700);
      }
    }
    expect(onBoth).not.toHaveBeenCalled();
    first.click();
    vi.advanceTimersByTime(700);
    second.click();
    expect(onBoth).toHaveBeenCalledTimes(1);
  });
});
