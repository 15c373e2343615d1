import { Show, type JSX } from 'solid-js';
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
