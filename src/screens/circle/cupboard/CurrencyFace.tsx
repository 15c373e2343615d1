import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import { SHORT_CURRENCIES } from '../../../core/circle/currencies.ts';
import { pageOf } from '../../../core/circle/cupboard.ts';
import { costPage as words } from '../../../core/speech/words/cupboard.ts';
import { currencyName } from '../../../core/speech/money.ts';
import { Control } from '../../../parts/Control.tsx';
import { Pressable } from '../../../parts/Pressable.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CupboardPage } from './CupboardPage.tsx';
import { PAGE, pagedName, PageControls } from './PageControls.tsx';
import { softWords } from '../../../parts/soft-words.ts';

/** All that the tablet knows, by their names; the short list alone where it tells of none. */
const allCurrencies = (): readonly string[] => {
  const all = 'supportedValuesOf' in Intl ? Intl.supportedValuesOf('currency') : SHORT_CURRENCIES;
  return all.toSorted((a, b) => currencyName(a).localeCompare(currencyName(b)));
};

/** Which currency the circle counts in: a short list, and all others behind it. */
export function CurrencyFace(props: {
  readonly chosen: string;
  readonly back: string;
  readonly onChoose: (currency: string) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [others, setOthers] = createSignal(false);
  const [at, setAt] = createSignal(0);
  const all = createMemo(() => (others() ? allCurrencies() : SHORT_CURRENCIES));
  const page = createMemo(() => pageOf<string>(all(), PAGE, at()));
  return (
    <CupboardPage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={pagedName(words.currencyAsk, page())} detail={words.currencyDetail}>
          <div class="cupboard-grid cupboard-top" role="group" aria-label={words.currencyAsk}>
            <For each={page().shown}>
              {(code) => (
                <Pressable
                  class="cupboard-entry"
                  fresh={code}
                  chosen={code === props.chosen}
                  onPress={() => props.onChoose(code)}
                >
                  <b>{code}</b>
                  <span>{softWords(currencyName(code))}</span>
                </Pressable>
              )}
            </For>
          </div>
        </Words>
      }
      controls={
        <Show
          when={others()}
          fallback={<Control label={words.currencyOther} onPress={() => setOthers(true)} />}
        >
          <PageControls at={page().at} pages={page().pages} onPage={setAt} />
        </Show>
      }
    />
  );
}
