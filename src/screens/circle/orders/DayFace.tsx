import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Order } from '../../../core/circle/circle.ts';
import type { DayKey } from '../../../core/circle/day-key.ts';
import { ordersOn, totalsOf } from '../../../core/circle/orders.ts';
import { circle as circleWords } from '../../../core/speech/words/circle.ts';
import { orderPage } from '../../../core/speech/words/orders.ts';
import { shown } from '../../../core/speech/facts.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Pressable } from '../../../parts/Pressable.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import type { CircleClock } from '../circle-clock.ts';
import { CirclePage } from '../CirclePage.tsx';
import type { FaceProps } from '../face.ts';
import { briefly, nameOf, totalWords } from './order-words.ts';
import { TakeBack } from './TakeBack.tsx';
import './Orders.css';

/** A bake day: what is to be baked in all, who has what of it, and what else is done with it. */
export function DayFace(
  props: Pick<FaceProps, 'house' | 'circle' | 'onBack'> & {
    readonly clock: CircleClock;
    readonly day: DayKey;
    /** What the day still takes, in one line. */
    readonly room?: string | null | undefined;
    /** Presses to the day's other pages. */
    readonly turns?: JSX.Element;
    readonly onOrder: (order: Order) => void;
    readonly onAdd: () => void;
  },
): JSX.Element {
  const circle = () => props.circle.circle();
  const orders = createMemo(() => ordersOn(circle(), props.day));
  const totals = createMemo(() => totalsOf(orders()));
  const loaves = (): number => totals().reduce((sum, { count }) => sum + count, 0);
  const date = (): string => props.clock.date(props.day);
  const has = ({ lines, paid, handed }: Order): string =>
    [
      briefly(props.house, lines),
      ...(handed === null ? [] : [orderPage.handed]),
      ...(paid ? [orderPage.paid] : []),
    ].join(' · ');
  const isOver = (): boolean => props.day < props.clock.today();
  return (
    <CirclePage
      wide
      back={circleWords.title}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={
            orders().length === 0
              ? fill(orderPage.title, { date: date() })
              : fill(orderPage.titled, { ...shown({ loaves: loaves() }), date: date() })
          }
          detail={orders().length === 0 ? orderPage.noneHere : undefined}
        >
          <div class="orders-grid orders-day circle-top" role="group" aria-label={orderPage.orders}>
            <For each={orders()}>
              {(order) => (
                <Pressable
                  class="orders-entry"
                  fresh={order.id}
                  onPress={() => props.onOrder(order)}
                >
                  <b>
                    {order.at === null ? '' : `${props.clock.hour(order.at)} `}
                    {nameOf(circle(), order.who)}
                  </b>
                  <span>{unbroken(has(order))}</span>
                </Pressable>
              )}
            </For>
          </div>
          <ul class="orders-totals" aria-label={orderPage.totals}>
            <For each={totals()}>
              {(total) => <li>{unbroken(totalWords(props.house, total))}</li>}
            </For>
            <Show when={props.room}>{(line) => <li class="barred">{unbroken(line())}</li>}</Show>
          </ul>
        </Words>
      }
      slab={
        <Slab
          label={orderPage.add}
          then={date()}
          fresh={`add ${props.day}`}
          disabled={isOver()}
          onPress={() => props.onAdd()}
        />
      }
      controls={
        <>
          {props.turns}
          <TakeBack house={props.house} circle={props.circle} />
          <Control label={circleWords.title} onPress={() => props.onBack()} />
        </>
      }
    />
  );
}
