import { createMemo, For, type JSX } from 'solid-js';
import { circle as words, neighbourWords } from '../../core/speech/en/circle.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import { CirclePage } from './CirclePage.tsx';
import type { FaceProps } from './face.ts';

/** Those who have bread, by their names. */
export function NeighboursFace(props: FaceProps): JSX.Element {
  const neighbours = createMemo(() =>
    props.circle.circle().neighbours.toSorted((a, b) => a.name.localeCompare(b.name)),
  );
  return (
    <CirclePage
      wide
      back={words.title}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={neighbourWords.title}
          detail={neighbours().length === 0 ? neighbourWords.none : undefined}
        >
          <ul class="circle-grid circle-top">
            <For each={neighbours()}>{({ name }) => <li class="act-detail">{name}</li>}</For>
          </ul>
        </Words>
      }
      controls={
        <Control label={neighbourWords.add} onPress={() => props.onOpen({ at: 'new neighbour' })} />
      }
    />
  );
}
