import { onCleanup, onMount, Show, type JSX } from 'solid-js';
import { Control } from './Control.tsx';
import { unbroken } from './unbroken.ts';
import './Notice.css';

export interface NoticeProps {
  /** What happened and what to do. */
  readonly text: string;
  readonly action?: { readonly label: string; readonly press: () => void } | null | undefined;
}

/** A sentence that stays until it is dealt with, and at most one press that does. */
export function Notice(props: NoticeProps): JSX.Element {
  return (
    <div class="notice" role="alert">
      <p>{unbroken(props.text)}</p>
      <Show when={props.action}>
        {(action) => <Control label={action().label} onPress={() => action().press()} />}
      </Show>
    </div>
  );
}

/** All there is to tell. What stands under it makes room: `--notices` on the root is its height. */
export function Notices(props: { readonly children: JSX.Element }): JSX.Element {
  let box!: HTMLDivElement;
  const root = document.documentElement;
  const measure = (): void => {
    if (box.childElementCount === 0) root.style.removeProperty('--notices');
    else root.style.setProperty('--notices', `${box.offsetHeight}px`);
  };
  const observer = typeof ResizeObserver === 'undefined' ? null : new ResizeObserver(measure);
  onMount(() => observer?.observe(box));
  onCleanup(() => {
    observer?.disconnect();
    root.style.removeProperty('--notices');
  });
  return (
    <div class="notices" ref={box}>
      {props.children}
    </div>
  );
}
