import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import { costOf } from '../../../core/circle/cost.ts';
import { LOAVES } from '../../../core/formula/make-recipe.ts';
import type { Formula } from '../../../core/formula/formula.ts';
import { costPage as words } from '../../../core/speech/en/cupboard.ts';
import { start } from '../../../core/speech/en/start.ts';
import { shown } from '../../../core/speech/facts.ts';
import { showMoney, showTimes } from '../../../core/speech/money.ts';
import { tellNotice } from '../../../core/speech/tell-notice.ts';
import { Control } from '../../../parts/Control.tsx';
import { Stepper } from '../../../parts/Stepper.tsx';
import { Words } from '../../../parts/Words.tsx';
import { costView } from './cost-view.ts';
import { CupboardPage } from './CupboardPage.tsx';
import { recipeFor, usualLoaves } from './recipes.ts';
import type { Store } from './store.ts';

/** What a loaf of one bread costs, with its arithmetic; of how many loaves at once is chosen on it. */
export function CostFace(props: {
  readonly store: Store;
  readonly formula: Formula;
  /** An ingredient that has no price. */
  readonly onPrice: (id: string) => void;
  readonly onBesides: () => void;
  readonly onTimes: () => void;
  readonly onCurrency: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const ways = () => props.store.circle.circle().ways;
  const units = () => props.store.house.ways();
  // eslint-disable-next-line solid/reactivity -- it begins with it and goes its own way
  const [loaves, setLoaves] = createSignal(
    usualLoaves(props.store.house.records(), props.formula.id),
  );
  const made = createMemo(() => recipeFor(props.store.house, props.formula, loaves()));
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
        <Words headline={props.formula.name} detail={view()?.told ?? reason()}>
          <div class="cupboard-row cupboard-top">
            <Stepper
              label={words.loaves}
              value={loaves()}
              shown={String(shown({ loaves: loaves() }).loaves)}
              least={LOAVES.least}
              most={LOAVES.most}
              fewer={start.fewer}
              more={start.more}
              onChange={setLoaves}
            />
            <Show when={view()?.price}>{(price) => <p class="cupboard-told">{price()}</p>}</Show>
          </div>
          <Show when={view()?.missing}>
            {(missing) => <p class="cupboard-told">{missing()}</p>}
          </Show>
          <Show when={view()}>
            {(its) => (
              <table class="cupboard-table">
                <thead>
                  <tr>
                    <th scope="col">{words.what}</th>
                    <th scope="col">{words.much}</th>
                    <th scope="col">{its().per}</th>
                    <th scope="col">{words.comes}</th>
                  </tr>
                </thead>
                <tbody>
                  <For each={its().rows}>
                    {(row) => (
                      <tr data-sum={row.isSum ? '' : undefined}>
                        <th scope="row">{row.what}</th>
                        <td>{row.much}</td>
                        <td>{row.unit}</td>
                        <td>{row.cost}</td>
                      </tr>
                    )}
                  </For>
                </tbody>
              </table>
            )}
          </Show>
        </Words>
      }
      controls={
        <>
          <Show when={priceless()}>
            {(id) => <Control label={words.givePrice} onPress={() => props.onPrice(id())} />}
          </Show>
          <Control
            label={words.besides}
            value={
              ways().besides === null ? words.notSaid : showMoney(ways().besides!, ways().currency)
            }
            fresh="besides"
            onPress={() => props.onBesides()}
          />
          <Control
            label={words.times}
            value={ways().times === null ? words.notSaid : showTimes(ways().times!)}
            fresh="times"
            onPress={() => props.onTimes()}
          />
          <Control
            label={words.currency}
            value={ways().currency}
            fresh="currency"
            onPress={() => props.onCurrency()}
          />
        </>
      }
    />
  );
}
