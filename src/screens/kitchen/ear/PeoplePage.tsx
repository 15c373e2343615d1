import { For, type JSX } from 'solid-js';
import { knownIn, ROUNDS } from '../../../core/ear/known.ts';
import { HAND_MARKS } from '../../../core/small/marks.ts';
import { earKitchen, earPeople as words } from '../../../core/speech/words/ear-kitchen.ts';
import { handMarks } from '../../../core/speech/words/small.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { HandMark } from '../../../parts/HandMark.tsx';
import { Words } from '../../../parts/Words.tsx';
import { KitchenPage } from '../../KitchenPage.tsx';
import { engineOf, type EarFaceProps } from './face.ts';

/** Whose voices are known, each by its mark. */
export function PeoplePage(props: EarFaceProps): JSX.Element {
  const people = () => props.ear.people();
  const isFull = (): boolean =>
    HAND_MARKS.every((mark) => people().some((one) => one.mark === mark));
  const detail = (): string => {
    if (people().length === 0) return words.nobodyDetail;
    return isFull() ? words.most : words.detail;
  };
  return (
    <KitchenPage
      back={earKitchen.title}
      onBack={() => props.onBack()}
      words={
        <Words headline={words.title} detail={detail()}>
          <div class="kitchen-grid">
            <For each={people()}>
              {(person) => (
                <Control
                  picture={<HandMark mark={person.mark} />}
                  label={handMarks[person.mark]}
                  value={fill(words.of, {
                    done: knownIn(person, 'phrases', engineOf(props.house)).length,
                    of: ROUNDS.phrases.length,
                  })}
                  fresh={person.id}
                  onPress={() => props.onOpen({ at: 'person', id: person.id })}
                />
              )}
            </For>
          </div>
        </Words>
      }
      controls={
        <Control
          label={words.add}
          disabled={isFull()}
          onPress={() => props.onOpen({ at: 'new' })}
        />
      }
    />
  );
}
