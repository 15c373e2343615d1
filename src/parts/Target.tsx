import type { JSX } from 'solid-js';
import { unbroken } from './unbroken.ts';
import './Countdown.css';
import './Target.css';

export interface TargetProps {
  /** The number to hit, with its unit: "31 °C". */
  readonly value: string;
  /** What it is of: "water, for dough at 25 °C". */
  readonly label: string;
  /** How wide the doubt is; left out where there is none. */
  readonly range?: string | undefined;
  /** One press that says why. */
  readonly children?: JSX.Element;
}

/** A number to hit, where the running time else stands: to be read from two metres. */
export function Target(props: TargetProps): JSX.Element {
  return (
    <div class="times target">
      <p class="times-row">
        <b class="times-number">{unbroken(props.value)}</b>{' '}
        <span class="times-label">
          {unbroken(props.label)}
          {props.range && <span class="times-ends"> {unbroken(props.range)}</span>}
        </span>
      </p>
      {props.children}
    </div>
  );
}
