import { createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import { leapt } from '../core/speech/words/leapt.ts';
import { fill } from '../core/speech/fill.ts';
import { Control } from '../parts/Control.tsx';
import type { House, Leaps } from './house.ts';
import { leapDue } from './leap-due.ts';
import { leapLength } from './LeapNotice.tsx';

const LeapSheet = lazy(() => import('./LeapSheet.tsx'));

/** The leap of the clock beside a running bake: one press leads to how far, and what it means. */
export function LeapControl(props: { readonly house: House }): JSX.Element {
  const [open, setOpen] = createSignal<keyof Leaps | null>(null);
  return (
    <>
      <Show when={leapDue(props.house)} keyed>
        {(which) => {
          const by = (): number => props.house.leaps()[which]?.by ?? 0;
          return (
            <>
              <Control
                label={leapt.beside[which]}
                fresh={`leap ${which}`}
                onPress={() => setOpen(which)}
              />
              <p class="unseen" role="alert">
                {fill(leapt[which], leapLength(by()))}
              </p>
            </>
          );
        }}
      </Show>
      <Suspense>
        <Show when={open()}>
          {(which) => (
            <LeapSheet house={props.house} which={which()} onClose={() => setOpen(null)} />
          )}
        </Show>
      </Suspense>
    </>
  );
}
