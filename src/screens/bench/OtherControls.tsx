import { For, type JSX } from 'solid-js';
import { bakeMarks } from '../../core/records/bake-marks.ts';
import { running } from '../../core/speech/words/running.ts';
import { fill } from '../../core/speech/fill.ts';
import { BakeMark } from '../../parts/BakeMark.tsx';
import { Control } from '../../parts/Control.tsx';
import type { House } from '../house.ts';
import { othersOf } from '../others.ts';

/** All other bakes that run, a press to each. */
export function OtherControls(props: {
  readonly house: House;
  readonly bake: string;
  readonly onBake: (id: string) => void;
}): JSX.Element {
  const others = () =>
    othersOf(props.house.kitchen(), props.bake, bakeMarks(props.house.records()), (at) =>
      props.house.hour(at),
    );
  return (
    <For each={others()}>
      {(other) => (
        <Control
          label={fill(running.line, { name: other.name, stage: other.stage })}
          picture={<BakeMark mark={other.mark} />}
          onPress={() => props.onBake(other.id)}
        />
      )}
    </For>
  );
}
