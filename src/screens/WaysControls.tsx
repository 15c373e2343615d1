import { createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import { ways } from '../core/speech/words/ways.ts';
import { Control } from '../parts/Control.tsx';
import type { House } from './house.ts';

const WaysPage = lazy(() => import('./WaysPage.tsx'));

/** The way to everything about how things are shown, behind one press. */
export function WaysControls(props: { readonly house: House }): JSX.Element {
  const [open, setOpen] = createSignal(false);
  return (
    <>
      <Control label={ways.title} onPress={() => setOpen(true)} />
      <Suspense>
        <Show when={open()}>
          <WaysPage house={props.house} onClose={() => setOpen(false)} />
        </Show>
      </Suspense>
    </>
  );
}
