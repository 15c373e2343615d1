import { createMemo, type JSX } from 'solid-js';
import { smallWords } from '../../../core/small/small-words.ts';
import type { BakeStage, OvenStage } from '../../../core/records/stage.ts';
import type { Task } from '../../../core/records/task.ts';
import type { House } from '../../house.ts';
import type { BenchView } from '../view.ts';
import { ChildTask } from './ChildTask.tsx';

/** The child's own task beside what is the baker's: a question, a reading, a weight, something hot. */
export default function BesideTask(props: {
  readonly house: House;
  readonly view: BenchView;
}): JSX.Element {
  const task = createMemo((): string => {
    const { small } = props.house.ways();
    const step = (props.view.task ?? props.view.stage) as BakeStage | OvenStage | Task;
    return small === 'off' ? '' : smallWords(small, step).task;
  });
  return (
    <ChildTask
      house={props.house}
      view={props.view}
      told={{ task: task(), raw: false, mark: null }}
    />
  );
}
