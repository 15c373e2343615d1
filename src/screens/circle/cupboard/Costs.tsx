import { createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import { costPage as words } from '../../../core/speech/en/cupboard.ts';
import { currencySign } from '../../../core/speech/money.ts';
import { Control } from '../../../parts/Control.tsx';
import { BreadsFace } from './BreadsFace.tsx';
import { CostFace } from './CostFace.tsx';
import { CurrencyFace } from './CurrencyFace.tsx';
import { KeyFace } from './KeyFace.tsx';
import { PackFaces } from './PackFaces.tsx';
import type { Store } from './store.ts';

/** What a loaf costs besides, in any currency, and how many times the cost. Judgement. */
const BESIDES = { least: 0, most: 9_999 } as const;
const TIMES = { least: 0.1, most: 100 } as const;

/** What a loaf of each bread costs, and what is counted with it. */
export function Costs(props: { readonly store: Store; readonly onBack: () => void }): JSX.Element {
  const [bread, setBread] = createSignal<string | null>(null);
  const [face, setFace] = createSignal<'cost' | 'besides' | 'times' | 'currency'>('cost');
  const [price, setPrice] = createSignal<string | null>(null);
  const formula = () => props.store.formulas().find(({ id }) => id === bread()) ?? null;
  const priced = () => (price() === null ? null : props.store.ingredient(price()!));
  const toCost = (): void => void setFace('cost');
  const keep = async (ways: {
    besides?: number | null;
    times?: number | null;
    currency?: string;
  }) => {
    if (await props.store.keepWays(ways)) toCost();
  };
  const currency = () => props.store.circle.circle().ways.currency;
  return (
    <Show
      when={formula()}
      fallback={<BreadsFace store={props.store} onPick={setBread} onBack={() => props.onBack()} />}
    >
      {(its) => (
        <Switch
          fallback={
            <CostFace
              store={props.store}
              formula={its()}
              onPrice={setPrice}
              onBesides={() => setFace('besides')}
              onTimes={() => setFace('times')}
              onCurrency={() => setFace('currency')}
              onBack={() => setBread(null)}
            />
          }
        >
          <Match when={priced()}>
            {(one) => <PackFaces store={props.store} one={one()} onBack={() => setPrice(null)} />}
          </Match>
          <Match when={face() === 'besides'}>
            <KeyFace
              house={props.store.house}
              ask={words.besidesAsk}
              unit={currencySign(currency())}
              least={BESIDES.least}
              most={BESIDES.most}
              hint={words.besidesDetail}
              blank={false}
              then={its().name}
              back={its().name}
              onTake={(besides) => void keep({ besides })}
              onBack={toCost}
              beside={<Control label={words.leave} onPress={() => void keep({ besides: null })} />}
            />
          </Match>
          <Match when={face() === 'times'}>
            <KeyFace
              house={props.store.house}
              ask={words.timesAsk}
              unit={words.timesUnit}
              least={TIMES.least}
              most={TIMES.most}
              hint={words.timesDetail}
              blank={false}
              then={its().name}
              back={its().name}
              onTake={(times) => void keep({ times })}
              onBack={toCost}
              beside={<Control label={words.leave} onPress={() => void keep({ times: null })} />}
            />
          </Match>
          <Match when={face() === 'currency'}>
            <CurrencyFace
              chosen={currency()}
              back={its().name}
              onChoose={(code) => void keep({ currency: code })}
              onBack={toCost}
            />
          </Match>
        </Switch>
      )}
    </Show>
  );
}
