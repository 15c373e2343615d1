import type { JSX } from 'solid-js';
import { controls } from '../../core/speech/words/controls.ts';
import { feed } from '../../core/speech/words/feed.ts';
import { Control } from '../../parts/Control.tsx';
import { Target } from '../../parts/Target.tsx';
import type { BenchView } from './view.ts';

/** The number to hit, and the one press that says what it rests on, or chooses another. */
export function TargetFace(props: {
  readonly target: NonNullable<BenchView['target']>;
  readonly onOpen: (page: { readonly at: 'why' | 'feedHour' }) => void;
}): JSX.Element {
  return (
    <Target
      value={props.target.value}
      label={props.target.label}
      range={props.target.range ?? undefined}
    >
      <Control
        label={props.target.opens === 'why' ? controls.whyThis : feed.another}
        onPress={() => props.onOpen({ at: props.target.opens })}
      />
    </Target>
  );
}
