import { For, type JSX } from 'solid-js';
import { Control } from './Control.tsx';
import { unbroken } from './unbroken.ts';
import './ReturnCard.css';

export interface ReturnCardProps {
  readonly title: string;
  /** At most three: overdue first, last done, next. */
  readonly lines: readonly string[];
  readonly close: string;
  readonly onClose: () => void;
}

/** After more than 30 s away. It lies over the words and moves nothing; it goes only when read. */
export function ReturnCard(props: ReturnCardProps): JSX.Element {
  // The card takes the focus away with it: it goes to the slab, as at a new act.
  const close = (): void => {
    // By then the page may be gone, and its name with it.
    const page = document;
    props.onClose();
    setTimeout(() => {
      if (page.activeElement === page.body) page.querySelector<HTMLElement>('.slab')?.focus();
    });
  };
  return (
    <section class="return" aria-label={props.title}>
      <h2>{props.title}</h2>
      <ul>
        <For each={props.lines}>{(line) => <li>{unbroken(line)}</li>}</For>
      </ul>
      <Control label={props.close} onPress={close} />
    </section>
  );
}
