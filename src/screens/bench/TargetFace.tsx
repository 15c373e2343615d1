import type { JSX } from 'solid-js';
import { controls } from '../../core/speech/en/controls.ts';
import { Control } from '../../parts/Control.tsx';
import { Target } from '../../parts/Target.tsx';
import type { BenchView } from './view.ts';

/** The number to hit, and the one press that says what it rests on. */
export function TargetFace(props: {
  readonly target: NonNullable<BenchView['target']>;
  readonly onWhy: () => void;
}): JSX.Element {
  return (
    <Target
      value={props.target.value}
      label={props.target.label}
      range={props.target.range ?? undefined}
    >
      <Control label={controls.whyThis} onPress={() => props.onWhy()} />
    </Target>
  );
}
