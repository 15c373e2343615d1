import { Show, type JSX } from 'solid-js';
import { controls } from '../../../core/speech/words/controls.ts';
import { Control } from '../../../parts/Control.tsx';
import type { FaceProps } from '../face.ts';
import { written } from '../written.ts';

/** The last change of the circle is taken back, whatever it was. */
export function TakeBack(props: Pick<FaceProps, 'house' | 'circle'>): JSX.Element {
  return (
    <Show when={props.circle.canTakeBack()}>
      <Control
        label={controls.takeBack}
        does="takeBack"
        onPress={() => void written(props.house, props.circle.takeBack())}
      />
    </Show>
  );
}
