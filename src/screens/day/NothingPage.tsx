import { For, type JSX } from 'solid-js';
import { dayPlan } from '../../core/speech/words/day.ts';
import { Control } from '../../parts/Control.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { DayPage } from './DayPage.tsx';
import type { Nothing, Offer } from './offers.ts';

/** Nothing fits: what stands in the way, and each change that would do as one press. */
export function NothingPage(props: {
  readonly house: House;
  readonly nothing: Nothing;
  readonly onTake: (offer: Offer) => void;
  readonly onChange: () => void;
}): JSX.Element {
  return (
    <DayPage
      wide
      caption={props.house.caption()}
      words={
        <div class="day-tape">
          <Words headline={props.nothing.headline}>
            <div class="day-lines">
              <For each={props.nothing.lines}>{(line) => <p>{line}</p>}</For>
            </div>
            <div class="day-offers">
              <For each={props.nothing.offers}>
                {(offer) => <Control label={offer.words} onPress={() => props.onTake(offer)} />}
              </For>
            </div>
          </Words>
        </div>
      }
      slab={
        <Slab
          label={dayPlan.change}
          then={dayPlan.changeThen}
          fresh="nothing"
          onPress={() => props.onChange()}
        />
      }
    />
  );
}
