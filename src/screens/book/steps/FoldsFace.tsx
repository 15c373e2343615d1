import { Show, type JSX } from 'solid-js';
import type { Formula } from '../../../core/formula/formula.ts';
import {
  withFewerFolds,
  withMoreFolds,
  type ChangedProcess,
} from '../../../core/formula/process-changes.ts';
import { bookFolds } from '../../../core/speech/words/steps.ts';
import { fill } from '../../../core/speech/fill.ts';
import { tellNotice } from '../../../core/speech/tell-notice.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { BookPage } from '../BookPage.tsx';
import type { Editing } from '../editing.ts';
import { Warnings } from '../Warnings.tsx';
import type { ChoicePage } from './choice-pages.ts';
import { NumberPresses } from './NumberPresses.tsx';
import type { NumberKey } from './step-numbers.ts';

/** '2 and a sheet' */
export function foldsTold({ process: { touches } }: Formula): string {
  const n = touches.filter(({ kind }) => kind === 'fold').length;
  if (n === touches.length) return n === 0 ? bookFolds.none : fill(bookFolds.count, { n });
  return n === 0 ? bookFolds.sheet : fill(bookFolds.both, { n });
}

/** The touches of a dough in its bulk: how many, how long apart, and where the filling goes in. */
export function FoldsFace(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly back: string;
  readonly onNumber: (key: NumberKey) => void;
  /** Where the filling goes in: what it is called, and how it stands. */
  readonly filling: ChoicePage;
  readonly onFilling: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const formula = () => props.editing.formula();
  const touches = () => formula().process.touches;
  const more = () => withMoreFolds(formula());
  const fewer = () => withFewerFolds(formula());
  const detail = (): string => {
    const { reason } = more();
    if (reason) return tellNotice(reason, props.house.ways());
    return touches().length === 0 ? bookFolds.noneDetail : bookFolds.detail;
  };
  const take = ({ process }: ChangedProcess): void => {
    if (process) props.editing.change({ ...formula(), process });
  };
  const cannot = ({ process }: ChangedProcess): boolean => process === null || !props.house.holds;
  return (
    <BookPage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={bookFolds.title} detail={detail()}>
          <Warnings of={props.editing.stepWarnings()} />
          <Show when={touches().length > 0}>
            <div class="book-grid book-lines book-top">
              <NumberPresses
                house={props.house}
                editing={props.editing}
                keys={touches().map((_, i): NumberKey => `touch ${i}`)}
                onNumber={(key) => props.onNumber(key)}
              />
            </div>
          </Show>
        </Words>
      }
      controls={
        <>
          <Control label={bookFolds.more} disabled={cannot(more())} onPress={() => take(more())} />
          <Control
            label={bookFolds.fewer}
            disabled={cannot(fewer())}
            onPress={() => take(fewer())}
          />
          <Control
            label={props.filling.title}
            value={props.filling.now}
            onPress={() => props.onFilling()}
          />
        </>
      }
    />
  );
}
