import { createMemo, For, Show, type JSX } from 'solid-js';
import { costOf } from '../../../core/circle/cost.ts';
import type { Formula } from '../../../core/formula/formula.ts';
import { costPage as words } from '../../../core/speech/words/cupboard.ts';
import { tellNotice } from '../../../core/speech/tell-notice.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { Control } from '../../../parts/Control.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import { costView } from './cost-view.ts';
import { CupboardPage } from './CupboardPage.tsx';
import { recipeFor } from './recipes.ts';
import type { Store } from './store.ts';
import { softWords } from '../../../parts/soft-words.ts';

/** What a loaf of one bread costs, with its arithmetic. */
export function CostFace(props: {
  readonly store: Store;
  readonly formula: Formula;
  /** So many are baked at once. */
  readonly loaves: number;
  /** An ingredient that has no price. */
  readonly onPrice: (id: string) => void;
  readonly onLoaves: () => void;
  /** What is counted besides, and in which currency. */
  readonly onCounts: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const ways = () => props.store.circle.circle().ways;
  const units = () => props.store.house.ways();
  const made = createMemo(() => recipeFor(props.store.house, props.formula, props.loaves));
  const cost = createMemo(() => {
    const { recipe } = made();
    return recipe && costOf(recipe, props.store.circle.circle().ingredients, ways());
  });
  const view = createMemo(() => {
    const its = cost();
    return its && costView(its, ways(), units());
  });
  const priceless = () => cost()?.lines.find((line) => line.cost === null)?.id ?? null;
  const reason = (): string | undefined => {
    const { reason: why } = made();
    return why && tellNotice(why, units());
  };
  return (
    <CupboardPage
      wide
      back={words.which}
      onBack={() => props.onBack()}
      words={
        <Words headline={showBread(props.formula.name)} detail={view()?.told ?? reason()}>
          <Show when={view()?.price}>{(price) => <p class="cupboard-told">{price()}</p>}</Show>
          <Show when={view()}>
            {(its) => (
              <table class="cupboard-table">
                <thead>
                  <tr>
                    <th scope="col">{softWords(words.what)}</th>
                    <th scope="col">{softWords(words.much)}</th>
                    <th scope="col">{softWords(its().per)}</th>
                    <th scope="col">{softWords(words.comes)}</th>
                  </tr>
                </thead>
                <tbody>
                  <For each={its().rows}>
                    {(row) => (
                      <tr data-sum={row.isSum ? '' : undefined}>
                        <th scope="row">{softWords(row.what)}</th>
                        <td>{unbroken(row.much)}</td>
                        <td>{row.unit}</td>
                        <td>{row.cost}</td>
                      </tr>
                    )}
                  </For>
                </tbody>
              </table>
            )}
          </Show>
          <Show when={view()?.missing}>
            {(missing) => <p class="cupboard-told">{missing()}</p>}
          </Show>
        </Words>
      }
      controls={
        <>
          <Show when={priceless()}>
            {(id) => <Control label={words.givePrice} onPress={() => props.onPrice(id())} />}
          </Show>
          <Control
            label={words.loaves}
            value={String(props.loaves)}
            fresh="loaves"
            onPress={() => props.onLoaves()}
          />
          <Control label={words.counts} onPress={() => props.onCounts()} />
        </>
      }
    />
  );
}
