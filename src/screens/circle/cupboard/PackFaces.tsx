import { createSignal, Match, Switch, type JSX } from 'solid-js';
import type { Ingredient } from '../../../core/circle/circle.ts';
import { ingredientPage as words } from '../../../core/speech/words/cupboard.ts';
import { fill } from '../../../core/speech/fill.ts';
import { keyedWeight } from '../../../core/speech/keyed.ts';
import { currencySign, showMoney } from '../../../core/speech/money.ts';
import type { Grams } from '../../../core/units.ts';
import { Control } from '../../../parts/Control.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CupboardPage } from './CupboardPage.tsx';
import { KeyFace } from './KeyFace.tsx';
import type { Store } from './store.ts';
import { begun, storeWeight } from './words.ts';

/** What a pack holds, g, and costs, in any currency. Judgement: a sack at most, and few keys. */
const PACK = { least: 1, most: 50_000 } as const;
const PRICE = { least: 0, most: 99_999 } as const;

/** How much is in a pack and what it costs, one after the other; a price of nothing is asked twice. */
export function PackFaces(props: {
  readonly store: Store;
  readonly one: Ingredient;
  /** It was written. */
  readonly onKept: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [grams, setGrams] = createSignal<Grams | null>(null);
  const [isFree, setFree] = createSignal(false);
  const name = () => begun(props.one.name);
  const units = () => props.store.house.ways();
  const currency = () => props.store.circle.circle().ways.currency;
  const keyed = () => keyedWeight(PACK, units());
  const now = (value: string): string => fill(words.now, { value });
  const pack = () => props.one.pack;
  const keep = async (cost: number): Promise<void> => {
    const packed = { grams: grams()!, cost, usable: pack()?.usable ?? 1 };
    if (await props.store.keep({ ...props.one, pack: packed })) props.onKept();
  };
  const take = (typed: number | null): void => {
    if (typed === 0) setFree(true);
    else void keep(typed ?? pack()!.cost);
  };
  return (
    <Switch>
      <Match when={isFree()}>
        <CupboardPage
          back={words.freeNo}
          onBack={() => setFree(false)}
          words={<Words headline={words.freeAsk} detail={words.freeDetail} />}
          slab={<Slab label={words.freeNo} fresh="again" onPress={() => setFree(false)} />}
          controls={<Control label={words.freeYes} onPress={() => void keep(0)} />}
        />
      </Match>
      <Match when={grams() === null}>
        <KeyFace
          house={props.store.house}
          ask={words.packAsk}
          of={props.one.id}
          unit={keyed().unit}
          least={keyed().least}
          most={keyed().most}
          hint={pack() ? now(storeWeight(pack()!.grams, units())) : name()}
          blank={pack() !== null}
          then={words.priceAsk}
          back={name()}
          onTake={(typed) => setGrams(typed === null ? pack()!.grams : keyed().record(typed))}
          onBack={() => props.onBack()}
        />
      </Match>
      <Match when={grams() !== null}>
        <KeyFace
          house={props.store.house}
          ask={words.priceAsk}
          of={props.one.id}
          unit={currencySign(currency())}
          least={PRICE.least}
          most={PRICE.most}
          hint={pack() ? now(showMoney(pack()!.cost, currency())) : name()}
          blank={pack() !== null}
          then={name()}
          back={words.packAsk}
          onTake={take}
          onBack={() => setGrams(null)}
        />
      </Match>
    </Switch>
  );
}
