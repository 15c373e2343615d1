import { fireEvent, render } from '@solidjs/testing-library';
import { createSignal, Show } from 'solid-js';
import { expect, it, vi } from 'vitest';
import { Control } from '../../../src/parts/Control.tsx';
import { PressGround } from '../../../src/parts/PressGround.tsx';

it('keeps the click that a browser makes of a touch from pressing what has moved under it', () => {
  let now = 0;
  const under = vi.fn();
  const [moved, setMoved] = createSignal(false);
  const { getByText } = render(() => (
    <PressGround now={() => now}>
      <Control label="First" onPress={() => setMoved(true)} />
      <Show when={moved()}>
        <Control label="Under" onPress={under} />
      </Show>
      <Control label="Beside" onPress={under} />
    </PressGround>
  ));
  now = 1000;
  const touch = { pointerId: 1, button: 0, clientX: 0, clientY: 0 };
  fireEvent.pointerDown(getByText('First'), touch);
  fireEvent.pointerUp(getByText('First'), touch);
  expect(moved()).toBe(true);
  now = 1700;
  fireEvent.click(getByText('Beside'));
  expect(under).not.toHaveBeenCalled();
  // Without a touch before it a click is a switch's or a screen reader's, and counts.
  now = 4000;
  fireEvent.click(getByText('Beside'));
  expect(under).toHaveBeenCalledTimes(1);
});
