import type { Component, JSX } from 'solid-js';
import { eraseWords as words } from '../core/speech/words/keepsakes.ts';
import { Control } from '../parts/Control.tsx';
import { HoldSlab } from '../parts/HoldSlab.tsx';
import { TwoTaps } from '../parts/TwoTaps.tsx';
import { Words } from '../parts/Words.tsx';
import type { SidePageProps } from './SidePage.tsx';

/** What cannot be had back is asked for by a hold, or by two taps far apart. */
export function EraseFace(props: {
  /** The page that it stands on. */
  readonly page: Component<SidePageProps>;
  readonly ask: string;
  readonly detail: string;
  /** What stays. */
  readonly care?: string | undefined;
  readonly back: string;
  readonly onErase: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- a page is one
  const Page = props.page;
  return (
    <Page
      back={props.back}
      onBack={() => props.onBack()}
      words={<Words headline={props.ask} detail={props.detail} care={props.care} />}
      slab={<HoldSlab label={words.hold} holding={words.holding} onHeld={() => props.onErase()} />}
      controls={
        <TwoTaps
          label={words.two}
          first={words.first}
          second={words.second}
          onBoth={() => props.onErase()}
          between={<Control label={words.keep} onPress={() => props.onBack()} />}
        />
      }
    />
  );
}
