import { createMemo, createSignal, Match, Switch, type JSX } from 'solid-js';
import type { Order } from '../../../core/circle/circle.ts';
import type { DayKey } from '../../../core/circle/day-key.ts';
import { ordersOn } from '../../../core/circle/orders.ts';
import { pickUps } from '../../../core/circle/pick-up.ts';
import { put } from '../../../core/circle/row.ts';
import { stillWarm } from '../../../core/circle/still-warm.ts';
import type { FaceProps } from '../face.ts';
import { todayOf } from '../today.ts';
import { written } from '../written.ts';
import { formulaOf, handRead, loavesShown } from './hand-read.ts';
import { handRow, type RowRead } from './hand-row.ts';
import { HandList } from './HandList.tsx';
import { breadOf, HandTotals } from './HandTotals.tsx';
import { MessageFace } from './MessageFace.tsx';
import { PickUpPrint } from './PickUpPrint.tsx';
import type { SheetView } from './PickUpSheet.tsx';
import './HandOver.css';

type At = 'list' | 'totals' | 'print' | 'message';

/** One day's bread, handed over: the list, its totals, its paper, and a text to copy. */
export function HandOver(
  props: FaceProps & {
    readonly day: DayKey;
    /** The words on the slab that goes back: where it goes. */
    readonly back: string;
  },
): JSX.Element {
  const [at, setAt] = createSignal<At>('list');
  const toList = (): void => void setAt('list');
  const list = createMemo(() => {
    const circle = props.circle.circle();
    return pickUps(ordersOn(circle, props.day), circle.neighbours);
  });
  const isToday = (): boolean => todayOf(props.house) === props.day;
  const minute = createMemo(() => Math.floor(props.house.now() / 60_000) * 60_000);
  const warm = createMemo(() => (isToday() ? stillWarm(props.house.records(), minute()) : {}));
  const read = createMemo((): RowRead => ({
    ...handRead(props.house, props.circle.circle(), props.day),
    formula: (id) => formulaOf(props.house, id),
    warm: warm(),
    clock: (instant) => props.house.hour(instant),
  }));
  const change = (id: string, to: (order: Order) => Order): void => {
    const order = ordersOn(props.circle.circle(), props.day).find((one) => one.id === id);
    if (order === undefined) return;
    const now = props.house.now();
    // One that came of a standing order is written with the first press on it.
    const thing = to(order.made === 0 ? { ...order, made: now } : order);
    void written(props.house, props.circle.write({ puts: [put('orders', thing)] }));
  };
  const sheet = (): SheetView => {
    const now = props.house.now();
    return {
      day: read().day,
      rows: list().hours.flatMap(({ of }) => of.map((one) => handRow(one, read()))),
      totals: list().totals.map((total) => ({ ...total, name: breadOf(total, read()) })),
      loaves: loavesShown(list().loaves),
      made: `${props.house.date(now)} ${props.house.hour(now)}`,
    };
  };
  return (
    <Switch>
      <Match when={at() === 'list'}>
        <HandList
          list={list()}
          read={read()}
          holds={props.house.holds}
          back={props.back}
          now={props.house.now}
          onChange={change}
          onOpen={setAt}
          onBack={() => props.onBack()}
        />
      </Match>
      <Match when={at() === 'totals'}>
        <HandTotals list={list()} read={read()} onPrint={() => setAt('print')} onBack={toList} />
      </Match>
      <Match when={at() === 'print'}>
        <PickUpPrint view={sheet} onBack={toList} />
      </Match>
      <Match when={at() === 'message'}>
        <MessageFace house={props.house} list={list()} read={read()} onBack={toList} />
      </Match>
    </Switch>
  );
}
