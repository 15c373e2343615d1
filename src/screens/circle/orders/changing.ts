import { createSignal, type Accessor } from 'solid-js';
import type { Order, Standing } from '../../../core/circle/circle.ts';
import type { DayKey } from '../../../core/circle/day-key.ts';
import {
  changedFrom,
  endedBefore,
  madeStanding,
  takenOff,
} from '../../../core/circle/order-changes.ts';
import { ordersOn, standingOrderId } from '../../../core/circle/orders.ts';
import { put } from '../../../core/circle/row.ts';
import type { FaceProps } from '../face.ts';
import { written } from '../written.ts';
import type { Scope } from './OrderFace.tsx';
import type { Taking } from './taking.ts';

/** The order that is open on its page, and each change of it as one press. */
export interface Changing {
  /** As it stands; null: it is off, or taken back. */
  readonly order: Accessor<Order | null>;
  open(order: Pick<Order, 'id'>, scope?: Scope): void;
  readonly scope: Accessor<Scope>;
  setScope(scope: Scope): void;
  /** What it has and when: of this day alone, or of all from here on. */
  set(part: Partial<Pick<Order, 'lines' | 'at'>>, then?: () => void): void;
  setPaid(paid: boolean): void;
  off(then: () => void): void;
  makeWeekly(): void;
}

export function createChanging(
  props: Pick<FaceProps, 'house' | 'circle'>,
  day: Accessor<DayKey>,
  taking: Taking,
): Changing {
  /** An order that is written anew as another's is still the one that is open. */
  const [ids, setIds] = createSignal<readonly string[]>([]);
  const [scope, setScope] = createSignal<Scope>('day');
  const order = (): Order | null =>
    ordersOn(props.circle.circle(), day()).find(({ id }) => ids().includes(id)) ?? null;
  const standing = (): Standing | null =>
    props.circle.circle().standing.find(({ id }) => id === order()?.standing) ?? null;
  const known = (id: string): void => void setIds([...ids(), id]);
  /** One that came of a standing order is written down now. */
  const own = (one: Order): Order => ({ ...one, made: one.made || props.house.now() });
  return {
    order,
    open({ id }, first = 'day') {
      setIds([id]);
      setScope(first);
    },
    scope,
    setScope,
    set(part, then) {
      const before = order();
      if (before === null) return;
      const next = { ...before, ...part };
      const its = standing();
      if (scope() === 'day' || its === null) {
        taking.propose({ next: own(next), before, then });
        return;
      }
      const freshId = props.circle.freshId();
      known(standingOrderId(freshId, day()));
      taking.propose({
        next,
        before,
        change: () => changedFrom(props.circle.circle(), its, day(), part, freshId),
        then,
      });
    },
    setPaid(paid) {
      const one = order();
      if (one === null) return;
      const deed = props.circle.write({ puts: [put('orders', { ...own(one), paid })] });
      void written(props.house, deed);
    },
    off(then) {
      const one = order();
      if (one === null) return;
      const its = standing();
      const all = scope() === 'all' && its !== null;
      const circle = props.circle.circle();
      const change = all ? endedBefore(circle, its, day()) : takenOff(circle, one);
      void written(props.house, props.circle.write(change)).then((done) => {
        if (done) then();
      });
    },
    makeWeekly() {
      const one = order();
      if (one === null) return;
      const id = props.circle.freshId();
      known(standingOrderId(id, one.day));
      void written(props.house, props.circle.write(madeStanding(one, id)));
    },
  };
}
