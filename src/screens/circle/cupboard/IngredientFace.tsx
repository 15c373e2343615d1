import { createMemo, Show, type JSX } from 'solid-js';
import type { Ingredient } from '../../../core/circle/circle.ts';
import { usableCost } from '../../../core/circle/cost.ts';
import { counted, packsMore } from '../../../core/circle/stock.ts';
import { cupboard, ingredientPage as words } from '../../../core/speech/words/cupboard.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showUnitCost } from '../../../core/speech/money.ts';
import { showNumber } from '../../../core/speech/numbers.ts';
import { Control } from '../../../parts/Control.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import { TakeBack } from '../orders/TakeBack.tsx';
import { CupboardPage } from './CupboardPage.tsx';
import type { Store } from './store.ts';
import { begun, packTold, priceWeight, storeWeight, thereTold } from './words.ts';

/** One ingredient: what should be there, put right by one press, and what its packet says. */
export function IngredientFace(props: {
  readonly store: Store;
  readonly one: Ingredient;
  /** Something was written here, and can be taken back. */
  readonly isTouched: boolean;
  readonly onKeep: (fresh: Ingredient) => void;
  readonly onCount: () => void;
  readonly onPack: () => void;
  readonly onUsable: () => void;
  /** Off the list, where no bread has it. */
  readonly onDrop: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const units = () => props.store.house.ways();
  const there = createMemo(() => props.store.there(props.one.id));
  const since = (): string => {
    const { counted: count } = props.one;
    if (count === null) return words.notCounted;
    const { grams } = there();
    if (grams === null) return words.tooLong;
    return fill(words.countedOn, {
      date: props.store.house.date(count.at),
      grams: storeWeight(count.grams, units()),
      value: storeWeight(Math.max(0, count.grams - grams), units()),
    });
  };
  const now = () => props.store.house.now();
  /** What a kilo or a pound costs, of what can be used. */
  const unit = (): string | undefined => {
    const { pack } = props.one;
    if (pack === null) return undefined;
    const grams = priceWeight(units());
    const cost = usableCost((pack.cost / pack.grams) * grams, pack.usable);
    return fill(pack.usable < 1 ? words.unitUsable : words.unit, {
      value: showUnitCost(cost, props.store.circle.circle().ways.currency),
      grams: storeWeight(grams, units()),
    });
  };
  const percent = (): string =>
    fill(words.percent, { percent: showNumber((props.one.pack?.usable ?? 1) * 100) });
  return (
    <CupboardPage
      wide
      back={cupboard.list}
      onBack={() => props.onBack()}
      words={
        <Words headline={begun(props.one.name)} detail={since()}>
          <div class="cupboard-grid cupboard-top">
            <Control
              label={words.thereNow}
              value={thereTold(there(), units())}
              fresh="there"
              onPress={() => props.onCount()}
            />
            <Control
              label={words.pack}
              value={packTold(props.one, props.store.circle.circle().ways.currency, units())}
              fresh="pack"
              onPress={() => props.onPack()}
            />
            <Show when={props.one.pack}>
              <Control
                label={words.usable}
                value={percent()}
                fresh="usable"
                onPress={() => props.onUsable()}
              />
            </Show>
          </div>
          <Show when={unit()}>{(told) => <p class="cupboard-told">{unbroken(told())}</p>}</Show>
        </Words>
      }
      controls={
        <>
          <Control
            label={words.allGone}
            disabled={there().grams === 0}
            onPress={() => props.onKeep(counted(props.one, 0, now()))}
          />
          <Show when={props.one.pack}>
            <Control
              label={words.packMore}
              onPress={() => props.onKeep(packsMore(props.one, 1, there(), now()))}
            />
          </Show>
          <Show when={props.store.isSpare(props.one.id)}>
            <Control label={words.drop} onPress={() => props.onDrop()} />
          </Show>
          <Show when={props.isTouched}>
            <TakeBack house={props.store.house} circle={props.store.circle} />
          </Show>
        </>
      }
    />
  );
}
