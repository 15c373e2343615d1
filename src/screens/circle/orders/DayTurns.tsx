import type { JSX } from 'solid-js';
import type { DayKey } from '../../../core/circle/day-key.ts';
import { doughPage } from '../../../core/speech/en/circle-dough.ts';
import { roomPage } from '../../../core/speech/en/circle-oven.ts';
import { shopping } from '../../../core/speech/en/cupboard.ts';
import { handOver } from '../../../core/speech/en/hand-over.ts';
import { labelPage } from '../../../core/speech/en/label.ts';
import { showDay } from '../../../core/speech/show-day.ts';
import { Control } from '../../../parts/Control.tsx';
import type { FaceProps } from '../face.ts';

/** Presses on a bake day's page to what else is done with it. */
export function DayTurns(props: Pick<FaceProps, 'onOpen'> & { readonly day: DayKey }): JSX.Element {
  return (
    <>
      <Control
        label={doughPage.title}
        onPress={() => props.onOpen({ at: 'dough', day: props.day })}
      />
      <Control
        label={handOver.open}
        onPress={() => props.onOpen({ at: 'hand over', day: props.day, from: showDay(props.day) })}
      />
      <Control
        label={shopping.title}
        onPress={() => props.onOpen({ at: 'shopping', day: props.day })}
      />
      <Control
        label={roomPage.title}
        onPress={() => props.onOpen({ at: 'room', day: props.day, from: showDay(props.day) })}
      />
      <Control
        label={labelPage.title}
        onPress={() => props.onOpen({ at: 'labels', day: props.day })}
      />
    </>
  );
}
