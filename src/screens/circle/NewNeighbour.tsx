import type { JSX } from 'solid-js';
import { NAME_LETTERS } from '../../core/circle/name.ts';
import { ownName } from '../../core/circle/neighbours.ts';
import { put } from '../../core/circle/row.ts';
import { neighbourWords } from '../../core/speech/words/circle.ts';
import { alreadyTold } from './already-told.ts';
import type { FaceProps } from './face.ts';
import { CirclePage } from './CirclePage.tsx';
import { TextFace } from '../TextFace.tsx';
import { written } from './written.ts';

/** Somebody more who has bread. */
export function NewNeighbour(props: FaceProps): JSX.Element {
  const add = async (typed: string): Promise<void> => {
    const name = ownName(props.circle.circle(), typed);
    if (name === '') return;
    const thing = { id: props.circle.freshId(), name, watch: [] };
    const deed = props.circle.write({ puts: [put('neighbours', thing)] });
    if (await written(props.house, deed)) props.onBack();
  };
  return (
    <TextFace
      page={CirclePage}
      ask={neighbourWords.nameAsk}
      detail={neighbourWords.nameDetail}
      begun=""
      lines="one"
      most={NAME_LETTERS}
      blank={false}
      back={neighbourWords.title}
      care={(typed) => alreadyTold(props, typed, null)}
      onTake={(name) => void add(name)}
      onBack={() => props.onBack()}
    />
  );
}
