import { Show, type JSX } from 'solid-js';
import { cupboard } from '../../../core/speech/en/cupboard.ts';
import { Control } from '../../../parts/Control.tsx';

/** Through the pages of a long list; nothing where there is one. */
export function PageControls(props: {
  readonly at: number;
  readonly pages: number;
  readonly onPage: (at: number) => void;
}): JSX.Element {
  return (
    <Show when={props.pages > 1}>
      <Control
        label={cupboard.pageBefore}
        disabled={props.at === 0}
        onPress={() => props.onPage(props.at - 1)}
      />
      <Control
        label={cupboard.nextPage}
        disabled={props.at === props.pages - 1}
        onPress={() => props.onPage(props.at + 1)}
      />
    </Show>
  );
}
