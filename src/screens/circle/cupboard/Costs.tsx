import { createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import type { CircleWays } from '../../../core/circle/circle.ts';
import { costPage as words } from '../../../core/speech/words/cupboard.ts';
import { currencySign } from '../../../core/speech/money.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { Control } from '../../../parts/Control.tsx';
import { BreadsFace } from './BreadsFace.tsx';
import { CostFace } from './CostFace.tsx';
import { CountsFace } from './CountsFace.tsx';
import { CurrencyFace } from './CurrencyFace.tsx';
import { KeyFace } from './KeyFace.tsx';
import { LoavesFace } from './LoavesFace.tsx';
import { PackFaces } from './PackFaces.tsx';
import { usualLoaves } from './recipes.ts';
import type { Store } from './store.ts';

/** What a loaf costs besides, in any currency, and how many times the cost. Judgement. */
const BESIDES = { least: 0, most: 9_999 } as const;
const TIMES = { least: 0.1, most: 100 } as const;

type Face = 'cost' | 'loaves' | 'counts' | 'besides' | 'times' | 'currency';

/** What a loaf of each bread costs, and what is counted with it. */
export function Costs(props: { readonly store: Store; readonly onBack: () => void }): JSX.Element {
  const [bread, setBread] = createSignal<string | null>(null);
  const [loaves, setLoaves] = createSignal(1);
  const [face, setFace] = createSignal<Face>('cost');
  const [price, setPrice] = createSignal<string | null>(null);
  const formula = () => props.store.formulas().find(({ id }) => id === bread()) ?? null;
  const priced = () => (price() === null ? null : props.store.ingredient(price()!));
  const toCost = (): void => void setFace('cost');
  const toCounts = (): void => void setFace('counts');
  const keep = async (ways: Partial<CircleWays>): Promise<void> => {
    if (await props.store.keepWays(ways)) toCounts();
  };
  const currency = () => props.store.circle.circle().ways.currency;
  const pick = (id: string): void => {
    setLoaves(usualLoaves(props.store.house.records(), id));
    setBread(id);
  };
  return (
    <Show
      when={formula()}
      fallback={<BreadsFace store={props.store} onPick={pick} onBack={() => props.onBack()} />}
    >
      {(its) => (
        <Switch
          fallback={
            <CostFace
              store={props.store}
              formula={its()}
              loaves={loaves()}
              onPrice={setPrice}
              onLoaves={() => setFace('loaves')}
              onCounts={toCounts}
              onBack={() => setBread(null)}
            />
          }
        >
          <Match when={priced()}>
            {(one) => (
              <PackFaces
                store={props.store}
                one={one()}
                onKept={() => setPrice(null)}
                onBack={() => setPrice(null)}
              />
            )}
          </Match>
          <Match when={face() === 'loaves'}>
            <LoavesFace
              loaves={loaves()}
              back={showBread(its().name)}
              onChange={setLoaves}
              onBack={toCost}
            />
          </Match>
          <Match when={face() === 'counts'}>
            <CountsFace
              store={props.store}
              back={showBread(its().name)}
              onBesides={() => setFace('besides')}
              onTimes={() => setFace('times')}
              onCurrency={() => setFace('currency')}
              onBack={toCost}
            />
          </Match>
          <Match when={face() === 'besides'}>
            <KeyFace
              house={props.store.house}
              ask={words.besidesAsk}
              of={currency()}
              unit={currencySign(currency())}
              least={BESIDES.least}
              most={BESIDES.most}
              hint={words.besidesDetail}
              blank={false}
              then={words.counts}
              back={words.counts}
              onTake={(besides) => void keep({ besides })}
              onBack={toCounts}
              beside={<Control label={words.leave} onPress={() => void keep({ besides: null })} />}
            />
          </Match>
          <Match when={face() === 'times'}>
            <KeyFace
              house={props.store.house}
              ask={words.timesAsk}
              of=""
              unit={words.timesUnit}
              least={TIMES.least}
              most={TIMES.most}
              hint={words.timesDetail}
              blank={false}
              then={words.counts}
              back={words.counts}
              onTake={(times) => void keep({ times })}
              onBack={toCounts}
              beside={<Control label={words.leave} onPress={() => void keep({ times: null })} />}
            />
          </Match>
          <Match when={face() === 'currency'}>
            <CurrencyFace
              chosen={currency()}
              back={words.counts}
              onChoose={(code) => void keep({ currency: code })}
              onBack={toCounts}
            />
          </Match>
        </Switch>
      )}
    </Show>
  );
}
