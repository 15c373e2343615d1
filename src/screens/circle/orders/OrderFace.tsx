import { For, Show, type JSX } from 'solid-js';
import type { Order, OrderLine } from '../../../core/circle/circle.ts';
import { weekdayOf } from '../../../core/circle/day-key.ts';
import { orderFace, orderLine, orderPage } from '../../../core/speech/words/orders.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showWeight } from '../../../core/speech/weights.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CirclePage } from '../CirclePage.tsx';
import type { CircleClock } from '../circle-clock.ts';
import type { FaceProps } from '../face.ts';
import { breadName, nameOf } from './order-words.ts';
import { TakeBack } from './TakeBack.tsx';

/** Whether a change of a weekly order is of one day alone, or of all from that day on. */
export type Scope = 'day' | 'all';

/** One order of a day: what, when, paid or not; a press on each changes it. */
export function OrderFace(
  props: Pick<FaceProps, 'house' | 'circle' | 'onBack'> & {
    readonly clock: CircleClock;
    /** What the day still takes, in one line. */
    readonly room?: string | null | undefined;
    readonly order: Order;
    readonly scope: Scope;
    readonly back: string;
    readonly onScope: (scope: Scope) => void;
    readonly onLine: (at: number) => void;
    readonly onAnother: () => void;
    readonly onHour: () => void;
    readonly onPaid: (paid: boolean) => void;
    readonly onOff: () => void;
    readonly onWeekly: () => void;
  },
): JSX.Element {
  const weekday = (): string => props.clock.weekday(weekdayOf(props.order.day));
  const isWeekly = (): boolean => props.order.standing !== null;
  /** What is not as usual: whole, and as its piece comes out. */
  const how = ({ grams, cut }: OrderLine): string =>
    [
      ...(grams === null ? [] : [showWeight(grams, props.house.ways())]),
      ...(cut ? [orderLine.cutShort] : []),
    ].join(', ');
  const off = (): string =>
    !isWeekly() ? orderFace.off : props.scope === 'all' ? orderFace.end : orderFace.skip;
  return (
    <CirclePage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={fill(orderFace.title, {
            name: nameOf(props.circle.circle(), props.order.who),
            date: props.clock.date(props.order.day),
          })}
          detail={props.room ?? undefined}
        >
          <div class="circle-grid circle-top orders-lines">
            <For each={props.order.lines}>
              {(line, at) => (
                <Control
                  label={fill(orderLine.loaves, {
                    count: line.count,
                    name: breadName(props.house, line.bread),
                  })}
                  value={how(line) || undefined}
                  onPress={() => props.onLine(at())}
                />
              )}
            </For>
            <Control label={orderFace.another} onPress={() => props.onAnother()} />
            <Control
              label={orderFace.fetched}
              value={props.order.at === null ? orderPage.anyHour : props.clock.hour(props.order.at)}
              onPress={() => props.onHour()}
            />
            <Control
              label={orderFace.paid}
              value={props.order.paid ? orderFace.yes : orderFace.no}
              chosen={props.order.paid}
              onPress={() => props.onPaid(!props.order.paid)}
            />
          </div>
        </Words>
      }
      controls={
        <>
          <TakeBack house={props.house} circle={props.circle} />
          <Show
            when={isWeekly()}
            fallback={
              <Control
                label={fill(orderFace.weekly, { date: weekday() })}
                onPress={() => props.onWeekly()}
              />
            }
          >
            <Control
              label={fill(orderFace.scope, { date: weekday() })}
              value={props.scope === 'all' ? orderFace.fromHere : orderFace.onlyHere}
              onPress={() => props.onScope(props.scope === 'all' ? 'day' : 'all')}
            />
          </Show>
          <Control label={off()} onPress={() => props.onOff()} />
        </>
      }
    />
  );
}
