import { Show, type JSX } from 'solid-js';
import type { Call } from '../../machines/attention/attention.ts';
import { STARTER } from '../../machines/kitchen/starter.ts';
import { bench } from '../core/speech/words/bench.ts';
import { starterWords as words } from '../core/speech/words/starter.ts';
import { DAY } from '../core/units.ts';
import type { StarterDeed } from '../core/records/starter.ts';
import { Control } from '../parts/Control.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { Slab } from '../parts/Slab.tsx';
import type { House } from './house.ts';
import { nightOf } from './night-of.ts';
import { makePutOff } from './put-off.ts';
import { FeedWords, makeFeed, WarmthControl } from './StarterFeed.tsx';
import './starter.css';

/** What may be done about a starter that waits: fed by one press, chilled, put off by two minutes or till tomorrow. */
export default function StarterSheet(props: {
  readonly house: House;
  readonly onClose: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- the house is one, and closing is a handler
  const feed = makeFeed(props.house, () => props.onClose());
  const tend = (deed: StarterDeed): void => {
    void props.house.take({ kind: 'starter', ...deed });
    props.onClose();
  };
  const hushed = (): Call | null => {
    const { calls, heard } = props.house.kitchen().attention.context;
    return calls.find(({ who, id }) => who === STARTER && heard.includes(id)) ?? null;
  };
  // eslint-disable-next-line solid/reactivity -- asked anew each time
  const putOff = makePutOff(props.house, hushed);
  const onCounter = () => props.house.kitchen().starter.put?.where === 'counter';
  return (
    <Sheet title={words.feedAsk} headless>
      <FeedWords house={props.house} feed={feed} />
      <Show
        when={!feed.asksWarmth()}
        fallback={
          <div class="starter-slab">
            <Slab
              label={bench.thatsIt}
              then={words.feedAsk}
              fresh="warmth"
              disabled={feed.celsius() === null}
              onPress={() => feed.warmthTold()}
            />
          </div>
        }
      >
        <div class="sheet-grid">
          <Show when={onCounter()}>
            <Control
              label={words.chill}
              disabled={!props.house.holds}
              onPress={() => tend({ did: 'put', where: 'fridge', ...nightOf(props.house) })}
            />
          </Show>
          <Show when={putOff.press()}>
            {(press) => (
              <Control
                label={press().label}
                value={press().left}
                onPress={() => {
                  press().onPress();
                  props.onClose();
                }}
              />
            )}
          </Show>
          <Control
            label={words.tomorrow}
            disabled={!props.house.holds}
            onPress={() => tend({ did: 'later', until: Math.round(props.house.now() + DAY) })}
          />
          <WarmthControl house={props.house} feed={feed} />
          <Control label={words.close} onPress={() => props.onClose()} />
        </div>
      </Show>
    </Sheet>
  );
}
