import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { createSignal, lazy, Show } from 'solid-js';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { Control } from '../../../src/parts/Control.tsx';
import { HoldSlab } from '../../../src/parts/HoldSlab.tsx';
import { NumberPad } from '../../../src/parts/NumberPad.tsx';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { Slab } from '../../../src/parts/Slab.tsx';
import { ARMED, down, place, tap, turnedClock, up } from './touching.ts';

afterEach(cleanup);

/** A slab at 880,240 376×536 with 35 px of ground around it, a control beside, a sheet on demand. */
function bench() {
  const clock = turnedClock();
  const onPress = vi.fn();
  const [label, setLabel] = createSignal('That’s done');
  const [sheet, setSheet] = createSignal(false);
  render(() => (
    <PressGround now={clock}>
      <main>
        <Slab label={label()} onPress={onPress} />
        <Control label="Take that back" onPress={() => {}} />
      </main>
      <Show when={sheet()}>
        <section data-testid="sheet" aria-modal="true" />
      </Show>
    </PressGround>
  ));
  const slab = screen.getByRole('button', { name: 'That’s done' });
  slab.style.setProperty('--reach', '35px');
  place(slab, 880, 240, 376, 536);
  clock.at += ARMED;
  return { clock, onPress, slab, setLabel, setSheet, main: screen.getByRole('main') };
}

describe('the ground around the slab', () => {
  it('is the slab’s own for a knuckle that slips off its rim', () => {
    const { onPress, main } = bench();
    tap(main, { clientX: 850, clientY: 500 });
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it('takes a fist that lies half beside it, once', () => {
    const { clock, onPress, slab, main } = bench();
    const knuckles = [
      { el: slab, clientX: 960, clientY: 500, pointerId: 1 },
      { el: slab, clientX: 900, clientY: 500, pointerId: 2 },
      { el: main, clientX: 860, clientY: 500, pointerId: 3 },
    ];
    for (const { el, ...spot } of knuckles) down(el, spot);
    for (const { el, ...spot } of knuckles) up(el, spot);
    clock.at += 10;
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it('ends after its 6 mm', () => {
    const { onPress, main } = bench();
    tap(main, { clientX: 840, clientY: 500 });
    expect(onPress).not.toHaveBeenCalled();
  });

  it('is no way through what lies over it', () => {
    const { onPress, setSheet } = bench();
    setSheet(true);
    tap(screen.getByTestId('sheet'), { clientX: 850, clientY: 500 });
    expect(onPress).not.toHaveBeenCalled();
  });
});

describe('the focus', () => {
  it('comes to the slab at a new act, for hands on a keyboard', () => {
    const { slab, setLabel } = bench();
    fireEvent.keyDown(document.body, { key: 'Tab' });
    setLabel('It’s ready');
    expect(document.activeElement).toBe(slab);
  });

  it('is left alone by touch', () => {
    const { slab, main, setLabel } = bench();
    fireEvent.keyDown(document.body, { key: 'Tab' });
    tap(main, { clientX: 10, clientY: 10 });
    setLabel('It’s ready');
    expect(document.activeElement).not.toBe(slab);
  });

  it('comes to a gate that takes the slab’s place', async () => {
    vi.useFakeTimers();
    const [gated, setGated] = createSignal(false);
    const Late = lazy(() =>
      Promise.resolve({
        default: () => <HoldSlab label="Hold to open" holding="Keep holding" onHeld={() => {}} />,
      }),
    );
    render(() => (
      <PressGround now={() => 50_000}>
        <Show when={!gated()} fallback={<Late />}>
          <Slab label="That’s done" onPress={() => {}} />
        </Show>
      </PressGround>
    ));
    fireEvent.keyDown(document.body, { key: 'Enter' });
    setGated(true);
    await vi.advanceTimersByTimeAsync(100);
    expect(document.activeElement).toBe(screen.getByRole('button', { name: 'Hold to open' }));
    vi.useRealTimers();
  });

  it('stays in a dialog', () => {
    const { slab, setSheet, setLabel } = bench();
    fireEvent.keyDown(document.body, { key: 'Tab' });
    setSheet(true);
    setLabel('It’s ready');
    expect(document.activeElement).not.toBe(slab);
  });
});

it('types digits wherever the focus is', () => {
  const onTyped = vi.fn();
  render(() => (
    <NumberPad label="Dough" unit="°C" words={{ point: '.', clear: 'Clear' }} onTyped={onTyped} />
  ));
  for (const key of ['2', '4', '.', '5']) fireEvent.keyDown(document.body, { key });
  expect(onTyped).toHaveBeenLastCalledWith(24.5);
});
