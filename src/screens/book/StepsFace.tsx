import { createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import { withoutTouch } from '../../core/formula/touches.ts';
import { bookFolds, bookSteps, stepChoices } from '../../core/speech/words/steps.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { BookPage } from './BookPage.tsx';
import type { Editing } from './editing.ts';
import { NumberFace } from './NumberFace.tsx';
import { ChoiceFace } from './steps/ChoiceFace.tsx';
import { choicePage, type ChoiceKey } from './steps/choice-pages.ts';
import { FoldsFace, foldsTold } from './steps/FoldsFace.tsx';
import { NumberPresses } from './steps/NumberPresses.tsx';
import { stepNumber, type NumberKey } from './steps/step-numbers.ts';
import { Warnings } from './Warnings.tsx';

type Page = 'all' | 'folds' | ChoiceKey;

/** What a page is called where it is gone back to. */
const titleOf = (page: Page): string =>
  page === 'all' ? bookSteps.title : page === 'folds' ? bookFolds.title : stepChoices[page].title;

/** How a formula is made: which steps it has, and their numbers, each changed by presses. */
export function StepsFace(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly onBack: () => void;
}): JSX.Element {
  const [page, setPage] = createSignal<Page>('all');
  const [at, setAt] = createSignal<NumberKey | null>(null);
  const formula = () => props.editing.formula();
  const choiceOf = (key: ChoiceKey) =>
    choicePage(key, {
      formula: formula(),
      before: props.editing.before(),
      equipment: props.house.equipment(),
      units: props.house.ways(),
    });
  const choice = (key: ChoiceKey): JSX.Element => (
    <Control
      label={choiceOf(key).title}
      value={choiceOf(key).now}
      fresh={key}
      onPress={() => setPage(key)}
    />
  );
  const numbers = (keys: readonly NumberKey[]): JSX.Element => (
    <NumberPresses
      house={props.house}
      editing={props.editing}
      keys={keys}
      onNumber={(key) => setAt(key)}
    />
  );
  const chosen = (): ChoiceKey | null => {
    const here = page();
    return here === 'all' || here === 'folds' ? null : here;
  };
  const asked = () => {
    const key = at();
    return key === null ? null : stepNumber(formula(), key, props.house.ways());
  };
  /** A fold or a sheet that is asked about may be taken out altogether. */
  const touch = (key: NumberKey): number | null =>
    key.startsWith('touch ') ? Number(key.slice(6)) : null;
  const takeOut = (i: number): void => {
    setAt(null);
    const { process } = formula();
    const touches = withoutTouch(process.touches, i);
    props.editing.change({ ...formula(), process: { ...process, touches } });
  };
  const all = (): JSX.Element => (
    <BookPage
      wide
      back={showBread(formula().name)}
      onBack={() => props.onBack()}
      words={
        <Words headline={bookSteps.title}>
          <Warnings of={props.editing.stepWarnings()} />
          <div class="book-grid book-lines book-top">
            {numbers(['rest', 'dough'])}
            <Control
              label={bookFolds.title}
              value={foldsTold(formula())}
              fresh="folds"
              onPress={() => setPage('folds')}
            />
            {numbers(['rise'])}
            {choice('shaping')}
            {choice('proof')}
            {choice('vessel')}
            {numbers(['cool'])}
          </div>
        </Words>
      }
    />
  );
  return (
    <Switch fallback={all()}>
      <Match when={asked()?.key} keyed>
        {(key) => (
          <NumberFace
            house={props.house}
            ask={asked()!.ask}
            unit={asked()!.unit}
            least={asked()!.least}
            most={asked()!.most}
            now={asked()!.usual}
            back={titleOf(page())}
            onTake={(typed) => props.editing.change(asked()!.with(typed))}
            onBack={() => setAt(null)}
            controls={
              <Show when={touch(key) !== null}>
                <Control label={bookSteps.takeOut} onPress={() => takeOut(touch(key)!)} />
              </Show>
            }
          />
        )}
      </Match>
      <Match when={page() === 'folds'}>
        <FoldsFace
          house={props.house}
          editing={props.editing}
          back={bookSteps.title}
          onNumber={(key) => setAt(key)}
          filling={choiceOf('fillingIn')}
          onFilling={() => setPage('fillingIn')}
          onBack={() => setPage('all')}
        />
      </Match>
      <Match when={chosen()} keyed>
        {(key) => (
          <ChoiceFace
            house={props.house}
            editing={props.editing}
            {...choiceOf(key)}
            back={titleOf(key === 'fillingIn' ? 'folds' : 'all')}
            onBack={() => setPage(key === 'fillingIn' ? 'folds' : 'all')}
            controls={numbers(choiceOf(key).numbers)}
          />
        )}
      </Match>
    </Switch>
  );
}
