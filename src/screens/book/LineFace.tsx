import { createSignal, Show, type JSX } from 'solid-js';
import type { Formula } from '../../core/formula/formula.ts';
import { dropFlour } from '../../core/formula/set-flours.ts';
import { bookLines } from '../../core/speech/words/book.ts';
import { bookParts } from '../../core/speech/words/book-parts.ts';
import { fill } from '../../core/speech/fill.ts';
import { keyedWeight } from '../../core/speech/keyed.ts';
import { showNumber } from '../../core/speech/numbers.ts';
import { tellNotice } from '../../core/speech/tell-notice.ts';
import { Control } from '../../parts/Control.tsx';
import type { House } from '../house.ts';
import type { Editing } from './editing.ts';
import { linesOf, percentFor, withLine, type LineKey } from './lines.ts';
import { NumberFace } from './NumberFace.tsx';
import { isPart, type PartKey } from './parts.ts';
import { SwapControl, SwapFace } from './SwapFace.tsx';
import { lineName, lineValue, scaleGrams } from './words.ts';

/** What is usual of a line, %, where the trade says so; formula-warnings.ts has where from. */
const USUAL: Partial<Record<LineKey, { readonly least: number; readonly most: number }>> = {
  salt: { least: 1.5, most: 2.5 },
  water: { least: 55, most: 95 },
};

/** One line of a formula, keyed in percent or in grams: the other follows while it is typed. */
export function LineFace(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly line: LineKey;
  readonly back: string;
  /** What else there is to say of a flour or a filling. */
  readonly onPart: (part: PartKey) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [grams, setGrams] = createSignal(false);
  const [swaps, setSwaps] = createSignal(false);
  const units = () => props.house.ways();
  const formula = () => props.editing.formula();
  const dough = () => props.editing.scaled().dough;
  const line = () => linesOf(formula(), dough()).find(({ key }) => key === props.line)!;
  const keyed = () => keyedWeight({ least: 0, most: 20_000 }, units());
  const percentOf = (typed: number): number | null =>
    grams() ? percentFor(formula(), props.line, keyed().record(typed), dough()) : typed;
  const made = (typed: number) => {
    const percent = percentOf(typed);
    return percent === null ? null : withLine(formula(), props.line, percent);
  };
  /** The other of the two, and what is usual where it is not; null: there is no such dough. */
  const tell = (typed: number): string | null => {
    const percent = percentOf(typed);
    const { formula: next } = made(typed) ?? {};
    if (percent === null || !next) return null;
    const its = linesOf(next, dough()).find(({ key }) => key === props.line)!;
    const value = grams()
      ? fill(bookLines.percent, { percent: showNumber(percent, 2) })
      : its.grams === null
        ? fill(bookLines.percent, { percent: showNumber(percent) })
        : scaleGrams(its.grams, props.line, units());
    const usual = formula().convention === 'bowl' ? undefined : USUAL[props.line];
    return usual && (percent < usual.least || percent > usual.most)
      ? fill(bookLines.usual, { value, ...usual })
      : fill(bookLines.is, { value });
  };
  const isFlour = (): boolean => props.line.startsWith('flour:');
  const why = (): string => {
    if (line().least === line().most) return bookLines.one;
    const value = fill(bookLines.was, { value: lineValue(line(), units()) });
    return isFlour() ? fill(bookParts.sharing, { value }) : value;
  };
  const unit = () => (grams() ? keyed().unit : '%');
  const id = () => props.line.slice(props.line.indexOf(':') + 1);
  const part = (): PartKey | undefined => (isPart(props.line) ? props.line : undefined);
  /** The formula without this line; null: it is one that must stay. */
  const without = (): Formula | null => {
    const old = formula();
    if (isFlour()) return dropFlour(old, id());
    if (props.line === 'secondWater')
      return old.secondWater > 0 ? { ...old, secondWater: 0 } : null;
    // A filling's page has it (PartFace): three presses is what there is room for.
    return null;
  };
  const takeOut = (): void => {
    // Left before it is gone: nothing here is asked for a line that is no more.
    const next = without()!;
    const { editing } = props;
    props.onBack();
    editing.change(next);
  };
  return (
    <Show
      when={swaps() ? null : `${grams()}`}
      keyed
      fallback={
        <SwapFace
          house={props.house}
          editing={props.editing}
          filling={id()}
          back={lineName(formula(), props.line)}
          onSwapped={() => props.onBack()}
          onBack={() => setSwaps(false)}
        />
      }
    >
      <NumberFace
        house={props.house}
        ask={fill(bookLines.ask, { name: lineName(formula(), props.line), unit: unit() })}
        unit={unit()}
        least={grams() ? 0 : line().least}
        most={grams() ? keyed().most : line().most}
        now={why()}
        tell={tell}
        back={props.back}
        onBack={() => props.onBack()}
        onTake={(typed) => {
          const next = made(typed)?.formula;
          if (next) props.editing.change(next);
          else {
            const reason = made(typed)?.reason;
            if (reason) {
              const text = tellNotice(reason, units());
              props.house.tell({ id: 'book', text, action: null });
            }
          }
        }}
        controls={
          <>
            <Show when={line().grams !== null}>
              <Control
                label={grams() ? bookLines.inPercent : bookLines.inGrams}
                onPress={() => setGrams(!grams())}
              />
            </Show>
            <Show when={props.line.startsWith('filling:')}>
              <SwapControl
                house={props.house}
                editing={props.editing}
                filling={id()}
                onPress={() => setSwaps(true)}
              />
            </Show>
            <Show when={without() !== null}>
              <Control label={bookLines.remove} onPress={takeOut} />
            </Show>
            <Show when={part()}>
              {(key) => <Control label={bookParts.about} onPress={() => props.onPart(key())} />}
            </Show>
          </>
        }
      />
    </Show>
  );
}
