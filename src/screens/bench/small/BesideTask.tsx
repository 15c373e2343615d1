import { createMemo, type JSX } from 'solid-js';
import { smallWords } from '../../../core/small/small-words.ts';
import type { BakeStage, OvenStage } from '../../../core/records/stage.ts';
import type { Task } from '../../../core/records/task.ts';
import { sketchOf } from '../../../core/sketches/of-stage.ts';
import { Sketch } from '../../../parts/Sketch.tsx';
import type { House } from '../../house.ts';
import type { BenchView } from '../view.ts';
import { ChildTask, Praise } from './ChildTask.tsx';
import './BesideTask.css';

/** The child's own task beside what is the baker's: a question, a reading, a weight, something hot. */
export default function BesideTask(props: {
  readonly house: House;
  readonly view: BenchView;
}): JSX.Element {
  const step = () => props.view.stage as BakeStage | OvenStage;
  const asked = () => props.view.task as Task | null;
  const task = createMemo((): string => {
    const { small } = props.house.ways();
    return small === 'off' ? '' : smallWords(small, asked() ?? step()).task;
  });
  return (
    <div class="small-beside">
      <Praise house={props.house} view={props.view} />
      {/* As large as the baker's words leave room for it, and none where they leave little. */}
      <div class="small-picture">
        <Sketch name={sketchOf(step(), asked())} />
      </div>
      <ChildTask house={props.house} told={{ task: task(), mark: null }} />
    </div>
  );
}
