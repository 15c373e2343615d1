import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Order } from '../../../core/circle/circle.ts';
import type { DayKey } from '../../../core/circle/day-key.ts';
import { ordersOn, totalsOf } from '../../../core/circle/orders.ts';
import { circle as circleWords } from '../../../core/speech/en/circle.ts';
import { orderPage } from '../../../core/speech/en/orders.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Pressable } from '../../../parts/Pressable.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { CircleClock } from '../circle-clock.ts';
import { CirclePage } from '../CirclePage.tsx';
import type { FaceProps } from '../face.ts';
import type { CapSays } from './cap-says.ts';
import { dayCount, linesWords, nameOf, totalWords } from './order-words.ts';
import { TakeBack } from './TakeBack.tsx';
import './Orders.css';

/** A bake day: what is to be baked in all, who has what of it, and what else is done with it. */
export function DayFace(
  props: Pick<FaceProps, 'house' | 'circle' | 'onBack'> & {
    readonly clock: CircleClock;
    readonly day: DayKey;
    readonly cap?: CapSays | undefined;
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
  const told = ({ paid, handed, standing }: Order): string =>
    [
      ...(handed === null ? [] : [orderPage.handed]),
      ...(paid ? [orderPage.paid] : []),
      ...(standing === null ? [] : [orderPage.weekly]),
    ].join(', ');
  const isOver = (): boolean => props.day < props.clock.today();
  return (
    <CirclePage
      wide
      back={circleWords.title}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={fill(orderPage.title, { date: date() })}
          detail={
            orders().length === 0
              ? orderPage.noneHere
              : dayCount({ loaves: loaves(), orders: orders() })
          }
        >
          <ul class="orders-totals circle-top" aria-label={orderPage.totals}>
            <For each={totals()}>{(total) => <li>{totalWords(props.house, total)}</li>}</For>
            <Show when={props.cap?.line(props.day)}>
              {(line) => <li class="orders-cap">{line()}</li>}
            </Show>
          </ul>
          <div class="orders-grid" role="group" aria-label={orderPage.orders}>
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
                  <span>{linesWords(props.house, order.lines)}</span>
                  <Show when={told(order)}>{(words) => <span>{words()}</span>}</Show>
                </Pressable>
              )}
            </For>
          </div>
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
