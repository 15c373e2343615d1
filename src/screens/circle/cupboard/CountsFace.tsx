import type { JSX } from 'solid-js';
import { costPage as words } from '../../../core/speech/words/cupboard.ts';
import { currencyName, showMoney, showTimes } from '../../../core/speech/money.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CupboardPage } from './CupboardPage.tsx';
import type { Store } from './store.ts';

/** What is counted with every loaf: what it costs besides, how many times the cost, in which currency. */
export function CountsFace(props: {
  readonly store: Store;
  readonly back: string;
  readonly onBesides: () => void;
  readonly onTimes: () => void;
  readonly onCurrency: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const ways = () => props.store.circle.circle().ways;
  const besides = (): string => {
    const { besides: cost, currency } = ways();
    return cost === null ? words.notSaid : showMoney(cost, currency);
  };
  const times = (): string => {
    const { times: count } = ways();
    return count === null ? words.notSaid : showTimes(count);
  };
  return (
    <CupboardPage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={words.counts} detail={words.countsDetail}>
          <div class="cupboard-grid cupboard-top" role="group" aria-label={words.counts}>
            <Control
              label={words.besides}
              value={besides()}
              fresh="besides"
              onPress={() => props.onBesides()}
            />
            <Control
              label={words.times}
              value={times()}
              fresh="times"
              onPress={() => props.onTimes()}
            />
            <Control
              label={words.currency}
              value={currencyName(ways().currency)}
              fresh="currency"
              onPress={() => props.onCurrency()}
            />
          </div>
        </Words>
      }
    />
  );
}
