import { Show, type JSX } from 'solid-js';
import { cupboard } from '../../../core/speech/words/cupboard.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';

/** A list's name with the page that is shown, where there are several. */
export const pagedName = (
  name: string,
  { at, pages }: { readonly at: number; readonly pages: number },
) => (pages > 1 ? fill(cupboard.page, { name, n: at + 1, count: pages }) : name);

/** So many stand on a page: two rows of three, or three of two. */
export const PAGE = 6;

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
