import { createEffect, on, type Accessor } from 'solid-js';
import type { PressRoom } from './room.ts';

/**
 * For hands on a keyboard the focus comes to `el` when it appears and whenever `fresh` changes. A touch
 * moves no focus, and a dialog laid over the page keeps it. Call it inside a component.
 */
export function followFocus(el: HTMLElement, room: PressRoom, fresh?: Accessor<unknown>): void {
  createEffect(
    on(
      () => fresh?.(),
      () => {
        if (!room.keyed()) return;
        const come = (): void => {
          const dialog = el.ownerDocument.querySelector('[aria-modal="true"]');
          if (!dialog || dialog.contains(el)) el.focus();
        };
        // What came late (a gate's first time) is told before it stands on the page.
        if (el.isConnected) come();
        else setTimeout(come);
      },
    ),
  );
}
