import { createSignal, type Accessor } from 'solid-js';
import { checkOrder, type OrderChecked } from '../../../core/circle/check-order.ts';
import type { Order } from '../../../core/circle/circle.ts';
import { withLines } from '../../../core/circle/order-changes.ts';
import { put, type Change } from '../../../core/circle/row.ts';
import type { Notice } from '../../../core/formula/notice.ts';
import { tellOrder } from '../../../core/speech/tell-order.ts';
import type { CircleClock } from '../circle-clock.ts';
import type { FaceProps } from '../face.ts';
import { written } from '../written.ts';
import type { CapSays } from './cap-says.ts';
import { breadsOf } from './order-words.ts';

/** An order as it is to be, and how it is written. */
interface Proposed {
  readonly next: Order;
  /** What stands of it already; null: it is new. What was answered for that is not asked again. */
  readonly before: Order | null;
  /** What was answered besides. */
  readonly answered?: readonly string[] | undefined;
  /** Left out: it is put among the orders. */
  readonly change?: ((next: Order) => Change) | undefined;
  /** Once it is written; with the order that it came to be part of. */
  readonly then?: ((order: Order) => void) | undefined;
}

/** One question before an order is taken, or why it is not. */
export type Asking =
  | { readonly kind: 'refused'; readonly text: string }
  | { readonly kind: 'ask' | 'watch'; readonly text: string }
  | { readonly kind: 'twice'; readonly text: string; readonly already: Order };

export interface Taking {
  readonly asking: Accessor<Asking | null>;
  /** Writes it at once where nothing is asked. */
  propose(what: Proposed): void;
  /** It is taken all the same: the next question, or it is written. */
  yes(): void;
  /** Its bread is put to the order that is there. */
  addTo(): void;
  no(): void;
}

const ofWatch = ({ key }: Notice): boolean => key.startsWith('watch');

/** From a press to a written order: refused, asked again, or written. */
export function createTaking(
  props: Pick<FaceProps, 'house' | 'circle'>,
  clock: CircleClock,
  cap: () => CapSays | undefined,
): Taking {
  const [asks, setAsks] = createSignal<readonly Asking[]>([]);
  let proposed: Proposed | null = null;
  let asked: readonly Asking[] = [];

  const check = (order: Order): OrderChecked =>
    checkOrder(order, {
      circle: props.circle.circle(),
      breads: breadsOf(props.house),
      today: clock.today(),
      minute: clock.minute(),
    });
  const tell = (notice: Notice): string => tellOrder(notice, props.house.ways(), clock);
  const asksOf = (order: Order): readonly Asking[] => {
    const { asks: notices, already } = check(order);
    const own = notices.map((notice): Asking => {
      const text = tell(notice);
      if (notice.key === 'orderTwice') return { kind: 'twice', text, already: already! };
      return { kind: ofWatch(notice) ? 'watch' : 'ask', text };
    });
    const full = (cap()?.asks(order) ?? []).map((text): Asking => ({ kind: 'ask', text }));
    return [...own, ...full];
  };
  const write = async ({ next, change, then }: Proposed): Promise<void> => {
    const deed = change?.(next) ?? { puts: [put('orders', next)] };
    if (await written(props.house, props.circle.write(deed))) then?.(next);
  };
  const propose = (what: Proposed): void => {
    const { refused } = check(what.next);
    if (refused) {
      proposed = null;
      setAsks([{ kind: 'refused', text: tell(refused) }]);
      return;
    }
    const before = what.before === null ? [] : asksOf(what.before).map(({ text }) => text);
    const answered = [...before, ...(what.answered ?? [])];
    const open = asksOf(what.next).filter(({ text }) => !answered.includes(text));
    proposed = what;
    asked = open;
    if (open.length === 0) void write(what);
    else setAsks(open);
  };
  return {
    asking: () => asks()[0] ?? null,
    propose,
    yes() {
      const rest = asks().slice(1);
      setAsks(rest);
      if (rest.length === 0 && proposed) void write(proposed);
    },
    addTo() {
      const [first] = asks();
      if (first?.kind !== 'twice' || !proposed) return;
      const { already } = first;
      const made = already.made || proposed.next.made;
      const next = { ...already, made, lines: withLines(already.lines, proposed.next.lines) };
      const { then } = proposed;
      const answered = asked.slice(0, asked.length - asks().length).map(({ text }) => text);
      setAsks([]);
      propose({ next, before: already, answered, then: () => then?.(next) });
    },
    no() {
      proposed = null;
      setAsks([]);
    },
  };
}
