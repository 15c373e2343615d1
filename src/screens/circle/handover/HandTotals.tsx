import { For, Show, type JSX } from 'solid-js';
import type { MessageRead } from '../../../core/circle/message.ts';
import type { HandTotal, PickList } from '../../../core/circle/pick-up.ts';
import { handOver, handPrint, handTotals as words } from '../../../core/speech/words/hand-over.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CirclePage } from '../CirclePage.tsx';
import { loavesShown } from './hand-read.ts';
import { softWords } from '../../../parts/soft-words.ts';

/** 'Lane wheat, 500 g': a bread, and of what weight where one was asked. */
export const breadOf = ({ bread, grams }: HandTotal, read: MessageRead): string =>
  grams === null ? read.bread(bread) : `${read.bread(bread)}, ${read.weight(grams)}`;

/** The loaves of a day by bread: how many, to cut, gone, and still here. */
export function HandTotals(props: {
  readonly list: PickList;
  readonly read: MessageRead;
  readonly onPrint: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  return (
    <CirclePage
      wide
      back={handOver.list}
      onBack={() => props.onBack()}
      words={
        <Words headline={words.title} detail={loavesShown(props.list.loaves)}>
          <table class="circle-table hand-table">
            <thead>
              <tr>
                <th scope="col">{softWords(words.bread)}</th>
                <th scope="col">{softWords(words.all)}</th>
                <th scope="col">{softWords(words.cut)}</th>
                <th scope="col">{softWords(words.handed)}</th>
                <th scope="col">{softWords(words.left)}</th>
              </tr>
            </thead>
            <tbody>
              <For each={props.list.totals}>
                {(total) => (
                  <tr>
                    <th scope="row">{softWords(breadOf(total, props.read))}</th>
                    <td>{total.count}</td>
                    <td>
                      <Show when={total.cut > 0}>{total.cut}</Show>
                    </td>
                    <td>{total.handed}</td>
                    <td>{total.count - total.handed}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </Words>
      }
      controls={<Control label={handPrint.title} onPress={() => props.onPrint()} />}
    />
  );
}
