import { cleanup, render as draw, screen } from '@solidjs/testing-library';
import { createSignal, Show, type JSX } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Caption } from '../../../src/parts/Caption.tsx';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { Sheet } from '../../../src/parts/Sheet.tsx';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});
const render = (ui: () => JSX.Element) => draw(() => <PressGround>{ui()}</PressGround>);
const button = (name: string): HTMLElement => screen.getByRole('button', { name });
/** A frame, and what was put off until it is on the glass. */
const painted = (): unknown => vi.advanceTimersByTime(40);

describe('a sheet', () => {
  /** A page with two buttons, over which one of two sheets may lie. */
  const page = () => {
    const [open, setOpen] = createSignal<'ways' | 'end' | null>(null);
    render(() => (
      <>
        <button type="button">More</button>
        <button type="button">Done</button>
        <Show when={open() === 'ways'}>
          <Sheet title="Ways">
            <button type="button">Bigger</button>
          </Sheet>
        </Show>
        <Show when={open() === 'end'}>
          <Sheet title="End">
            <button type="button">Keep</button>
          </Sheet>
        </Show>
      </>
    ));
    button('More').focus();
    return setOpen;
  };

  it('takes the focus, keeps it, and gives it back once its going is painted', () => {
    const more = () => button('More');
    const setOpen = page();
    setOpen('ways');
    const sheet = screen.getByRole('dialog', { name: 'Ways' });
    expect(document.activeElement).toBe(sheet);
    button('Bigger').focus();
    more().focus();
    expect(sheet.contains(document.activeElement)).toBe(true);
    const asked = vi.spyOn(more(), 'focus');
    setOpen(null);
    // Asked for at once, the focus would have the whole page laid out before it is painted.
    expect(asked).not.toHaveBeenCalled();
    painted();
    expect(document.activeElement).toBe(more());
  });

  it('that comes in the place of another gives the focus back to whoever had it before both', () => {
    const setOpen = page();
    setOpen('ways');
    button('Bigger').focus();
    setOpen('end');
    painted();
    expect(document.activeElement).toBe(screen.getByRole('dialog', { name: 'End' }));
    button('Keep').focus();
    setOpen(null);
    painted();
    expect(document.activeElement).toBe(button('More'));
  });

  it('takes the focus from nothing that it has come to meanwhile', () => {
    const setOpen = page();
    setOpen('ways');
    setOpen(null);
    button('Done').focus();
    painted();
    expect(document.activeElement).toBe(button('Done'));
  });

  it('that is closed and opened again before it was painted keeps the focus', () => {
    const setOpen = page();
    setOpen('ways');
    setOpen(null);
    setOpen('ways');
    painted();
    expect(document.activeElement).toBe(screen.getByRole('dialog', { name: 'Ways' }));
    setOpen(null);
    painted();
    expect(document.activeElement).toBe(button('More'));
  });
});

describe('a caption', () => {
  it('is a live region whether it is seen or only heard', () => {
    const [seen, setSeen] = createSignal(true);
    render(() => <Caption text="That’s 24.5 degrees." seen={seen()} />);
    const region = screen.getByRole('status');
    expect(region.getAttribute('aria-live')).toBe('polite');
    expect(region.dataset['seen']).toBe('');
    setSeen(false);
    expect(region.dataset['seen']).toBeUndefined();
    expect(region.textContent).toBe('That’s 24.5 degrees.');
  });

  it('comes after the picture it speaks of, and is shown no sooner than its words', () => {
    const [said, setSaid] = createSignal({ text: 'Fold the dough.', seen: false });
    render(() => <Caption {...said()} />);
    const region = screen.getByRole('status');
    setSaid({ text: 'Ready later.', seen: true });
    expect(region.textContent).toBe('Fold the dough.');
    expect(region.dataset['seen']).toBeUndefined();
    painted();
    expect(region.textContent).toBe('Ready later.');
    expect(region.dataset['seen']).toBe('');
  });
});
