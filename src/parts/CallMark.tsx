import { Match, Switch, type JSX } from 'solid-js';
import './CallMark.css';

export interface CallMarkProps {
  readonly kind: 'look' | 'act' | 'hot';
  /** The call's own word: it is told by word, shape and rhythm, never by colour alone. */
  readonly word: string;
}

/** A ring to look, a square to act, a steaming diamond for hot. */
export function CallMark(props: CallMarkProps): JSX.Element {
  return (
    <p class="call" data-kind={props.kind}>
      <svg viewBox="0 0 40 40" aria-hidden="true">
        <Switch>
          <Match when={props.kind === 'look'}>
            <circle cx="20" cy="20" r="15" fill="none" stroke="currentColor" stroke-width="5" />
          </Match>
          <Match when={props.kind === 'act'}>
            <path d="M5 5h30v30H5z" fill="currentColor" />
          </Match>
          <Match when={props.kind === 'hot'}>
            <path
              d="M20 2 38 20 20 38 2 20z"
              fill="none"
              stroke="currentColor"
              stroke-width="3.4"
            />
            <path
              d="M14 27c-2-4 2-6 0-13M20 28c-2-4 2-8 0-16M26 27c-2-4 2-6 0-13"
              fill="none"
              stroke="currentColor"
              stroke-width="2.6"
              stroke-linecap="round"
            />
          </Match>
        </Switch>
      </svg>
      <span>{props.word}</span>
    </p>
  );
}
