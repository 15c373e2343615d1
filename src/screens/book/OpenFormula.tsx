import { createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import { PIECE } from '../../core/formula/make-recipe.ts';
import { book, bookLines, bookMore } from '../../core/speech/words/book.ts';
import { keyedWeight } from '../../core/speech/keyed.ts';
import { showWeight } from '../../core/speech/weights.ts';
import { fill } from '../../core/speech/fill.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import type { BookPictures } from '../book-pictures.ts';
import type { House } from '../house.ts';
import { BookMore, type MorePage } from './BookMore.tsx';
import { CompareFace } from './CompareFace.tsx';
import { ConventionFace } from './ConventionFace.tsx';
import { createEditing } from './editing.ts';
import { FillingFace } from './FillingFace.tsx';
import { FlourFace } from './FlourFace.tsx';
import { FormulaFace } from './FormulaFace.tsx';
import { LineFace } from './LineFace.tsx';
import type { LineKey } from './lines.ts';
import { NumberFace } from './NumberFace.tsx';
import { PartFace } from './PartFace.tsx';
import type { PartKey } from './parts.ts';
import { PictureFace } from './PictureFace.tsx';
import { ScaleFace } from './ScaleFace.tsx';
import { StepsFace } from './StepsFace.tsx';
import { BookPage } from './BookPage.tsx';
import { TextFace } from '../TextFace.tsx';
import { VersionsFace } from './VersionsFace.tsx';

type Face = OwnPage | MorePage;
type OwnPage =
  'formula' | 'more' | 'line' | 'part' | 'flour' | 'piece' | 'scale' | 'steps' | 'filling';

/** One formula of the Book and all its pages. */
export function OpenFormula(props: {
  readonly house: House;
  readonly pictures: BookPictures | null;
  readonly id: string;
  readonly onOpen: (id: string) => void;
  readonly onShare: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- the house is one
  const editing = createEditing(props.house, () => props.id);
  const { formula } = editing;
  const name = () => showBread(formula().name);
  const [face, setFace] = createSignal<Face>('formula');
  const [line, setLine] = createSignal<LineKey>('salt');
  const [part, setPart] = createSignal<PartKey | null>(null);
  const toFormula = (): void => void setFace('formula');
  const units = () => props.house.ways();
  /** Percent is counted one of two ways: which, is asked before the first of them is changed. */
  const toLine = (key: LineKey): void => {
    setLine(key);
    setFace(formula().convention === undefined ? 'convention' : 'line');
  };
  const [asked, setAsked] = createSignal(false);
  const keep = async (): Promise<void> => {
    if (await editing.keep()) return;
    props.house.tell({ id: 'book', text: book.notKept, action: null });
  };
  const copy = async (): Promise<void> => {
    const id = await editing.copy();
    if (id === null) props.house.tell({ id: 'book', text: book.notKept, action: null });
    else props.onOpen(id);
  };
  const drop = async (): Promise<void> => {
    await props.house.dropFormula(props.id);
    props.onBack();
  };
  const keyed = () => keyedWeight(PIECE, units());
  return (
    <Switch>
      <Match when={face() === 'formula' || face() === 'more'}>
        <FormulaFace
          house={props.house}
          editing={editing}
          pictures={props.pictures}
          onLine={(key) => {
            setAsked(true);
            toLine(key);
          }}
          onPiece={() => setFace('piece')}
          onScale={() => setFace('scale')}
          onSteps={() => setFace('steps')}
          onFilling={() => setFace('filling')}
          onFlour={() => setFace('flour')}
          onMore={() => setFace('more')}
          onKeep={() => void keep()}
          onBack={() => props.onBack()}
        />
        <Show when={face() === 'more'}>
          <BookMore
            house={props.house}
            editing={editing}
            onPage={(page) => {
              setAsked(false);
              setFace(page);
            }}
            onCopy={() => void copy()}
            onShare={() => props.onShare()}
            onDrop={() => void drop()}
            onList={() => props.onBack()}
            onClose={toFormula}
          />
        </Show>
      </Match>
      <Match when={face() === 'line'}>
        <LineFace
          house={props.house}
          editing={editing}
          line={line()}
          back={name()}
          onPart={(key) => {
            setPart(key);
            setFace('part');
          }}
          onBack={toFormula}
        />
      </Match>
      <Match when={face() === 'part' && part()}>
        {(key) => (
          <PartFace
            house={props.house}
            editing={editing}
            part={key()}
            onGone={toFormula}
            onBack={() => setFace('line')}
          />
        )}
      </Match>
      <Match when={face() === 'flour'}>
        <FlourFace editing={editing} onBack={toFormula} />
      </Match>
      <Match when={face() === 'piece'}>
        <NumberFace
          house={props.house}
          ask={bookLines.pieceAsk}
          unit={keyed().unit}
          least={keyed().least}
          most={keyed().most}
          now={fill(bookLines.was, { value: showWeight(formula().piece, units()) })}
          back={name()}
          onTake={(typed) => editing.change({ ...formula(), piece: keyed().record(typed) })}
          onBack={toFormula}
        />
      </Match>
      <Match when={face() === 'scale'}>
        <ScaleFace house={props.house} editing={editing} onBack={toFormula} />
      </Match>
      <Match when={face() === 'steps'}>
        <StepsFace house={props.house} editing={editing} onBack={toFormula} />
      </Match>
      <Match when={face() === 'filling'}>
        <FillingFace house={props.house} editing={editing} onBack={toFormula} />
      </Match>
      <Match when={face() === 'picture'}>
        <PictureFace
          house={props.house}
          pictures={props.pictures}
          formula={formula()}
          onBack={toFormula}
        />
      </Match>
      <Match when={face() === 'compare'}>
        <CompareFace house={props.house} editing={editing} onBack={toFormula} />
      </Match>
      <Match when={face() === 'versions'}>
        <VersionsFace
          house={props.house}
          editing={editing}
          onBrought={toFormula}
          onBack={toFormula}
        />
      </Match>
      <Match when={face() === 'convention'}>
        <ConventionFace
          chosen={formula().convention}
          back={name()}
          onChoose={(convention) => {
            editing.change({ ...formula(), convention });
            setFace(asked() ? 'line' : 'formula');
          }}
          onBack={toFormula}
        />
      </Match>
      <Match when={face() === 'name'}>
        <TextFace
          page={BookPage}
          ask={bookMore.nameAsk}
          begun={name()}
          lines="one"
          most={80}
          blank={false}
          back={name()}
          onTake={(typed) => {
            // One that is left as it is shown is left as it is kept.
            if (typed !== '' && typed !== name()) editing.change({ ...formula(), name: typed });
            toFormula();
          }}
        />
      </Match>
      <Match when={face() === 'notes'}>
        <TextFace
          page={BookPage}
          ask={bookMore.notesAsk}
          begun={formula().notes ?? ''}
          lines="many"
          most={2000}
          blank
          back={name()}
          onText={(notes) => {
            const { notes: _, ...others } = formula();
            editing.change(notes.trim() === '' ? others : { ...others, notes });
          }}
          onTake={toFormula}
        />
      </Match>
    </Switch>
  );
}
