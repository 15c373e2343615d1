import { createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import type { House } from './house.ts';

const ReadAnswer = lazy(() => import('./ReadAnswer.tsx'));

/** What stands behind something to read while small hands help, and is simply there while they do not. */
export function AdultOnly(props: {
  readonly house: House;
  readonly onBack: () => void;
  readonly children: JSX.Element;
}): JSX.Element {
  const [open, setOpen] = createSignal(false);
  return (
    <Show
      when={props.house.ways().small === 'off' || open()}
      fallback={
        <Suspense>
          <ReadAnswer
            house={props.house}
            onRight={() => setOpen(true)}
            onBack={() => props.onBack()}
          />
        </Suspense>
      }
    >
      {props.children}
    </Show>
  );
}
