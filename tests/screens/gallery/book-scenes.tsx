import { createResource, Show, type Component, type JSX } from 'solid-js';
import { openHouse } from '../../../src/app/open-house.ts';
import type { Formula } from '../../../src/core/formula/formula.ts';
import { bookOf } from '../../../src/core/records/book.ts';
import type { BookPictures } from '../../../src/screens/book-pictures.ts';
import { createEditing } from '../../../src/screens/book/editing.ts';
import { FillingFace } from '../../../src/screens/book/FillingFace.tsx';
import { FormulaFace } from '../../../src/screens/book/FormulaFace.tsx';
import { ListFace } from '../../../src/screens/book/ListFace.tsx';
import { PictureFace } from '../../../src/screens/book/PictureFace.tsx';
import { SheetFace } from '../../../src/screens/book/share/SheetFace.tsx';
import type { House } from '../../../src/screens/house.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { RECIPE } from '../../machines/support/recipe.ts';

const nothing = (): void => {};
const named = (id: string, name: string): Formula => ({ ...RECIPE.formula, id, name });
const FORMULAS = [
  named('cherry-hazelnut', 'Cherry and hazelnut'),
  named('lane-wheat', 'Lane wheat'),
  named('barley-tin', 'Barley tin'),
  named('olive-seed', 'Olive and seed'),
  named('lane-today', 'Lane wheat, same day'),
  named('harbour-rye', 'Harbour rye'),
];

/** A round loaf with its cut, in an inline drawing: no file is wanted. */
const LOAF = `data:image/svg+xml,${encodeURIComponent(
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 400 300"><rect width="400" height="300" fill="#d8c9a8"/><ellipse cx="200" cy="165" rx="150" ry="105" fill="#8a5a2b"/><path d="M110 150q90-70 180 0" fill="none" stroke="#f3e3c3" stroke-width="16"/></svg>',
)}`;
const pictures = (...ids: readonly string[]): BookPictures => ({
  shown: () => Object.fromEntries(ids.map((id) => [id, LOAF])),
  canTakeBack: () => ids.length > 0,
  take: () => Promise.resolve(null),
  drop: () => Promise.resolve(null),
  takeBack: () => Promise.resolve(null),
});

const SHEET = [
  ['Ingredient', 'Gramm', 'Note', 'Price'],
  ['Strong wheat flour', 900, '', 1.2],
  ['Whole rye flour', 100, '', 0.2],
  ['Water', 750, 'cool', null],
  ['Levain', 200, '', null],
  ['Sea salt', 20, '', 0.1],
  ['Soaked pumpkin seeds', 150, '', 2.1],
  ['Dry-cured olives, new pack', 80, '', 1.9],
] as const;

/** A page of the Book over a house that knows these formulas; `change`: half changed, as it is opened. */
const page =
  (
    of: (house: House) => JSX.Element,
    change: (formula: Formula) => Formula = (formula) => formula,
  ): Component =>
  () => {
    const [house] = createResource(async (): Promise<House> => {
      const opened = await openHouse(makeFakeWorld());
      const first = change(FORMULAS[0]!);
      const drafts = first === FORMULAS[0] ? {} : { [first.id]: first };
      return { ...opened, book: () => bookOf([], FORMULAS), drafts: () => drafts };
    });
    return <Show when={house()}>{(its) => of(its())}</Show>;
  };

const formula = (shown: BookPictures | null) => (house: House) => (
  <FormulaFace
    house={house}
    editing={createEditing(house, () => 'cherry-hazelnut')}
    pictures={shown}
    onLine={nothing}
    onPiece={nothing}
    onScale={nothing}
    onSteps={nothing}
    onFlour={nothing}
    onFilling={nothing}
    onMore={nothing}
    onKeep={nothing}
    onBack={nothing}
  />
);
const picture = (shown: BookPictures) => (house: House) => (
  <PictureFace house={house} pictures={shown} formula={FORMULAS[0]!} onBack={nothing} />
);

/** The Book: its list, a formula plain and unusual, its picture, a filling to add, and a sheet taken in. */
export const bookScenes: Record<string, Component> = {
  'book: list': page((house) => (
    <ListFace
      house={house}
      pictures={pictures('cherry-hazelnut', 'lane-today')}
      away={false}
      onPick={nothing}
      onAway={nothing}
      onShare={nothing}
      onBack={nothing}
    />
  )),
  'book: formula': page(formula(null)),
  'book: formula with its picture': page(formula(pictures('cherry-hazelnut'))),
  'book: unusual': page(formula(pictures('cherry-hazelnut')), (one) => ({
    ...one,
    salt: 2.8,
    hydration: 92,
  })),
  'book: no picture': page(picture(pictures())),
  'book: picture': page(picture(pictures('cherry-hazelnut'))),
  'book: filling': page((house) => (
    <FillingFace
      house={house}
      editing={createEditing(house, () => 'lane-wheat')}
      onBack={nothing}
    />
  )),
  'book: columns of a sheet': page((house) => (
    <SheetFace
      house={house}
      table={SHEET}
      own={null}
      name="olive loaf"
      back="In and out"
      onBack={nothing}
    />
  )),
};
