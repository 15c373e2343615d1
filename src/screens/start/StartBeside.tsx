import { Show, type JSX } from 'solid-js';
import { lessonPage } from '../../core/speech/words/lesson-page.ts';
import { Control } from '../../parts/Control.tsx';
import type { House } from '../house.ts';
import { OtherBakes } from '../OtherBakes.tsx';
import type { Other } from '../others.ts';

/** Running bakes; where nothing was ever baked here, the way into a first loaf. */
export function StartBeside(props: {
  readonly house: House;
  readonly running: readonly Other[];
  readonly onBake: (id: string) => void;
  readonly onFirstLoaf: () => void;
}): JSX.Element {
  return (
    <Show
      when={props.running.length > 0}
      fallback={
        <Control
          label={lessonPage.first}
          chosen={props.house.ways().learner === 'on'}
          onPress={() => props.onFirstLoaf()}
        />
      }
    >
      <OtherBakes house={props.house} others={props.running} onBake={(id) => props.onBake(id)} />
    </Show>
  );
}
