import type { JSX } from 'solid-js';
import { Pressable } from './Pressable.tsx';
import './Stepper.css';

export interface StepperProps {
  readonly label: string;
  readonly value: number;
  /** The value in words, where it is no count. */
  readonly shown?: string | undefined;
  /** What one press changes; 1 unless given. */
  readonly step?: number | undefined;
  readonly least: number;
  readonly most: number;
  readonly fewer: string;
  readonly more: string;
  readonly onChange: (value: number) => void;
}

/** A count, or whatever moves in steps, by single presses. */
export function Stepper(props: StepperProps): JSX.Element {
  return (
    <div class="stepper" role="group" aria-label={props.label}>
      <Pressable
        class="key"
        quick
        name={props.fewer}
        disabled={props.value <= props.least}
        onPress={() => props.onChange(props.value - (props.step ?? 1))}
      >
        −
      </Pressable>
      <output class="stepper-value">{props.shown ?? props.value}</output>
      <Pressable
        class="key"
        quick
        name={props.more}
        disabled={props.value >= props.most}
        onPress={() => props.onChange(props.value + (props.step ?? 1))}
      >
        +
      </Pressable>
    </div>
  );
}
