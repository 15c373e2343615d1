import { createMemo, For, Show, untrack, type JSX } from 'solid-js';
import { bookSwaps } from '../../core/speech/words/swaps.ts';
import { fill } from '../../core/speech/fill.ts';
import { showPart } from '../../core/speech/show-part.ts';
import { Control } from '../../parts/Control.tsx';
import { unbroken } from '../../parts/unbroken.ts';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { BookPage } from './BookPage.tsx';
import type { Editing } from './editing.ts';
import { swapOffers } from './swap-offers.ts';
import './SwapFace.css';

/** Opens the swaps of a filling; where there are none it is not there. */
export function SwapControl(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly filling: string;
  readonly onPress: () => void;
}): JSX.Element {
  const isThere = createMemo(
    () =>
      swapOffers(
        props.editing.formula(),
        props.filling,
        props.editing.scaled().dough,
        props.house.ways(),
      ).length > 0,
  );
  return (
    <Show when={isThere()}>
      <Control
        label={bookSwaps.press}
        disabled={!props.house.holds}
        onPress={() => props.onPress()}
      />
    </Show>
  );
}

/** A filling's swaps, a press each, with their rule and all that they change. */
export function SwapFace(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly filling: string;
  /** What the slab leads back to. */
  readonly back: string;
  /** A swap was made: the filling's own line is no more. */
  readonly onSwapped: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  // Read once: a press changes the formula it was reckoned for, and leaves the page.
  const { offers, name } = untrack(() => {
    const formula = props.editing.formula();
    const was = formula.fillings.find(({ id }) => id === props.filling);
    return {
      offers: swapOffers(formula, props.filling, props.editing.scaled().dough, props.house.ways()),
      name: showPart(was?.name ?? props.filling),
    };
  });
  return (
    <BookPage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={fill(bookSwaps.title, { name })} detail={bookSwaps.detail}>
          <ul class="swaps book-top">
            <For each={offers}>
              {(offer) => (
                <li>
                  <div>
                    <p>{unbroken(offer.changes.join(' '))}</p>
                    <p class="swaps-rule">{unbroken(offer.rule)}</p>
                  </div>
                  <Control
                    label={offer.label}
                    value={offer.value}
                    disabled={!props.house.holds}
                    onPress={() => {
                      props.editing.change(offer.formula);
                      props.onSwapped();
                    }}
                  />
                </li>
              )}
            </For>
          </ul>
        </Words>
      }
    />
  );
}
