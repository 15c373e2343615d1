import { Show, type JSX } from 'solid-js';
import { orderAsk } from '../../../core/speech/words/orders.ts';
import { Control } from '../../../parts/Control.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CirclePage } from '../CirclePage.tsx';
import type { Asking, Taking } from './taking.ts';

/** What is to be seen before an order is taken, one thing at a time; or why it is not taken. */
export function AskFace(props: { readonly asking: Asking; readonly taking: Taking }): JSX.Element {
  const refused = (): boolean => props.asking.kind === 'refused';
  const twice = (): boolean => props.asking.kind === 'twice';
  const care = (): boolean => props.asking.kind === 'watch';
  const slab = (): { readonly label: string; readonly press: () => void } => {
    if (refused()) return { label: orderAsk.choose, press: () => props.taking.no() };
    if (twice()) return { label: orderAsk.addTo, press: () => props.taking.addTo() };
    return { label: orderAsk.yes, press: () => props.taking.yes() };
  };
  return (
    <CirclePage
      back={orderAsk.no}
      onBack={() => props.taking.no()}
      words={
        <Words
          headline={refused() ? orderAsk.refused : orderAsk.look}
          detail={props.asking.text}
          care={care() ? orderAsk.care : undefined}
        />
      }
      slab={<Slab label={slab().label} fresh={props.asking} onPress={() => slab().press()} />}
      controls={
        <Show when={!refused()}>
          <Control label={orderAsk.no} fresh={props.asking} onPress={() => props.taking.no()} />
          <Show when={twice()}>
            <Control
              label={orderAsk.second}
              fresh={props.asking}
              onPress={() => props.taking.yes()}
            />
          </Show>
        </Show>
      }
    />
  );
}
