import { createSignal, For, Match, Switch, type JSX } from 'solid-js';
import type { Filling, Formula } from '../../core/formula/formula.ts';
import { freeId } from '../../core/records/book.ts';
import { bookFillings, fillingAllergens, fillingNames } from '../../core/speech/en/book.ts';
import { Control } from '../../parts/Control.tsx';
import { Tiles } from '../../parts/Tiles.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { BookPage } from './BookPage.tsx';
import type { Editing } from './editing.ts';
import { TextFace } from './TextFace.tsx';

type Known = keyof typeof fillingNames;
type Rest = Pick<Filling, 'keeps' | 'allergens' | 'prepare'>;

const shelf = (
  allergens: readonly string[],
  ...prepare: NonNullable<Filling['prepare']>
): Rest => ({
  keeps: 'shelf',
  allergens,
  ...(prepare.length > 0 ? { prepare } : {}),
});

/** How each is kept and made ready, and what the label must say of it. Common practice, no source. */
const KNOWN: Readonly<Record<Known, Rest>> = {
  walnut: shelf([fillingAllergens.walnut], 'toast', 'cut'),
  hazelnut: shelf([fillingAllergens.hazelnut], 'toast', 'cut'),
  sunflower: shelf([], 'toast'),
  pumpkin: shelf([], 'toast'),
  sesame: shelf([fillingAllergens.sesame], 'toast'),
  linseed: shelf([], 'soak'),
  raisin: shelf([], 'soak', 'drain'),
  apricot: shelf([], 'cut'),
  olive: shelf([], 'drain'),
  hardCheese: { keeps: 'hardCheese', allergens: [fillingAllergens.milk], prepare: ['cut'] },
};

/** A tenth of the flour to begin with: light against the 10–20 % of dough in use. Judgement. */
const BEGINS = 10;
/** More than a reader of formulas takes. */
const MOST = 12;

const withFilling = (
  formula: Formula,
  filling: Omit<Filling, 'pct' | 'id'>,
  id: string,
): Formula => ({
  ...formula,
  fillings: [...formula.fillings, { ...filling, id: freeId(id, formula.fillings), pct: BEGINS }],
});

/** A filling out of a short list, or one of another name, which is then asked how it keeps. */
export function FillingFace(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly onBack: () => void;
}): JSX.Element {
  const [face, setFace] = createSignal<'list' | 'name' | 'keeps'>('list');
  const [name, setName] = createSignal('');
  const formula = () => props.editing.formula();
  const left = () =>
    (Object.keys(fillingNames) as Known[]).filter(
      (id) => !formula().fillings.some((one) => one.id === id),
    );
  const full = (): boolean => formula().fillings.length >= MOST;
  const add = (filling: Omit<Filling, 'pct' | 'id'>, id: string): void => {
    props.editing.change(withFilling(formula(), filling, id));
    props.onBack();
  };
  return (
    <Switch>
      <Match when={face() === 'list'}>
        <BookPage
          wide
          back={formula().name}
          onBack={() => props.onBack()}
          words={
            <Words headline={bookFillings.title} detail={bookFillings.detail}>
              <div class="book-grid book-top">
                <For each={left()}>
                  {(id) => (
                    <Control
                      label={fillingNames[id]}
                      disabled={full()}
                      onPress={() => add({ name: fillingNames[id], ...KNOWN[id] }, id)}
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
          ask={bookFillings.nameAsk}
          begun={name()}
          lines="one"
          most={60}
          blank
          back={bookFillings.title}
          onText={setName}
          onTake={(text) => {
            setName(text);
            setFace(text === '' ? 'list' : 'keeps');
          }}
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
                onChoose={(keeps) =>
                  add({ name: name(), keeps: keeps as Filling['keeps'], allergens: [] }, name())
                }
              />
            </Words>
          }
        />
      </Match>
    </Switch>
  );
}
