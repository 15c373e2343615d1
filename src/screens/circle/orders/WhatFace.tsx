import { createMemo, For, type JSX } from 'solid-js';
import type { Order } from '../../../core/circle/circle.ts';
import { lastOf } from '../../../core/circle/order-changes.ts';
import { orderPage } from '../../../core/speech/words/orders.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { Control } from '../../../parts/Control.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { CircleClock } from '../circle-clock.ts';
import { CirclePage } from '../CirclePage.tsx';
import type { FaceProps } from '../face.ts';
import { briefly, nameOf } from './order-words.ts';

/** The breads of the Book's list, to press one. */
export function BreadGrid(props: {
  readonly house: FaceProps['house'];
  readonly label: string;
  readonly onBread: (bread: string) => void;
}): JSX.Element {
  const breads = createMemo(() =>
    props.house.formulas().flatMap(({ formula }) => (formula ? [formula] : [])),
  );
  return (
    <div class="orders-breads circle-top" role="group" aria-label={props.label}>
      <For each={breads()}>
        {({ id, name }) => (
          <Control
            label={showBread(name)}
            fresh={`bread ${id}`}
            onPress={() => props.onBread(id)}
          />
        )}
      </For>
    </div>
  );
}

/** What somebody has of a day: as they had it last by one press, or a bread to begin with. */
export function WhatFace(
  props: Pick<FaceProps, 'house' | 'circle' | 'onBack'> & {
    readonly clock: CircleClock;
    /** What the day still takes, in one line. */
    readonly room?: string | null | undefined;
    readonly who: string;
    readonly back: string;
    readonly onTake: (had: Pick<Order, 'lines' | 'at'>) => void;
  },
): JSX.Element {
  const ask = (): string =>
    fill(orderPage.what, { name: nameOf(props.circle.circle(), props.who) });
  const last = createMemo(() => lastOf(props.circle.circle(), props.who));
  const had = ({ lines, at }: Pick<Order, 'lines' | 'at'>): string =>
    [briefly(props.house, lines), ...(at === null ? [] : [props.clock.hour(at)])].join(', ');
  return (
    <CirclePage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={ask()} detail={props.room ?? undefined}>
          <BreadGrid
            house={props.house}
            label={ask()}
            onBread={(bread) =>
              props.onTake({ lines: [{ bread, count: 1, grams: null, cut: false }], at: null })
            }
          />
        </Words>
      }
      slab={
        last() ? (
          <Slab
            label={orderPage.same}
            then={had(last()!)}
            fresh={`same ${props.who}`}
            onPress={() => props.onTake({ lines: last()!.lines, at: last()!.at })}
          />
        ) : undefined
      }
      controls={last() ? <Control label={props.back} onPress={() => props.onBack()} /> : undefined}
    />
  );
}
