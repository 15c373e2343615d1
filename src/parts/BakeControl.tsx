import { Show, type JSX } from 'solid-js';
import { BakeMark } from './BakeMark.tsx';
import { Pressable } from './Pressable.tsx';
import { softWords } from './soft-words.ts';
import './BakeControl.css';

export interface BakeControlProps {
  /** The mark's number, from 1. */
  readonly mark: number;
  readonly name: string;
  /** What it waits for, in one or two words. */
  readonly waits: string;
  /** A clock time, or how long it has been called for; null where no clock runs. */
  readonly time: string | null;
  /** Its call stands: the frame is heavy. */
  readonly late: boolean;
  /** All of it for ears. */
  readonly label: string;
  readonly onPress: () => void;
}

/** Another running bake: its mark, to be read from 2 m, its clock time, and one press that goes to it. */
export function BakeControl(props: BakeControlProps): JSX.Element {
  return (
    <div class="bake-control" data-late={props.late ? '' : undefined}>
      <Pressable
        class="control bake-press"
        fresh={`${props.mark} ${props.name}`}
        name={props.label}
        onPress={() => props.onPress()}
      >
        <BakeMark mark={props.mark} />
        <Show when={props.time} fallback={<span class="bake-time" />}>
          {(time) => <span class="bake-time">{time()}</span>}
        </Show>{' '}
        <span class="bake-name">{softWords(props.name)}</span>{' '}
        <span class="bake-waits">{softWords(props.waits)}</span>
      </Pressable>
    </div>
  );
}
