import { createSignal, For, Match, Switch, type JSX } from 'solid-js';
import type { Grain } from '../../core/formula/formula.ts';
import { addFlour, MOST_FLOURS } from '../../core/formula/set-flours.ts';
import { freeId } from '../../core/records/book.ts';
import { grains } from '../../core/speech/words/book.ts';
import { bookParts, flourNames } from '../../core/speech/words/book-parts.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { showPart } from '../../core/speech/show-part.ts';
import { inEnglish } from '../../core/speech/tongue.ts';
import { Control } from '../../parts/Control.tsx';
import { Tiles } from '../../parts/Tiles.tsx';
import { Words } from '../../parts/Words.tsx';
import { BookPage } from './BookPage.tsx';
import type { Editing } from './editing.ts';
import { TextFace } from '../TextFace.tsx';

type KnownFlour = keyof typeof flourNames;
/** What the dough clock and the label make of each. */
const GRAIN: Readonly<Record<KnownFlour, Grain>> = {
  strongWheat: 'wheat',
  plainWheat: 'wheat',
  wholeWheat: 'wholeWheat',
  wholeRye: 'rye',
  lightRye: 'rye',
  spelt: 'spelt',
  wholeSpelt: 'spelt',
  barley: 'barley',
};
const KNOWN = Object.keys(flourNames) as KnownFlour[];

/** What a flour is of, one press. */
export function GrainTiles(props: {
  readonly chosen?: Grain;
  readonly onChoose: (grain: Grain) => void;
}): JSX.Element {
  return (
    <Tiles
      label={bookParts.grainAsk}
      chosen={props.chosen}
      options={Object.entries(grains).map(([value, label]) => ({ value, label }))}
      onChoose={(grain) => props.onChoose(grain as Grain)}
    />
  );
}

/** A flour out of a short list, or one of another name and its grain; the others give way to it. */
export function FlourFace(props: {
  readonly editing: Editing;
  readonly onBack: () => void;
}): JSX.Element {
  const [face, setFace] = createSignal<'list' | 'name' | 'grain'>('list');
  const [name, setName] = createSignal('');
  const formula = () => props.editing.formula();
  const left = () =>
    KNOWN.filter((id) => formula().flours.every((one) => showPart(one.name) !== flourNames[id]));
  const made = (own: string, grain: Grain) =>
    addFlour(formula(), { id: freeId(own, formula().flours), name: own, grain });
  /** Why none can be added; any of them would be as large. */
  const why = (): string | null => {
    if (formula().flours.length >= MOST_FLOURS) return bookParts.full;
    return made('flour', 'wheat') === null ? bookParts.small : null;
  };
  const add = (own: string, grain: Grain): void => {
    const next = made(own, grain);
    if (next) props.editing.change(next);
    props.onBack();
  };
  return (
    <Switch>
      <Match when={face() === 'list'}>
        <BookPage
          wide
          back={showBread(formula().name)}
          onBack={() => props.onBack()}
          words={
            <Words headline={bookParts.addFlour} detail={why() ?? bookParts.begins}>
              <div class="book-grid book-top">
                <For each={left()}>
                  {(id) => (
                    <Control
                      label={flourNames[id]}
                      disabled={why() !== null}
                      onPress={() =>
                        add(
                          inEnglish(() => flourNames[id]),
                          GRAIN[id],
                        )
                      }
                    />
                  )}
                </For>
                <Control
                  label={bookParts.byName}
                  disabled={why() !== null}
                  onPress={() => setFace('name')}
                />
              </div>
            </Words>
          }
        />
      </Match>
      <Match when={face() === 'name'}>
        <TextFace
          page={BookPage}
          ask={bookParts.nameAsk}
          begun={name()}
          lines="one"
          most={60}
          blank
          back={bookParts.addFlour}
          onText={setName}
          onTake={(text) => {
            setName(text.trim());
            setFace(text.trim() === '' ? 'list' : 'grain');
          }}
        />
      </Match>
      <Match when={face() === 'grain'}>
        <BookPage
          back={bookParts.addFlour}
          onBack={() => setFace('list')}
          words={
            <Words headline={bookParts.grainAsk} detail={name()}>
              <GrainTiles onChoose={(grain) => add(name(), grain)} />
            </Words>
          }
        />
      </Match>
    </Switch>
  );
}
