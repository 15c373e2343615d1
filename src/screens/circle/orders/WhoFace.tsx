import { createMemo, For, type JSX } from 'solid-js';
import type { Neighbour } from '../../../core/circle/circle.ts';
import { lastOf } from '../../../core/circle/order-changes.ts';
import { orderPage } from '../../../core/speech/words/orders.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Pressable } from '../../../parts/Pressable.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import { CirclePage } from '../CirclePage.tsx';
import type { FaceProps } from '../face.ts';
import { shortWords } from './order-words.ts';

/** Whose order it is: those who are known by name, each with what they had last. */
export function WhoFace(
  props: Pick<FaceProps, 'house' | 'circle' | 'onBack'> & {
    readonly back: string;
    readonly onWho: (who: string) => void;
    readonly onNew: () => void;
  },
): JSX.Element {
  const neighbours = createMemo(() =>
    props.circle.circle().neighbours.toSorted((a, b) => a.name.localeCompare(b.name)),
  );
  const last = ({ id }: Neighbour): string => {
    const had = lastOf(props.circle.circle(), id);
    return had ? fill(orderPage.lastTime, { line: shortWords(props.house, had.lines) }) : '';
  };
  return (
    <CirclePage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={orderPage.who}
          detail={neighbours().length === 0 ? orderPage.whoNone : undefined}
        >
          <div class="orders-grid circle-top" role="group" aria-label={orderPage.who}>
            <For each={neighbours()}>
              {(one) => (
                <Pressable
                  class="orders-entry"
                  fresh={`who ${one.id}`}
                  onPress={() => props.onWho(one.id)}
                >
                  <b>{one.name}</b>
                  <span>{unbroken(last(one))}</span>
                </Pressable>
              )}
            </For>
          </div>
        </Words>
      }
      controls={<Control label={orderPage.newWho} onPress={() => props.onNew()} />}
    />
  );
}
