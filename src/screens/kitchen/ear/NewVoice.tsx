import { createSignal, Show, type JSX } from 'solid-js';
import { nextToSay } from '../../../core/ear/known.ts';
import type { EarPerson } from '../../../core/ear/person.ts';
import { HAND_MARKS, type HandMark as Mark } from '../../../core/small/marks.ts';
import { earPeople as words } from '../../../core/speech/words/ear-kitchen.ts';
import { handMark, handMarks } from '../../../core/speech/words/small.ts';
import { Control } from '../../../parts/Control.tsx';
import { HandMark } from '../../../parts/HandMark.tsx';
import { Tiles } from '../../../parts/Tiles.tsx';
import { Words } from '../../../parts/Words.tsx';
import { KitchenPage } from '../../KitchenPage.tsx';
import { engineOf, notWritten, type EarFaceProps } from './face.ts';

/** A mark that nobody here has, and whether it is a child's: kept at once, and then the first phrase. */
export function NewVoice(props: EarFaceProps): JSX.Element {
  const [mark, setMark] = createSignal<Mark | null>(null);
  const [told, setTold] = createSignal<string | undefined>();
  const taken = (one: Mark): boolean => props.ear.people().some(({ mark }) => mark === one);
  const keep = async (mark: Mark, child: boolean): Promise<void> => {
    // A mark is one person's here: it is who they are.
    const person: EarPerson = { id: mark, mark, child, sayings: {} };
    const { house, ear } = props;
    const why = await ear.keep(person);
    if (why !== null) return void setTold(notWritten(why));
    const phrase = nextToSay(person, 'phrases', engineOf(house))!;
    props.onOpen({ at: 'say', id: person.id, round: 'phrases', phrase });
  };
  return (
    <Show
      when={mark()}
      fallback={
        <KitchenPage
          back={words.title}
          onBack={() => props.onBack()}
          words={
            <Words headline={handMark.pick} detail={words.markDetail}>
              <Tiles
                label={handMark.pick}
                options={HAND_MARKS.map((value) => ({
                  value,
                  label: handMarks[value],
                  picture: <HandMark mark={value} />,
                  off: taken(value),
                }))}
                onChoose={(value) => setMark(value as Mark)}
              />
            </Words>
          }
        />
      }
    >
      {(its) => (
        <KitchenPage
          back={words.title}
          onBack={() => props.onBack()}
          words={
            <Words headline={words.who} detail={words.whoDetail} care={told()}>
              <Tiles
                label={words.who}
                options={(['grown', 'child'] as const).map((value) => ({
                  value,
                  label: words.ages[value],
                }))}
                onChoose={(value) => void keep(its(), value === 'child')}
              />
            </Words>
          }
          controls={<Control label={handMark.pick} onPress={() => setMark(null)} />}
        />
      )}
    </Show>
  );
}
