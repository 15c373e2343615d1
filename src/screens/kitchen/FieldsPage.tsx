import { createSignal, For, Show, type JSX } from 'solid-js';
import { bench } from '../../core/speech/words/bench.ts';
import { keypad } from '../../core/speech/words/controls.ts';
import { kitchenFields } from '../../core/speech/words/kitchen-fields.ts';
import { kitchenPage } from '../../core/speech/words/kitchen-page.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import type { Half } from '../../parts/half.ts';
import { NumberPad } from '../../parts/NumberPad.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Tiles } from '../../parts/Tiles.tsx';
import { Words } from '../../parts/Words.tsx';
import { KitchenPage } from '../KitchenPage.tsx';
import { numberTyped, type ChoiceField, type Field, type NumberField } from './field.ts';

/** One thing of the kitchen: what was said of it, and each question behind its own press. */
export function FieldsPage(props: {
  readonly title: string;
  readonly detail?: string | undefined;
  readonly care?: string | undefined;
  readonly fields: readonly Field[];
  /** Keeps what is half typed, by its question. */
  readonly half: (question: string) => Half;
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  const [at, setAt] = createSignal<string | null>(null);
  const open = <K extends Field['kind']>(kind: K) =>
    props.fields.find(
      (field): field is Extract<Field, { kind: K }> => field.label === at() && field.kind === kind,
    );
  const close = (): void => void setAt(null);
  return (
    <Show
      when={open('number')}
      fallback={
        <Show
          when={open('choice')}
          fallback={
            <KitchenPage
              back={props.back}
              onBack={() => props.onBack()}
              words={
                <Words headline={props.title} detail={props.detail} care={props.care}>
                  <div class="kitchen-grid">
                    <For each={props.fields.map(({ label }) => label)}>
                      {(label) => (
                        <Control
                          label={label}
                          value={
                            props.fields.find((field) => field.label === label)?.value ??
                            kitchenPage.notSaid
                          }
                          onPress={() => setAt(label)}
                        />
                      )}
                    </For>
                  </div>
                </Words>
              }
            />
          }
        >
          {(field) => (
            <ChoicePage field={field()} care={props.care} back={props.title} onBack={close} />
          )}
        </Show>
      }
    >
      {(field) => (
        <NumberPage
          field={field()}
          half={props.half(`${props.title} ${field().label}`)}
          back={props.title}
          onBack={close}
        />
      )}
    </Show>
  );
}

/** One of a few: it stands as soon as it is pressed. */
export function ChoicePage(props: {
  readonly field: ChoiceField;
  readonly detail?: string | undefined;
  readonly care?: string | undefined;
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  return (
    <KitchenPage
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={props.field.ask} detail={props.detail} care={props.care}>
          <Tiles
            label={props.field.ask}
            options={props.field.options}
            chosen={props.field.chosen}
            onChoose={(value) => props.field.set(value)}
          />
        </Words>
      }
    />
  );
}

/** A keypad that begins blank. What is left blank stays as it was. */
export function NumberPage(props: {
  readonly field: NumberField;
  readonly half: Half;
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  const [typed, setTyped] = createSignal<number | null>(null);
  const keyed = () => props.field.keyed;
  const good = () => numberTyped(props.field, typed());
  const take = (): void => {
    if (typed() !== null) props.field.set(good());
    props.half.keep('');
    props.onBack();
  };
  return (
    <KitchenPage
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={props.field.ask}>
          <NumberPad
            label={props.field.ask}
            unit={keyed().unit}
            words={{
              point: bench.point,
              clear: keypad.clear,
              hint: keyed().range,
              outside: fill(kitchenFields.only, { range: keyed().range }),
              again: keypad.again,
            }}
            half={props.half}
            min={keyed().least}
            max={keyed().most}
            onTyped={setTyped}
          />
        </Words>
      }
      slab={
        <Slab
          label={bench.thatsIt}
          then={props.back}
          fresh={props.field.label}
          disabled={typed() !== null && good() === null}
          onPress={take}
        />
      }
      controls={
        <Control
          label={kitchenFields.notKnown}
          onPress={() => {
            props.field.set(null);
            props.half.keep('');
            props.onBack();
          }}
        />
      }
    />
  );
}
