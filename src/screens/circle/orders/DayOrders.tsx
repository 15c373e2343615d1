import { createMemo, createSignal, Match, Switch, untrack, type JSX } from 'solid-js';
import { NAME_LETTERS } from '../../../core/circle/name.ts';
import type { Order } from '../../../core/circle/circle.ts';
import type { DayKey } from '../../../core/circle/day-key.ts';
import { ownName } from '../../../core/circle/neighbours.ts';
import { withLines } from '../../../core/circle/order-changes.ts';
import { put } from '../../../core/circle/row.ts';
import { neighbourWords } from '../../../core/speech/words/circle.ts';
import { orderFace, orderPage } from '../../../core/speech/words/orders.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Words } from '../../../parts/Words.tsx';
import { createCircleClock } from '../circle-clock.ts';
import { CirclePage } from '../CirclePage.tsx';
import { alreadyTold } from '../already-told.ts';
import type { FaceProps } from '../face.ts';
import { TextFace } from '../../TextFace.tsx';
import { written } from '../written.ts';
import { AskFace } from './AskFace.tsx';
import type { CapSays } from './cap-says.ts';
import { createChanging } from './changing.ts';
import { DayFace } from './DayFace.tsx';
import { HourFace } from './HourFace.tsx';
import { LineFace } from './LineFace.tsx';
import { nameOf } from './order-words.ts';
import { OrderFace, type Scope } from './OrderFace.tsx';
import { TakeBack } from './TakeBack.tsx';
import { createTaking } from './taking.ts';
import { BreadGrid, WhatFace } from './WhatFace.tsx';
import { WhoFace } from './WhoFace.tsx';

type Plain = 'day' | 'who' | 'name' | 'order' | 'another' | 'hour';
type At =
  | { readonly [A in Plain]: { readonly at: A } }[Plain]
  | { readonly at: 'what'; readonly who: string }
  | { readonly at: 'line'; readonly line: number };

/** A bake day and its orders: from one to a new one or to the parts of one, and back. */
export function DayOrders(
  props: FaceProps & {
    readonly day: DayKey;
    /** It opens on this order of the day, and goes back from there. */
    readonly order?: string | undefined;
    readonly scope?: Scope | undefined;
    readonly cap?: CapSays | undefined;
    /** Presses on the day's page to what else is done with it. */
    readonly turns?: ((today: DayKey) => JSX.Element) | undefined;
  },
): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- the house is one
  const clock = createCircleClock(props.house);
  const taking = createTaking(props, clock, () => props.cap);
  const changing = createChanging(props, () => props.day, taking);
  const first = untrack((): At => ({ at: props.order === undefined ? 'day' : 'order' }));
  const [at, setAt] = createSignal<At>(first);
  untrack(() => {
    if (props.order !== undefined) changing.open({ id: props.order }, props.scope);
  });
  const go = (to: Plain): void => void setAt({ at: to });
  const leave = (): void => (first.at === 'order' ? props.onBack() : go('day'));
  const date = (): string => fill(orderPage.title, { date: clock.date(props.day) });
  const title = (): string =>
    fill(orderFace.title, {
      name: nameOf(props.circle.circle(), changing.order()?.who ?? ''),
      date: clock.date(props.day),
    });
  const show = (order: Order): void => {
    changing.open(order);
    go('order');
  };
  const take = (who: string, { lines, at: hour }: Pick<Order, 'lines' | 'at'>): void =>
    taking.propose({
      next: {
        id: props.circle.freshId(),
        who,
        day: props.day,
        at: hour,
        lines,
        paid: false,
        handed: null,
        made: props.house.now(),
        standing: null,
      },
      before: null,
      then: show,
    });
  const add = async (typed: string): Promise<void> => {
    const name = ownName(props.circle.circle(), typed);
    if (name === '') return;
    const one = { id: props.circle.freshId(), name, watch: [] };
    const deed = props.circle.write({ puts: [put('neighbours', one)] });
    if (await written(props.house, deed)) setAt({ at: 'what', who: one.id });
  };
  const is = <A extends At['at']>(which: A): Extract<At, { readonly at: A }> | null => {
    const now = at();
    return now.at === which ? (now as Extract<At, { readonly at: A }>) : null;
  };
  const order = changing.order;
  const room = createMemo(() => props.cap?.line(props.day) ?? null);
  const line = (): number => is('line')?.line ?? -1;
  return (
    <Switch
      fallback={
        <CirclePage
          back={date()}
          onBack={leave}
          words={<Words headline={orderFace.gone} detail={orderFace.goneDetail} />}
          controls={<TakeBack house={props.house} circle={props.circle} />}
        />
      }
    >
      <Match when={taking.asking()} keyed>
        {(asking) => <AskFace asking={asking} taking={taking} />}
      </Match>
      <Match when={is('day')}>
        <DayFace
          house={props.house}
          circle={props.circle}
          clock={clock}
          day={props.day}
          room={room()}
          turns={props.turns?.(clock.today())}
          onOrder={show}
          onAdd={() => go('who')}
          onBack={() => props.onBack()}
        />
      </Match>
      <Match when={is('who')}>
        <WhoFace
          house={props.house}
          circle={props.circle}
          back={date()}
          onWho={(who) => setAt({ at: 'what', who })}
          onNew={() => go('name')}
          onBack={() => go('day')}
        />
      </Match>
      <Match when={is('name')}>
        <TextFace
          page={CirclePage}
          ask={neighbourWords.nameAsk}
          detail={neighbourWords.nameDetail}
          begun=""
          lines="one"
          most={NAME_LETTERS}
          blank={false}
          back={orderPage.who}
          care={(typed) => alreadyTold(props, typed, null)}
          onTake={(name) => void add(name)}
          onBack={() => go('who')}
        />
      </Match>
      <Match when={is('what')}>
        {(its) => (
          <WhatFace
            house={props.house}
            circle={props.circle}
            clock={clock}
            who={its().who}
            room={room()}
            back={orderPage.who}
            onTake={(had) => take(its().who, had)}
            onBack={() => go('who')}
          />
        )}
      </Match>
      <Match when={is('order') && order()}>
        {(its) => (
          <OrderFace
            house={props.house}
            circle={props.circle}
            clock={clock}
            order={its()}
            room={room()}
            scope={changing.scope()}
            back={date()}
            onScope={(scope) => changing.setScope(scope)}
            onLine={(number) => setAt({ at: 'line', line: number })}
            onAnother={() => go('another')}
            onHour={() => go('hour')}
            onPaid={(paid) => changing.setPaid(paid)}
            onOff={() => changing.off(leave)}
            onWeekly={() => changing.makeWeekly()}
            onBack={leave}
          />
        )}
      </Match>
      <Match when={order()?.lines[line()]}>
        {(its) => (
          <LineFace
            house={props.house}
            line={its()}
            back={title()}
            onChange={(next) => changing.set({ lines: order()!.lines.with(line(), next) })}
            onOff={
              order()!.lines.length > 1
                ? () => {
                    const lines = order()!.lines.toSpliced(line(), 1);
                    go('order');
                    changing.set({ lines });
                  }
                : undefined
            }
            onBack={() => go('order')}
          />
        )}
      </Match>
      <Match when={is('another') && order()}>
        {(its) => (
          <CirclePage
            wide
            back={title()}
            onBack={() => go('order')}
            words={
              <Words headline={orderFace.another}>
                <BreadGrid
                  house={props.house}
                  label={orderFace.another}
                  onBread={(bread) => {
                    const more = [{ bread, count: 1, grams: null, cut: false }];
                    const { lines } = its();
                    go('order');
                    changing.set({ lines: withLines(lines, more) });
                  }}
                />
              </Words>
            }
          />
        )}
      </Match>
      <Match when={is('hour') && order()}>
        {(its) => (
          <HourFace
            circle={props.circle}
            clock={clock}
            at={its().at}
            back={title()}
            onHour={(hour) => {
              go('order');
              changing.set({ at: hour });
            }}
            onShift={(hour) => changing.set({ at: hour })}
            onBack={() => go('order')}
          />
        )}
      </Match>
    </Switch>
  );
}
