import { createMemo, createSignal, For, type JSX } from 'solid-js';
import { costOf } from '../../../core/circle/cost.ts';
import { pageOf } from '../../../core/circle/cupboard.ts';
import type { Formula } from '../../../core/formula/formula.ts';
import { costPage as words, cupboard } from '../../../core/speech/words/cupboard.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { Pressable } from '../../../parts/Pressable.tsx';
import { Words } from '../../../parts/Words.tsx';
import { loafTold } from './cost-view.ts';
import { CupboardPage } from './CupboardPage.tsx';
import { PAGE, pagedName, PageControls } from './PageControls.tsx';
import { recipeFor, usualLoaves } from './recipes.ts';
import type { Store } from './store.ts';
import { softWords } from '../../../parts/soft-words.ts';

/** The Book's breads, each with what a loaf of it costs. */
export function BreadsFace(props: {
  readonly store: Store;
  readonly onPick: (bread: string) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [at, setAt] = createSignal(0);
  const page = createMemo(() => pageOf(props.store.formulas(), PAGE, at()));
  const told = (formula: Formula): string => {
    const { house, circle } = props.store;
    const { recipe } = recipeFor(house, formula, usualLoaves(house.records(), formula.id));
    if (recipe === null) return words.cannot;
    const { ingredients, ways } = circle.circle();
    return loafTold(costOf(recipe, ingredients, ways), ways.currency);
  };
  return (
    <CupboardPage
      wide
      back={cupboard.title}
      onBack={() => props.onBack()}
      words={
        <Words headline={pagedName(words.which, page())}>
          <div class="cupboard-grid cupboard-top" role="group" aria-label={words.which}>
            <For each={page().shown}>
              {(formula) => (
                <Pressable
                  class="cupboard-entry"
                  fresh={formula.id}
                  onPress={() => props.onPick(formula.id)}
                >
                  <b>{softWords(showBread(formula.name))}</b>
                  <span>{told(formula)}</span>
                </Pressable>
              )}
            </For>
          </div>
        </Words>
      }
      controls={<PageControls at={page().at} pages={page().pages} onPage={setAt} />}
    />
  );
}
