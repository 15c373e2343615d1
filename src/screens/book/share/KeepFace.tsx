import { createMemo, createSignal, For, type JSX } from 'solid-js';
import type { Formula } from '../../../core/formula/formula.ts';
import { freeId } from '../../../core/records/book.ts';
import { shareAsk, shareIn } from '../../../core/speech/words/share.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showNumber } from '../../../core/speech/numbers.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { showPart } from '../../../core/speech/show-part.ts';
import { Control } from '../../../parts/Control.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { BookPage } from '../BookPage.tsx';
import { unusual } from '../unusual.ts';
import { Warnings } from '../Warnings.tsx';
import { madeHow } from '../words.ts';
import './Share.css';

const tenth = (value: number): string => showNumber(Math.round(value * 10) / 10);

/** Formulas told one by one; of more, those alone that have something unusual. */
const MOST_TOLD = 12;

/** A formula in a line or two: what it is of, and how it is made. */
const tell = (formula: Formula): string => {
  const { flours, hydration, levain, salt, fillings } = formula;
  const made = fill(shareIn.flours, {
    flours: flours.map(({ name, pct }) => `${showPart(name)} ${tenth(pct)} %`).join(', '),
    water: tenth(hydration),
    pff: tenth(levain.pff * 100),
    salt: tenth(salt),
  });
  const of = fillings.map(({ name, pct }) => `${showPart(name)} ${tenth(pct)} %`).join(', ');
  const filled = of === '' ? shareIn.plain : fill(shareIn.fillings, { fillings: of });
  return `${made}; ${filled}; ${madeHow(formula)}.`;
};

/**
 * Formulas that came from elsewhere, shown before they are kept, with what is unusual of each in words;
 * each gets an id of its own.
 */
export function KeepFace(props: {
  readonly house: House;
  readonly formulas: readonly Formula[];
  /** It came as a sheet, which names no allergens. */
  readonly fromSheet?: boolean;
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  const [kept, setKept] = createSignal(0);
  const [failed, setFailed] = createSignal(false);
  const isDone = (): boolean => kept() === props.formulas.length;
  const isOne = (): boolean => props.formulas.length === 1;
  const keep = async (): Promise<void> => {
    setFailed(false);
    for (const formula of props.formulas.slice(kept())) {
      const id = freeId(formula.name, props.house.book());
      const done = await props.house.keepFormula({ ...formula, id, version: 1 });
      if (done === null) {
        setFailed(true);
        return;
      }
      setKept(kept() + 1);
    }
  };
  const ask = (): string =>
    isOne() ? shareIn.one : fill(shareIn.many, { count: props.formulas.length });
  const headline = (): string => (isDone() ? shareIn.kept : failed() ? shareIn.notKept : ask());
  const told = createMemo(() =>
    props.formulas
      .map((formula) => ({ formula, warnings: unusual(formula, props.house.ways()) }))
      .filter(({ warnings }, i) => i < MOST_TOLD || warnings.length > 0),
  );
  return (
    <BookPage
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={headline()}
          detail={shareIn.fresh}
          care={props.fromSheet ? shareAsk.allergens : undefined}
        >
          <For each={told()}>
            {({ formula, warnings }) => (
              <>
                <p class="share-group">
                  {showBread(formula.name)}: {tell(formula)}
                </p>
                <Warnings of={warnings} />
              </>
            )}
          </For>
        </Words>
      }
      slab={
        isDone() ? undefined : (
          <Slab
            label={isOne() ? shareIn.keep : shareIn.keepAll}
            then={shareIn.then}
            fresh={shareIn.keep}
            disabled={!props.house.holds}
            onPress={() => void keep()}
          />
        )
      }
      controls={
        isDone() ? undefined : <Control label={shareIn.no} onPress={() => props.onBack()} />
      }
    />
  );
}
