import { Show, type JSX } from 'solid-js';
import { bench } from '../../core/speech/words/bench.ts';
import { starterWords as words } from '../../core/speech/words/starter.ts';
import { Slab } from '../../parts/Slab.tsx';
import type { House } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';
import { FeedWords, makeFeed, WarmthControl } from '../StarterFeed.tsx';
import { starterName } from '../starter-view.ts';

/** Tells a feed; a ratio pressed is a feed taken down, and the page goes back. */
export function StarterFeedPage(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- the house is one, and going back is a handler
  const feed = makeFeed(props.house, () => props.onBack());
  const name = () => starterName(props.house.kitchen().starter);
  return (
    <KitchenPage
      back={name()}
      onBack={() => props.onBack()}
      words={<FeedWords house={props.house} feed={feed} />}
      slab={
        feed.asksWarmth() ? (
          <Slab
            label={bench.thatsIt}
            then={words.feedAsk}
            fresh="warmth"
            disabled={feed.celsius() === null}
            onPress={() => feed.warmthTold()}
          />
        ) : (
          <Slab label={words.close} then={name()} fresh="feed" onPress={() => props.onBack()} />
        )
      }
      controls={
        <Show when={!feed.asksWarmth()}>
          <WarmthControl house={props.house} feed={feed} />
        </Show>
      }
    />
  );
}
