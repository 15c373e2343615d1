import { createMemo, createSignal, Show, type JSX } from 'solid-js';
import { logPlots as words } from '../../../core/speech/words/log-plots.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Tiles } from '../../../parts/Tiles.tsx';
import { Words } from '../../../parts/Words.tsx';
import { LogPage } from '../LogPage.tsx';
import { pagedBy } from './PlotPage.tsx';

export interface Bread {
  /** The formula's id. */
  readonly formula: string;
  readonly name: string;
}

/** Breads on a page, beside all of them. */
const EACH = 5;
const ALL = '';

/** Whose bakes are plotted: all, or those of one bread. */
export function BreadFace(props: {
  readonly breads: readonly Bread[];
  readonly chosen: Bread | null;
  readonly onChoose: (bread: Bread | null) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [at, setAt] = createSignal(0);
  const paged = createMemo(() => pagedBy(props.breads.length, EACH, at()));
  const options = createMemo(() => [
    { value: ALL, label: words.all },
    ...props.breads
      .slice(paged().at * EACH)
      .slice(0, EACH)
      .map(({ formula, name }) => ({ value: formula, label: name })),
  ]);
  const title = (): string => {
    const { at: n, count } = paged();
    return count > 1 ? fill(words.page, { name: words.bread, n: n + 1, count }) : words.whichBread;
  };
  return (
    <LogPage
      wide
      back={words.toPlots}
      onBack={() => props.onBack()}
      words={
        <Words headline={title()}>
          <div class="plot-choice">
            <Tiles
              label={words.whichBread}
              options={options()}
              chosen={props.chosen?.formula ?? ALL}
              onChoose={(value) =>
                props.onChoose(props.breads.find(({ formula }) => formula === value) ?? null)
              }
            />
          </div>
        </Words>
      }
      controls={
        <Show when={paged().count > 1}>
          <Control
            label={words.breadsBefore}
            disabled={paged().at === 0}
            onPress={() => setAt(paged().at - 1)}
          />
          <Control
            label={words.moreBreads}
            disabled={paged().at === paged().count - 1}
            onPress={() => setAt(paged().at + 1)}
          />
        </Show>
      }
    />
  );
}
