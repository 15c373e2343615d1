import { createSignal, Show, type JSX } from 'solid-js';
import { askedAt, SHUT, WRONG_MOST } from '../core/small/adult-question.ts';
import { readAnswer, readings4 } from '../core/speech/words/small.ts';
import type { Instant } from '../core/units.ts';
import { Control } from '../parts/Control.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { Tiles } from '../parts/Tiles.tsx';
import type { House } from './house.ts';

/** Until when it stays shut, by the house, for as long as the page lives. */
const shut = new WeakMap<House, Instant>();

/** Something to read and a question about it, before what only a grown-up does. Wrong twice, it is shut for a while. */
export default function ReadAnswer(props: {
  readonly house: House;
  readonly onRight: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- asked once: a question that changed by itself could not be answered
  const [opened] = [props.house.now()];
  const [missed, setMissed] = createSignal(0);
  const isShut = (): boolean =>
    missed() >= WRONG_MOST || (shut.get(props.house) ?? -Infinity) > props.house.now();
  const asked = () => {
    const all = Object.values(readings4);
    const { question, order } = askedAt(opened, missed(), all.length);
    return { ...(all[question] ?? readings4.cellar), order };
  };
  const answer = (value: string): void => {
    if (value === 'right') return props.onRight();
    setMissed(missed() + 1);
    if (missed() >= WRONG_MOST) shut.set(props.house, props.house.now() + SHUT);
  };
  return (
    <Sheet title={readAnswer.title}>
      <Show when={!isShut()} fallback={<p class="sheet-part">{readAnswer.shut}</p>}>
        <Show when={missed() > 0}>
          <p>{readAnswer.again}</p>
        </Show>
        <p>{asked().text}</p>
        <h2 class="sheet-part">{asked().ask}</h2>
        <Tiles
          label={asked().ask}
          options={asked().order.map((place) => ({
            value: place,
            label: asked().answers[place],
          }))}
          onChoose={answer}
        />
      </Show>
      <Control label={readAnswer.back} onPress={() => props.onBack()} />
    </Sheet>
  );
}
