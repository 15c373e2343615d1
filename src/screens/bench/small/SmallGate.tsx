import { createMemo, Show, type JSX } from 'solid-js';
import { gate, gateHazards, type Gated } from '../../../core/speech/words/gate.ts';
import { smallWords } from '../../../core/small/small-words.ts';
import type { BakeStage, OvenStage } from '../../../core/records/stage.ts';
import { small } from '../../../core/speech/words/small.ts';
import { Sketch } from '../../../parts/Sketch.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import type { House, Ways } from '../../house.ts';
import type { BenchView } from '../view.ts';
import { ChildTask, Praise } from './ChildTask.tsx';
import './paper.css';
import './SmallFace.css';
import './SmallPlaces.css';

/** The gate as a child sees it: who does it, where they stand, and what they do meanwhile. */
export default function SmallGate(props: {
  readonly house: House;
  readonly view: BenchView;
  readonly ages: Exclude<Ways['small'], 'off'>;
}): JSX.Element {
  const words = createMemo(() => smallWords(props.ages, props.view.stage as BakeStage | OvenStage));
  return (
    <div class="act paper small" data-shows="gate">
      <Praise house={props.house} view={props.view} />
      <div class="small-picture">
        <Sketch name="standBack" />
      </div>
      <div class="small-words">
        <h1 class="act-headline">{unbroken(gate.grownUp)}</h1>
        <p class="act-detail small-stand">{gate.standBack}</p>
      </div>
      <ChildTask house={props.house} told={{ task: words().task, mark: null }} />
      <p class="small-care act-heed barred">
        {gateHazards[props.view.hazard as Gated]}. {gate.ring}
      </p>
      <p class="small-baker">
        <b>{props.view.whose ?? small.baker}</b> {unbroken(props.view.headline)}
        <Show when={props.view.care}>{(care) => <>. {unbroken(care())}</>}</Show>
      </p>
    </div>
  );
}
