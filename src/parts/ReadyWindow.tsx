import { Show, type JSX } from 'solid-js';
import './ReadyWindow.css';

export interface ReadyWindowProps {
  /** Instants, ms. No `likely` where no one hour may be named (the fridge). */
  readonly earliest: number;
  readonly likely: number | null;
  readonly latest: number;
  readonly now: number;
  /** 'HH:MM' of an instant. */
  readonly hour: (at: number) => string;
  readonly words: {
    readonly now: string;
    readonly earliest: string;
    readonly likely: string;
    readonly latest: string;
    /** The whole of it in a sentence, for ears. */
    readonly alt: string;
  };
}

/** A span with its doubt, never one minute: earliest, likely, latest, and where now stands. */
export function ReadyWindow(props: ReadyWindowProps): JSX.Element {
  const from = (): number => Math.min(props.now, props.earliest);
  const to = (): number => Math.max(props.now, props.latest);
  const place = (at: number): string => `${(100 * (at - from())) / Math.max(1, to() - from())}%`;
  return (
    <figure class="window" role="img" aria-label={props.words.alt}>
      <div class="window-line" aria-hidden="true">
        <i
          class="window-span"
          style={{
            '--from': place(props.earliest),
            '--to': `calc(100% - ${place(props.latest)})`,
          }}
        />
        <Show when={props.likely}>
          {(likely) => <i class="window-likely" style={{ '--at': place(likely()) }} />}
        </Show>
        <i class="window-now" style={{ '--at': place(props.now) }} />
      </div>
      <dl class="window-hours">
        <div>
          <dt class="unseen">{props.words.earliest}</dt>
          <dd>{props.hour(props.earliest)}</dd>
        </div>
        <Show when={props.likely}>
          {(likely) => (
            <div class="window-middle">
              <dt>{props.words.likely}</dt>
              <dd>{props.hour(likely())}</dd>
            </div>
          )}
        </Show>
        <div>
          <dt class="unseen">{props.words.latest}</dt>
          <dd>{props.hour(props.latest)}</dd>
        </div>
      </dl>
    </figure>
  );
}
