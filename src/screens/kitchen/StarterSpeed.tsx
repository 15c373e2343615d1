import { createSignal, Show, type JSX } from 'solid-js';
import { starterWords as words } from '../../core/speech/words/starter.ts';
import { Control } from '../../parts/Control.tsx';
import { HoldSlab } from '../../parts/HoldSlab.tsx';
import { TwoTaps } from '../../parts/TwoTaps.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';
import { speedOf, starterName } from '../starter-view.ts';

/** How fast the starter is, what taught it, and the way to begin anew with another. */
export function StarterSpeed(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [renews, setRenews] = createSignal(false);
  const speed = () => speedOf(props.house.kitchen(), props.house.now());
  const renew = (): void => {
    void props.house.take({ kind: 'starter', did: 'renewed' });
    props.onBack();
  };
  return (
    <Show
      when={renews()}
      fallback={
        <KitchenPage
          back={starterName(props.house.kitchen().starter)}
          onBack={() => props.onBack()}
          words={
            <Words headline={speed().headline} detail={`${speed().taught} ${speed().number}`} />
          }
          controls={
            <Control
              label={words.renew}
              disabled={!props.house.holds}
              onPress={() => setRenews(true)}
            />
          }
        />
      }
    >
      <KitchenPage
        back={words.keep}
        onBack={() => setRenews(false)}
        words={<Words headline={words.renewTitle} detail={words.renewDetail} />}
        slab={
          <HoldSlab label={words.renewHold} holding={words.renewHolding} onHeld={() => renew()} />
        }
        controls={
          <TwoTaps
            label={words.renewTwo}
            first={words.renewFirst}
            second={words.renewSecond}
            onBoth={() => renew()}
            between={<Control label={words.keep} onPress={() => setRenews(false)} />}
          />
        }
      />
    </Show>
  );
}
