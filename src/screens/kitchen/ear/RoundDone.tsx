import { Show, type JSX } from 'solid-js';
import { nextToSay, type Round } from '../../../core/ear/known.ts';
import { earTakes as words, earTry } from '../../../core/speech/words/ear-kitchen.ts';
import { handMarks } from '../../../core/speech/words/small.ts';
import { Control } from '../../../parts/Control.tsx';
import { HandMark } from '../../../parts/HandMark.tsx';
import { Words } from '../../../parts/Words.tsx';
import { KitchenPage } from '../../KitchenPage.tsx';
import { engineOf, type EarFaceProps } from './face.ts';

/** A round is through: what may come next, or later. */
export function RoundDone(
  props: EarFaceProps & { readonly id: string; readonly round: Round },
): JSX.Element {
  const person = () => props.ear.people().find(({ id }) => id === props.id);
  const isDigits = (): boolean => props.round === 'digits';
  return (
    <Show when={person()}>
      {(its) => {
        const digit = () => nextToSay(its(), 'digits', engineOf(props.house));
        return (
          <KitchenPage
            back={handMarks[its().mark]}
            onBack={() => props.onBack()}
            words={
              <Words
                picture={<HandMark mark={its().mark} />}
                headline={isDigits() ? words.doneDigits : words.done}
                detail={isDigits() ? words.doneDigitsDetail : words.doneDetail}
              />
            }
            controls={
              <>
                <Show when={!isDigits() && digit()}>
                  {(phrase) => (
                    <Control
                      label={words.toDigits}
                      onPress={() =>
                        props.onOpen({
                          at: 'say',
                          id: props.id,
                          round: 'digits',
                          phrase: phrase(),
                        })
                      }
                    />
                  )}
                </Show>
                <Control
                  label={earTry.title}
                  onPress={() => props.onOpen({ at: 'try', id: props.id })}
                />
              </>
            }
          />
        );
      }}
    </Show>
  );
}
