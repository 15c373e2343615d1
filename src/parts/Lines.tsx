import { For, type JSX } from 'solid-js';
import { unbroken } from './unbroken.ts';
import './Lines.css';

export interface LinesProps {
  readonly label: string;
  readonly lines: readonly {
    readonly label: string;
    readonly state: 'done' | 'now' | 'next' | 'told';
  }[];
}

/** What is weighed, line by line: ticked when it is in, the present one pointed at; or what is only told. */
export function Lines(props: LinesProps): JSX.Element {
  return (
    <ul class="lines" aria-label={props.label}>
      <For each={props.lines}>
        {(line) => (
          <li data-state={line.state} aria-current={line.state === 'now' ? 'step' : undefined}>
            <i class="lines-mark" aria-hidden="true" />
            <span>{unbroken(line.label)}</span>
          </li>
        )}
      </For>
    </ul>
  );
}
