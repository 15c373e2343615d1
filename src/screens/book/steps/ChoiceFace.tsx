import { createMemo, For, type JSX } from 'solid-js';
import type { ChangedProcess } from '../../../core/formula/process-changes.ts';
import { tellNotice } from '../../../core/speech/tell-notice.ts';
import { Tiles, type TileOption } from '../../../parts/Tiles.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { BookPage } from '../BookPage.tsx';
import type { Editing } from '../editing.ts';
import { Warnings } from '../Warnings.tsx';

/** One way that a step may go. */
export interface Choice {
  readonly value: string;
  readonly label: string;
  readonly means: string;
  /** The process with it, or why it is not on offer. */
  readonly made: ChangedProcess;
}

/**
 * The ways of one step, side by side; what is not on offer stands there with its reason in a sentence.
 * The numbers that come with a way are pressed under it.
 */
export function ChoiceFace(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly title: string;
  readonly care?: string | undefined;
  readonly told?: readonly string[];
  readonly choices: readonly Choice[];
  readonly chosen: string;
  readonly back: string;
  readonly onBack: () => void;
  readonly controls?: JSX.Element;
}): JSX.Element {
  const reasons = (): readonly string[] => [
    ...new Set(
      props.choices.flatMap(({ made }) =>
        made.process === null ? [tellNotice(made.reason, props.house.ways())] : [],
      ),
    ),
  ];
  /** The same tiles as long as they say the same: a press leaves the others where hands found them. */
  const options = createMemo(
    (): readonly TileOption[] =>
      props.choices.map(({ value, label, means, made }) => ({
        ...{ value, label, means: unbroken(means) },
        off: !props.house.holds || made.process === null,
      })),
    [],
    { equals: (a, b) => JSON.stringify(a) === JSON.stringify(b) },
  );
  const choose = (value: string): void => {
    const process = props.choices.find((one) => one.value === value)?.made.process;
    if (process && value !== props.chosen) {
      props.editing.change({ ...props.editing.formula(), process });
    }
  };
  return (
    <BookPage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={props.title} care={props.care}>
          <Warnings of={props.told ?? []} />
          <For each={reasons()}>{(reason) => <p class="act-detail">{unbroken(reason)}</p>}</For>
          <div class="book-choice book-top">
            <Tiles
              label={props.title}
              options={options()}
              chosen={props.chosen}
              onChoose={choose}
            />
          </div>
        </Words>
      }
      controls={props.controls}
    />
  );
}
