import { createSignal, type JSX } from 'solid-js';
import { ingredientKey } from '../../../core/circle/ingredient-key.ts';
import { splitParts } from '../../../core/circle/label/split-parts.ts';
import { put } from '../../../core/circle/row.ts';
import { bench } from '../../../core/speech/words/bench.ts';
import { labelPage as words } from '../../../core/speech/words/label.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { HouseCircle } from '../../house-circle.ts';
import type { House } from '../../house.ts';
import { CirclePage } from '../CirclePage.tsx';
import { written } from '../written.ts';
import '../../TextFace.css';

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
  const [text, setText] = createSignal((known()?.madeOf ?? []).join(', '));
  const ask = () => fill(words.madeOfAsk, { name: props.name });
  const take = async (madeOf: readonly string[]): Promise<void> => {
    const thing = {
      ...(known() ?? { id: id(), name: props.name, pack: null, counted: null }),
      madeOf,
    };
    const deed = props.circle.write({ puts: [put('ingredients', thing)] });
    if (await written(props.house, deed)) props.onBack();
  };
  return (
    <CirclePage
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={ask()} detail={words.madeOfDetail}>
          <textarea
            class="typed-text"
            aria-label={ask()}
            maxlength={MOST}
            value={text()}
            onInput={(e) => setText(e.currentTarget.value)}
          />
        </Words>
      }
      slab={
        <Slab
          label={bench.thatsIt}
          then={props.back}
          fresh={ask()}
          disabled={splitParts(text()).length === 0}
          onPress={() => void take(splitParts(text()))}
        />
      }
      controls={
        <>
          <Control label={props.back} onPress={() => props.onBack()} />
          <Control
            label={words.justItself}
            chosen={known()?.madeOf?.length === 0}
            onPress={() => void take([])}
          />
        </>
      }
    />
  );
}
