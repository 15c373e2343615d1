import { createSignal, For, Match, Show, Switch, type JSX } from 'solid-js';
import type { Filling, Formula } from '../../core/formula/formula.ts';
import { freeId } from '../../core/records/book.ts';
import { FILLING_KINDS } from '../../core/formula/filling-facts.ts';
import { bookFillings, fillingNames } from '../../core/speech/words/book.ts';
import { fillingKinds, fillingKindsLines } from '../../core/speech/words/filling-kinds.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { inEnglish } from '../../core/speech/tongue.ts';
import { Control } from '../../parts/Control.tsx';
import { Tiles } from '../../parts/Tiles.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { AllergenFace } from './AllergenFace.tsx';
import { BookPage } from './BookPage.tsx';
import type { Editing } from './editing.ts';
import { fillingLike, KNOWN_FILLINGS, knownFilling, type FillingToAdd } from './known-fillings.ts';
import type { PartKey } from './parts.ts';
import { TextFace } from '../TextFace.tsx';

/** A tenth of the flour to begin with: light against the 10–20 % of dough in use. Judgement. */
const BEGINS = 10;
/** More than a reader of formulas takes. */
const MOST = 12;

const withFilling = (formula: Formula, filling: FillingToAdd): Formula => ({
  ...formula,
  fillings: [
    ...formula.fillings,
    { ...filling, id: freeId(filling.id, formula.fillings), pct: BEGINS },
  ],
});
/** The one that was added last. */
const lastOf = ({ fillings }: Formula): PartKey => `filling:${fillings.at(-1)!.id}`;

/**
 * A filling out of a short list, or one of another name: then what it is most like is asked, which tells
 * its salt, its water, how it keeps and what its label names; like nothing that is known, how it keeps and
 * what its packet names.
 */
export function FillingFace(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly onBack: () => void;
}): JSX.Element {
  const [face, setFace] = createSignal<'list' | 'name' | 'kind' | 'keeps' | 'packet'>('list');
  const [name, setName] = createSignal('');
  const formula = () => props.editing.formula();
  const left = () =>
    KNOWN_FILLINGS.filter((id) => !formula().fillings.some((one) => one.id === id));
  const full = (): boolean => formula().fillings.length >= MOST;
  const put = (filling: FillingToAdd): void =>
    props.editing.change(withFilling(formula(), filling));
  const add = (filling: FillingToAdd): void => {
    put(filling);
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
            <Words headline={bookFillings.title} detail={bookFillings.detail}>
              <div class="book-grid book-top">
                <For each={left()}>
                  {(id) => (
                    <Control
                      label={fillingNames[id]}
                      disabled={full()}
                      onPress={() => add(knownFilling(id))}
                    />
                  )}
                </For>
                <Control
                  label={bookFillings.byName}
                  disabled={full()}
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
          ask={bookFillings.nameAsk}
          detail={bookFillings.nameDetail}
          begun={name()}
          lines="one"
          most={60}
          blank
          back={bookFillings.title}
          onText={setName}
          onTake={(text) => {
            setName(text);
            setFace('kind');
          }}
        />
      </Match>
      <Match when={face() === 'kind'}>
        <BookPage
          wide
          back={bookFillings.title}
          onBack={() => setFace('list')}
          words={
            <Words headline={bookFillings.kindAsk} detail={fillingKindsLines.fillingGuess}>
              <div class="book-grid book-top">
                <For each={FILLING_KINDS}>
                  {(kind) => (
                    <Control
                      label={fillingKinds[kind]}
                      onPress={() =>
                        add(fillingLike(kind, name() || inEnglish(() => fillingKinds[kind])))
                      }
                    />
                  )}
                </For>
                <Show when={name() !== ''}>
                  <Control label={bookFillings.noKind} onPress={() => setFace('keeps')} />
                </Show>
              </div>
            </Words>
          }
        />
      </Match>
      <Match when={face() === 'keeps'}>
        <BookPage
          back={bookFillings.title}
          onBack={() => setFace('list')}
          words={
            <Words headline={bookFillings.keepsAsk} detail={bookFillings.allergens}>
              <Tiles
                label={bookFillings.keepsAsk}
                options={(['shelf', 'hardCheese', 'perishable'] as const).map((value) => ({
                  value,
                  label: bookFillings[value],
                }))}
                onChoose={(keeps) => {
                  put({
                    ...{ id: name(), name: name(), allergens: [] },
                    keeps: keeps as Filling['keeps'],
                  });
                  setFace('packet');
                }}
              />
            </Words>
          }
        />
      </Match>
      <Match when={face() === 'packet'}>
        <AllergenFace
          editing={props.editing}
          part={lastOf(formula())}
          back={showBread(formula().name)}
          onBack={() => props.onBack()}
        />
      </Match>
    </Switch>
  );
}
