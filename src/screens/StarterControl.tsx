import { createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import { starterWords as words } from '../core/speech/words/starter.ts';
import { Control } from '../parts/Control.tsx';
import type { House } from './house.ts';

const StarterSheet = lazy(() => import('./StarterSheet.tsx'));

/** The starter that has called, beside the bakes: one press leads to its feed. */
export function StarterControl(props: { readonly house: House }): JSX.Element {
  const [open, setOpen] = createSignal(false);
  return (
    <>
      <Control label={words.call.name} value={words.beside} onPress={() => setOpen(true)} />
      <Suspense>
        <Show when={open()}>
          <StarterSheet house={props.house} onClose={() => setOpen(false)} />
        </Show>
      </Suspense>
    </>
  );
}
