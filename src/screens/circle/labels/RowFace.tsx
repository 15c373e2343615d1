import { createMemo, For, Show, type JSX } from 'solid-js';
import { isKeptCold, type Wanting } from '../../../core/circle/label/wanting.ts';
import { labelPage as words, wanting as asked } from '../../../core/speech/words/label.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showAllergens } from '../../../core/speech/show-allergen.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { Control } from '../../../parts/Control.tsx';
import { Stepper } from '../../../parts/Stepper.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CirclePage } from '../CirclePage.tsx';
import { LabelCard } from './LabelCard.tsx';
import type { Labels } from './labels.ts';
import { MOST_LABELS, type LabelRow } from './rows.ts';
import './Labels.css';

const isSame = (a: Wanting, b: Wanting): boolean => JSON.stringify(a) === JSON.stringify(b);

export const daysShown = (days: number): string =>
  days === 1 ? words.days.one : fill(words.days.many, { days });

/** Labels of one kind: as they will be printed and how many, or what is asked before there are any. */
export function RowFace(props: {
  readonly labels: Labels;
  readonly row: LabelRow;
  readonly onAnswer: (wanting: Wanting) => void;
  readonly onParts: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const made = () => props.labels.made(props.row);
  const formula = () => props.labels.formula(props.row.bread);
  /** What is asked still is the same press: an answer that comes late takes none from under a finger. */
  const wanting = createMemo<readonly Wanting[]>(
    (old) => (made()?.wanting ?? []).map((next) => old.find((one) => isSame(one, next)) ?? next),
    [],
  );
  const label = () => made()?.label ?? null;
  const isCold = (): boolean => isKeptCold(formula() ?? { fillings: [] });
  const look = (): readonly string[] => {
    const its = made();
    const otherwise = props.labels.otherwise(props.row.bread);
    return [
      ...(otherwise === null ? [] : [fill(words.otherwise, { n: otherwise })]),
      ...(its?.label
        ? its.look.map(({ name, allergens }) =>
            fill(words.look, { name, allergens: showAllergens(allergens) }),
          )
        : []),
    ];
  };
  const askName = ({ key, values }: Wanting): string =>
    key === 'eatWithin' ? words.daysAsk : (values['name'] ?? '');
  return (
    <CirclePage
      wide
      back={words.print}
      onBack={() => props.onBack()}
      words={
        <Show
          when={label()}
          fallback={
            <Words headline={words.ask} detail={words.askDetail} care={words.rules}>
              <div class="circle-grid circle-top">
                <For each={wanting()}>
                  {(one) => (
                    <Control
                      label={askName(one)}
                      value={one.key === 'eatWithin' ? undefined : fill(asked[one.key], one.values)}
                      fresh={`${one.key} ${one.of?.id}`}
                      onPress={() => props.onAnswer(one)}
                    />
                  )}
                </For>
              </div>
            </Words>
          }
        >
          {(its) => (
            <Words
              headline={showBread(formula()?.name ?? '')}
              detail={isCold() ? undefined : words.rules}
              care={isCold() ? words.cold : undefined}
            >
              <div class="label-row circle-top">
                <Stepper
                  label={words.howMany}
                  value={props.labels.count(props.row)}
                  least={0}
                  most={MOST_LABELS}
                  fewer={words.fewer}
                  more={words.more}
                  onChange={(count) => props.labels.setCount(props.row, count)}
                />
                <div class="label-shown">
                  <Show when={look().length > 0}>
                    <ul class="circle-told">
                      <For each={look()}>{(line) => <li class="barred">{line}</li>}</For>
                    </ul>
                  </Show>
                  <LabelCard label={its()} />
                </div>
              </div>
            </Words>
          )}
        </Show>
      }
      controls={
        <>
          <Control label={words.answers} onPress={() => props.onParts()} />
          <Show when={label() !== null && isCold()}>
            <Control
              label={words.eatWithin}
              value={daysShown(props.labels.days(props.row.bread) ?? 0)}
              fresh={words.eatWithin}
              onPress={() => props.onAnswer({ key: 'eatWithin', of: null, values: {} })}
            />
          </Show>
        </>
      }
    />
  );
}
