import { createResource, Show, type Component, type JSX } from 'solid-js';
import { openHouse } from '../../../src/app/open-house.ts';
import {
  CIRCLE,
  type Circle,
  type Ingredient,
  type Order,
} from '../../../src/core/circle/circle.ts';
import { freshIngredient } from '../../../src/core/circle/cupboard.ts';
import { readFormula } from '../../../src/core/formula/read-formula.ts';
import { MenuFace } from '../../../src/screens/circle/cupboard/MenuFace.tsx';
import { CountsFace } from '../../../src/screens/circle/cupboard/CountsFace.tsx';
import { CostFace } from '../../../src/screens/circle/cupboard/CostFace.tsx';
import { CurrencyFace } from '../../../src/screens/circle/cupboard/CurrencyFace.tsx';
import { BreadsFace } from '../../../src/screens/circle/cupboard/BreadsFace.tsx';
import { IngredientFace } from '../../../src/screens/circle/cupboard/IngredientFace.tsx';
import { ListFace } from '../../../src/screens/circle/cupboard/ListFace.tsx';
import { PackFaces } from '../../../src/screens/circle/cupboard/PackFaces.tsx';
import { Shopping } from '../../../src/screens/circle/cupboard/Shopping.tsx';
import { shoppingDays, shoppingList } from '../../../src/screens/circle/cupboard/shopping-list.ts';
import { buyView } from '../../../src/screens/circle/cupboard/shopping-view.ts';
import { ShoppingMore } from '../../../src/screens/circle/cupboard/ShoppingMore.tsx';
import { openStore, type Store } from '../../../src/screens/circle/cupboard/store.ts';
import type { House } from '../../../src/screens/house.ts';
import { fakeCircle } from '../../fakes/circle.ts';
import { makeFakeWorld } from '../../fakes/world.ts';

const nothing = (): void => {};
const FILES = import.meta.glob<string>('../../../assets/formulas/*.json', {
  query: '?raw',
  import: 'default',
  eager: true,
});
const FORMULAS = Object.values(FILES).flatMap((text) => {
  const { formula } = readFormula(JSON.parse(text));
  return formula === null ? [] : [{ formula, file: formula.id }];
});

const AT = Date.UTC(2031, 4, 3, 5);
const told = (name: string, grams: number, pack: Ingredient['pack']): Ingredient => ({
  ...freshIngredient(name),
  counted: { grams, at: AT },
  pack,
});
const pack = (grams: number, cost: number, usable = 1) => ({ grams, cost, usable });
const INGREDIENTS = [
  told('strong wheat flour', 3400, pack(2500, 3.95)),
  told('whole rye flour', 250, pack(1000, 1.85)),
  told('dry-cured olives, new pack', 0, pack(400, 3.6, 0.78)),
  told('salt', 840, pack(500, 0.6)),
  told('dried cherries', 120, pack(500, 6.49)),
  ...Array.from({ length: 60 }, (_, i) => freshIngredient(`Spice ${i + 1}`)),
];
const order = (day: string, bread: string, count: number): Order => ({
  id: `${day} ${bread}`,
  who: 'a',
  day,
  at: 600,
  lines: [{ bread, count, grams: null, cut: false }],
  paid: false,
  handed: null,
  made: AT,
  standing: null,
});
const ORDERED: Partial<Circle> = {
  ingredients: INGREDIENTS,
  orders: [
    order('2031-05-03', 'cherry-hazelnut', 6),
    order('2031-05-10', 'olive-seed', 4),
    order('2031-05-10', 'lane-wheat', 8),
    order('2031-05-11', 'gone', 1),
  ],
  ways: { ...CIRCLE.ways, times: 3, besides: 0.35 },
};

/** A page of the cupboard over a circle that stays in memory. */
const page =
  (of: (store: Store) => JSX.Element, first: Partial<Circle> = ORDERED): Component =>
  () => {
    const [house] = createResource(async (): Promise<House> => ({
      ...(await openHouse(makeFakeWorld())),
      formulas: () => FORMULAS,
    }));
    return <Show when={house()}>{(its) => of(openStore(its(), fakeCircle(first)))}</Show>;
  };
const list = (sought: string) => (store: Store) => (
  <ListFace
    store={store}
    sought={sought}
    at={0}
    dropped={false}
    onPage={nothing}
    back="Circle"
    onPick={nothing}
    onFind={nothing}
    onAll={nothing}
    onAdd={nothing}
    onBack={nothing}
  />
);
const one = (id: string) => (store: Store) => {
  void store.keep(store.ingredient(id)!);
  return (
    <IngredientFace
      store={store}
      one={store.ingredient(id)!}
      isTouched
      onKeep={nothing}
      onCount={nothing}
      onPack={nothing}
      onUsable={nothing}
      onDrop={nothing}
      onBack={nothing}
    />
  );
};
const cost = (bread: string) => (store: Store) => (
  <CostFace
    store={store}
    formula={store.formulas().find(({ id }) => id === bread)!}
    onPrice={nothing}
    loaves={4}
    onLoaves={nothing}
    onCounts={nothing}
    onBack={nothing}
  />
);

/** The store cupboard: its list, one ingredient, what is to be bought, and what a loaf costs. */
export const cupboardScenes: Record<string, Component> = {
  'cupboard: menu': page(() => <MenuFace onOpen={nothing} onBack={nothing} />),
  'cupboard: counts': page((store) => (
    <CountsFace
      store={store}
      back="Lane wheat"
      onBesides={nothing}
      onTimes={nothing}
      onCurrency={nothing}
      onBack={nothing}
    />
  )),
  'cupboard: list': page(list('')),
  'cupboard: found': page(list('rye')),
  'cupboard: ingredient': page(one('dry-cured olives, new pack')),
  'cupboard: pack': page((store) => (
    <PackFaces store={store} one={store.ingredient('salt')!} onKept={nothing} onBack={nothing} />
  )),
  'cupboard: shopping': page((store) => (
    <Shopping store={store} day={null} back="Store cupboard" onBack={nothing} />
  )),
  'cupboard: shopping, more': page((store) => (
    <ShoppingMore
      house={store.house}
      days="The next two weeks"
      lines={shoppingList(store, shoppingDays(store, '2031-05-03'), null).lines.map((line) =>
        buyView(line, store.ingredient(line.id), store.house.ways()),
      )}
      bought={(id) => id === 'salt'}
      notes={[]}
      onDays={nothing}
      onBack={nothing}
    />
  )),
  'cupboard: nothing ordered': page(
    (store) => <Shopping store={store} day={null} back="Store cupboard" onBack={nothing} />,
    {},
  ),
  'cupboard: breads': page((store) => (
    <BreadsFace store={store} onPick={nothing} onBack={nothing} />
  )),
  'cupboard: cost': page(cost('lane-wheat')),
  'cupboard: cost of many': page(cost('olive-seed')),
  'cupboard: currency': page(() => (
    <CurrencyFace chosen="EUR" back="Lane wheat" onChoose={nothing} onBack={nothing} />
  )),
};
