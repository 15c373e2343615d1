import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import type { Order } from '../../../core/circle/circle.ts';
import type { PickList } from '../../../core/circle/pick-up.ts';
import {
  handOver as words,
  handMessage,
  handTotals,
} from '../../../core/speech/words/hand-over.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Pressable } from '../../../parts/Pressable.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import { CirclePage } from '../CirclePage.tsx';
import { handRow, type HandRow, type RowRead } from './hand-row.ts';

/** One order: a press on it is handed over, the one beside it paid; pressed again they are taken back. */
function Row(props: {
  readonly row: HandRow;
  readonly disabled: boolean;
  readonly onTick: () => void;
  readonly onPay: () => void;
}): JSX.Element {
  return (
    <li class="hand-row whole-row">
      <Pressable
        class="hand-tick"
        fresh={props.row.id}
        chosen={props.row.handed !== null}
        disabled={props.disabled}
        onPress={() => props.onTick()}
      >
        <i class="hand-box" aria-hidden="true" />
        <span class="hand-words">
          <span class="hand-who">
            <b>{`${props.row.hour} ${props.row.name}`}</b>
            <Show when={props.row.handed}>{(handed) => <span>{handed()}</span>}</Show>
          </span>
          <For each={props.row.lines}>{(line) => <span>{unbroken(line)}</span>}</For>
          <For each={props.row.cautions}>
            {(caution) => <span class="hand-care barred">{unbroken(caution)}</span>}
          </For>
          <Show when={props.row.warm}>
            {(warm) => <span class="hand-care barred">{unbroken(warm())}</span>}
          </Show>
          <Show when={props.row.toPay}>{(price) => <span>{price()}</span>}</Show>
        </span>
      </Pressable>
      <Control
        label={words.paid}
        picture={<i class="hand-box" />}
        name={fill(words.payment, { name: props.row.name })}
        fresh={props.row.id}
        chosen={props.row.paid}
        disabled={props.disabled}
        onPress={() => props.onPay()}
      />
    </li>
  );
}

/** Who comes for what on one day, ticked off as it goes. */
export function HandList(props: {
  readonly list: PickList;
  readonly read: RowRead;
  /** In a page that only shows the kitchen of another nothing is ticked. */
  readonly holds: boolean;
  readonly back: string;
  readonly onChange: (id: string, change: (order: Order) => Order) => void;
  readonly onOpen: (face: 'totals' | 'message') => void;
  readonly onBack: () => void;
  readonly now: () => number;
}): JSX.Element {
  /** Only these: whoever was still to come when that was pressed; ticked now, they stay to be taken back. */
  const [only, setOnly] = createSignal<ReadonlySet<string> | null>(null);
  const rows = createMemo((): ReadonlyMap<string, HandRow> => {
    const all = props.list.hours.flatMap(({ of }) => of.map((one) => handRow(one, props.read)));
    return new Map(all.map((row) => [row.id, row]));
  });
  const ids = createMemo(
    () => [...rows().keys()].filter((id) => only()?.has(id) ?? true),
    undefined,
    {
      equals: (a, b) => a.join('\n') === b.join('\n'),
    },
  );
  const headline = (): string => {
    const count = props.list.toCome.length;
    if (rows().size === 0) return words.title;
    return count === 0 ? words.allGone : fill(words.toCome, { count });
  };
  const tick = (id: string): void => {
    const now = props.now();
    props.onChange(id, (order) => ({ ...order, handed: order.handed === null ? now : null }));
  };
  const pay = (id: string): void =>
    props.onChange(id, (order) => ({ ...order, paid: !order.paid }));
  const toCome = (): void =>
    void setOnly(only() === null ? new Set(props.list.toCome.map(({ order }) => order.id)) : null);
  return (
    <CirclePage
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={headline()} detail={rows().size === 0 ? words.none : undefined}>
          <ul class="hand-list" aria-label={words.list}>
            <For each={ids()}>
              {(id) => (
                <Show when={rows().get(id)}>
                  {(row) => (
                    <Row
                      row={row()}
                      disabled={!props.holds}
                      onTick={() => tick(id)}
                      onPay={() => pay(id)}
                    />
                  )}
                </Show>
              )}
            </For>
          </ul>
        </Words>
      }
      controls={
        <Show when={rows().size > 0}>
          <Control
            label={only() === null ? words.stillHere : words.everyone}
            fresh={words.stillHere}
            onPress={() => toCome()}
          />
          <Control label={handTotals.open} onPress={() => props.onOpen('totals')} />
          <Control label={handMessage.open} onPress={() => props.onOpen('message')} />
        </Show>
      }
    />
  );
}
