import type { JSX } from 'solid-js';
import { bench } from '../../core/speech/words/bench.ts';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { DayPage } from './DayPage.tsx';

/** A page of the Day that asks or tells one thing, and goes back to what that belongs to. */
export function AsksPage(props: {
  readonly house: House;
  readonly headline: string;
  readonly detail?: string | undefined;
  /** What it goes back to. */
  readonly back: string;
  /** Told from other pages: what is new is armed anew. The headline, where nothing else is. */
  readonly fresh?: string | number | boolean;
  readonly controls?: JSX.Element;
  readonly children: JSX.Element;
  readonly onBack: () => void;
}): JSX.Element {
  return (
    <DayPage
      caption={props.house.caption()}
      words={
        <Words headline={props.headline} detail={props.detail}>
          {props.children}
        </Words>
      }
      slab={
        <Slab
          label={bench.thatsIt}
          then={props.back}
          fresh={props.fresh ?? props.headline}
          onPress={() => props.onBack()}
        />
      }
      controls={props.controls}
    />
  );
}
