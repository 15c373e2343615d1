import { Show, type JSX } from 'solid-js';
import { BakeMark } from './BakeMark.tsx';
import { durationAttribute, runningText } from './running.ts';
import { unbroken } from './unbroken.ts';
import './Countdown.css';

export interface CountdownProps {
  /** Above the number: where the bake stands, "Bulk, fold 2 of 2". */
  readonly name?: string | undefined;
  /** After the name, left out in bigger words: where that bake stands. */
  readonly where?: string | undefined;
  /** The bake's mark before the name, where more than one runs. */
  readonly mark?: number | undefined;
  /** Beside the number: "to the next look". */
  readonly label: string;
  /** In place of `label` once the deadline is past: "past the lid". */
  readonly labelPast?: string | undefined;
  /** The clock time it ends at, in words: "at 13:25". */
  readonly ends?: string | undefined;
  /** Both in kitchen time, milliseconds. */
  readonly deadline: number;
  readonly now: number;
  /** One press beside it that cuts the wait short. */
  readonly children?: JSX.Element;
}

/** The one running time of the screen, to be read from two metres. It holds no clock of its own. */
export function Countdown(props: CountdownProps): JSX.Element {
  const left = (): number => props.deadline - props.now;
  return (
    <div class="times countdown">
      <div class="times-words">
        <Show when={props.name}>
          {(name) => (
            <p class="times-name">
              <Show when={props.mark}>{(mark) => <BakeMark mark={mark()} />}</Show>
              <span>
                {unbroken(name())}
                <Show when={props.where}>
                  {(where) => <span class="times-where">{unbroken(where())}</span>}
                </Show>
              </span>
            </p>
          )}
        </Show>
        <p class="times-row" role="timer" data-past={left() < 0 ? '' : undefined}>
          <time class="times-number" datetime={durationAttribute(left())}>
            {runningText(left())}
          </time>{' '}
          <span class="times-label">
            {left() < 0 ? (props.labelPast ?? props.label) : props.label}
            <Show when={props.ends}>
              {(ends) => <span class="times-ends"> {unbroken(ends())}</span>}
            </Show>
          </span>
        </p>
      </div>
      {props.children}
    </div>
  );
}
