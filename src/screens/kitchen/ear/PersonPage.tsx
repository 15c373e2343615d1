import { Show, type JSX } from 'solid-js';
import { knownIn, knownOf, nextToSay, ROUNDS, type Round } from '../../../core/ear/known.ts';
import { EAR_PHRASES } from '../../../core/ear/phrases.ts';
import { earPeople as words, earPhrases, earTry } from '../../../core/speech/words/ear-kitchen.ts';
import { handMarks } from '../../../core/speech/words/small.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { HandMark } from '../../../parts/HandMark.tsx';
import { Words } from '../../../parts/Words.tsx';
import { KitchenPage } from '../../KitchenPage.tsx';
import { engineOf, type EarFaceProps } from './face.ts';

/** One voice: what it has said, what is left, how well it is heard here. */
export function PersonPage(props: EarFaceProps & { readonly id: string }): JSX.Element {
  const person = () => props.ear.people().find(({ id }) => id === props.id);
  const engine = () => engineOf(props.house);
  return (
    <Show when={person()}>
      {(its) => {
        const counted = (round: Round) => ({
          done: knownIn(its(), round, engine()).length,
          of: ROUNDS[round].length,
        });
        const next = () => {
          for (const round of ['phrases', 'digits'] as const) {
            const phrase = nextToSay(its(), round, engine());
            if (phrase !== null) return { at: 'say', id: props.id, round, phrase } as const;
          }
          return null;
        };
        const isAnew = (): boolean =>
          EAR_PHRASES.some((phrase) => knownOf(its(), phrase, engine()) === 'anew');
        const round = (of: Round): JSX.Element => (
          <Control
            label={words[of]}
            value={fill(words.of, counted(of))}
            onPress={() => props.onOpen({ at: 'list', id: props.id, round: of })}
          />
        );
        return (
          <KitchenPage
            back={words.title}
            onBack={() => props.onBack()}
            words={
              <Words
                picture={<HandMark mark={its().mark} />}
                headline={handMarks[its().mark]}
                detail={words.ages[its().child ? 'child' : 'grown']}
                care={isAnew() ? words.again : undefined}
              >
                <div class="kitchen-grid">
                  <Show when={next()}>
                    {(say) => (
                      <Control
                        label={words.goOn}
                        value={earPhrases[say().phrase]}
                        onPress={() => props.onOpen(say())}
                      />
                    )}
                  </Show>
                  {round('phrases')}
                  {round('digits')}
                  <Control
                    label={earTry.title}
                    onPress={() => props.onOpen({ at: 'try', id: props.id })}
                  />
                </div>
              </Words>
            }
            controls={
              <Control
                label={words.erase}
                onPress={() => props.onOpen({ at: 'erase', id: props.id })}
              />
            }
          />
        );
      }}
    </Show>
  );
}
