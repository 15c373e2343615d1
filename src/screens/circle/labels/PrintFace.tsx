import { For, type JSX } from 'solid-js';
import { labelPage as words, onLabel } from '../../../core/speech/words/label.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { showWeight } from '../../../core/speech/weights.ts';
import { Control } from '../../../parts/Control.tsx';
import { printPage } from '../../../parts/print-page.ts';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { CirclePage } from '../CirclePage.tsx';
import type { HouseCircle } from '../../house-circle.ts';
import type { Labels } from './labels.ts';
import { LabelSheets } from './LabelSheets.tsx';
import type { LabelRow } from './rows.ts';

export const labelsShown = (count: number): string =>
  count === 1 ? words.labels.one : fill(words.labels.many, { count });

/** The labels of a bake, kind by kind, and what stands in the way of some. */
export function PrintFace(props: {
  readonly house: House;
  readonly circle: HouseCircle;
  readonly labels: Labels;
  readonly back: string;
  readonly onRow: (row: LabelRow) => void;
  readonly onWays: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const printable = () => props.labels.printable();
  const title = (row: LabelRow): string =>
    [
      showBread(props.labels.formula(row.bread)?.name ?? row.bread),
      row.grams === null ? null : showWeight(row.grams, props.house.ways()),
      row.cut ? onLabel.sliced : null,
    ]
      .filter((part) => part !== null)
      .join(' · ');
  const value = (row: LabelRow): string => {
    const made = props.labels.made(row);
    if (made === null) return words.gone;
    const asked = made.wanting.length;
    return asked > 0
      ? fill(words.toAnswer, { count: asked })
      : labelsShown(props.labels.count(row));
  };
  const then = (): string => {
    const { count, pages } = printable();
    if (count === 0) return words.first;
    if (props.circle.circle().ways.paper === 'roll') {
      return count === 1 ? words.labels.one : fill(words.onRoll, { count });
    }
    const { one, many } = words.sheets;
    if (count === 1) return words.labels.one;
    return pages.length === 1 ? fill(one, { count }) : fill(many, { count, n: pages.length });
  };
  const detail = (): string => {
    const { unanswered, tooLong } = printable();
    if (unanswered.length > 0) return fill(words.leftOut, { name: unanswered.join(', ') });
    if (tooLong.length > 0) return fill(words.tooLong, { name: tooLong.join(', ') });
    return words.rules;
  };
  const print = (): void => {
    const { pages } = printable();
    printPage(() => <LabelSheets pages={pages} />);
    // Whoever wants names on the next print says so again.
    props.labels.setNamed(false);
  };
  return (
    <CirclePage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={words.print} detail={detail()}>
          <div class="circle-grid circle-top">
            <For each={props.labels.rows()}>
              {(row) => (
                <Control
                  label={title(row)}
                  value={value(row)}
                  fresh={row.key}
                  disabled={props.labels.formula(row.bread) === null}
                  onPress={() => props.onRow(row)}
                />
              )}
            </For>
          </div>
        </Words>
      }
      slab={
        <Slab
          label={words.printIt}
          then={then()}
          fresh={words.printIt}
          disabled={printable().count === 0}
          onPress={print}
        />
      }
      controls={
        <>
          <Control label={props.back} onPress={() => props.onBack()} />
          <Control
            label={words.ways}
            value={words.papers[props.circle.circle().ways.paper]}
            fresh={words.ways}
            onPress={() => props.onWays()}
          />
          <Control
            label={words.names}
            value={props.labels.named() ? words.namesOn : words.namesOff}
            fresh={words.names}
            chosen={props.labels.named()}
            onPress={() => props.labels.setNamed(!props.labels.named())}
          />
          <Control
            label={words.bakedOn}
            value={props.labels.before() ? words.dayBefore : words.onDay}
            fresh={words.bakedOn}
            onPress={() => props.labels.setBefore(!props.labels.before())}
          />
        </>
      }
    />
  );
}
