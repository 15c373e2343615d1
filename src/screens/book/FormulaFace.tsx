import { createMemo, For, Show, type JSX } from 'solid-js';
import { book, bookLines, bookMore, conventions } from '../../core/speech/words/book.ts';
import { bench } from '../../core/speech/words/bench.ts';
import { picture } from '../../core/speech/words/picture.ts';
import { shown } from '../../core/speech/facts.ts';
import { bookParts } from '../../core/speech/words/book-parts.ts';
import { fill } from '../../core/speech/fill.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { tellAllergens } from '../../core/speech/tell-allergens.ts';
import { showWeight } from '../../core/speech/weights.ts';
import { Control } from '../../parts/Control.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { unbroken } from '../../parts/unbroken.ts';
import { Words } from '../../parts/Words.tsx';
import type { BookPictures } from '../book-pictures.ts';
import type { House } from '../house.ts';
import { BookPage } from './BookPage.tsx';
import type { Editing } from './editing.ts';
import { isBowl, linesOf, type Line, type LineKey } from './lines.ts';
import { Warnings } from './Warnings.tsx';
import { lineName, lineValue } from './words.ts';
import './Picture.css';

/** What a formula is, percent and grams side by side, each line a press; what is unusual in words. */
export function FormulaFace(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly pictures: BookPictures | null;
  readonly onLine: (key: LineKey) => void;
  readonly onPiece: () => void;
  readonly onScale: () => void;
  readonly onSteps: () => void;
  readonly onFilling: () => void;
  readonly onFlour: () => void;
  readonly onMore: () => void;
  readonly onKeep: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const units = () => props.house.ways();
  const formula = () => props.editing.formula();
  const address = () => props.pictures?.shown()[formula().id];
  const lines = createMemo(() => linesOf(formula(), props.editing.scaled().dough));
  /** Water is in one stage until a second is asked for. */
  const isThere = ({ key, percent }: Line): boolean => key !== 'secondWater' || percent > 0;
  const keys = createMemo(
    () =>
      lines()
        .filter(isThere)
        .map(({ key }) => key),
    undefined,
    { equals: (a, b) => a.join('\n') === b.join('\n') },
  );
  const lineOf = (key: LineKey) => lines().find((one) => one.key === key);
  const detail = (): string => {
    const { loaves, piece, dough } = props.editing.scaled();
    return fill(conventions.told, {
      ...shown({ loaves }),
      piece: showWeight(Math.round(piece), units()),
      grams: showWeight(Math.round(dough), units()),
      counted: isBowl(formula()) ? conventions.bowlTold : conventions.wholeTold,
    });
  };
  return (
    <BookPage
      wide
      back={book.title}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={showBread(formula().name)}
          picture={
            address() && (
              <img
                class="picture-shown"
                src={address()}
                alt={fill(picture.alt, { name: showBread(formula().name) })}
              />
            )
          }
        >
          <p class="book-of">{unbroken(detail())}</p>
          <Warnings of={props.editing.warnings()} />
          <div class="book-grid book-lines book-top">
            <For each={keys()}>
              {(key) => (
                <Show when={lineOf(key)}>
                  {(line) => (
                    <Control
                      label={lineName(formula(), key)}
                      value={lineValue(line(), units())}
                      fresh={key}
                      disabled={!props.house.holds}
                      onPress={() => props.onLine(key)}
                    />
                  )}
                </Show>
              )}
            </For>
            <Control
              label={bookLines.piece}
              value={showWeight(formula().piece, units())}
              disabled={!props.house.holds}
              onPress={() => props.onPiece()}
            />
            <Show when={formula().secondWater === 0}>
              <Control
                label={bookParts.addWater}
                disabled={!props.house.holds}
                onPress={() => props.onLine('secondWater')}
              />
            </Show>
            <Control
              label={bookParts.addFlour}
              disabled={!props.house.holds}
              onPress={() => props.onFlour()}
            />
            <Control
              label={bookMore.filling}
              disabled={!props.house.holds}
              onPress={() => props.onFilling()}
            />
          </div>
          <p class="act-detail">{unbroken(tellAllergens(formula()).join(' '))}</p>
          <Show when={formula().notes}>
            {(notes) => <p class="act-detail book-notes">{notes()}</p>}
          </Show>
        </Words>
      }
      slab={
        <Show
          when={props.editing.changed()}
          fallback={
            <Slab
              label={bench.thatsIt}
              then={book.title}
              fresh={formula().id}
              onPress={() => props.onBack()}
            />
          }
        >
          <Slab
            label={book.keep}
            then={fill(book.keepThen, { version: props.editing.next() })}
            fresh="keep"
            disabled={!props.house.holds}
            onPress={() => props.onKeep()}
          />
        </Show>
      }
      controls={
        <>
          <Control label={book.howMuch} onPress={() => props.onScale()} />
          <Control label={book.steps} onPress={() => props.onSteps()} />
          <Control label={book.more} onPress={() => props.onMore()} />
        </>
      }
    />
  );
}
