import type { JSX } from 'solid-js';
import { ingredientKey } from '../../../core/circle/ingredient-key.ts';
import { splitParts } from '../../../core/circle/label/split-parts.ts';
import { put } from '../../../core/circle/row.ts';
import { labelPage as words } from '../../../core/speech/words/label.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showPart } from '../../../core/speech/show-part.ts';
import type { HouseCircle } from '../../house-circle.ts';
import type { House } from '../../house.ts';
import { TextFace } from '../../TextFace.tsx';
import { CirclePage } from '../CirclePage.tsx';
import { written } from '../written.ts';

/** Letters of a packet's list. */
const MOST = 2000;

/** What one thing is made of by its packet, or that it is nothing but itself. */
export function MadeOfFace(props: {
  readonly house: House;
  readonly circle: HouseCircle;
  /** As the formula has it. */
  readonly name: string;
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  const id = () => ingredientKey(props.name);
  const known = () => props.circle.circle().ingredients.find((one) => one.id === id()) ?? null;
  const take = async (madeOf: readonly string[]): Promise<void> => {
    const thing = {
      ...(known() ?? { id: id(), name: props.name, pack: null, counted: null }),
      madeOf,
    };
    const deed = props.circle.write({ puts: [put('ingredients', thing)] });
    if (await written(props.house, deed)) props.onBack();
  };
  return (
    <TextFace
      page={CirclePage}
      ask={fill(words.madeOfAsk, { name: showPart(props.name) })}
      detail={words.madeOfDetail}
      begun={(known()?.madeOf ?? []).join(', ')}
      lines="many"
      most={MOST}
      blank={false}
      answers={(text) => splitParts(text).length > 0}
      wordless={{
        label: words.justItself,
        chosen: known()?.madeOf?.length === 0,
        onPress: () => void take([]),
      }}
      back={props.back}
      onTake={(text) => void take(splitParts(text))}
      onBack={() => props.onBack()}
    />
  );
}
