import { createMemo, createSignal, Match, Switch, type JSX } from 'solid-js';
import type { Ingredient } from '../../../core/circle/circle.ts';
import { freshIngredient } from '../../../core/circle/cupboard.ts';
import type { DayKey } from '../../../core/circle/day-key.ts';
import { isToBuy, type ShoppingLine } from '../../../core/circle/shopping.ts';
import { counted, packsMore } from '../../../core/circle/stock.ts';
import { shopping as words } from '../../../core/speech/words/cupboard.ts';
import { keyedWeight } from '../../../core/speech/keyed.ts';
import { todayOf } from '../today.ts';
import { DaysFace } from './DaysFace.tsx';
import { KeyFace } from './KeyFace.tsx';
import { shoppingDays, shoppingList } from './shopping-list.ts';
import { buyView, daysTold, listTold, notesOf, type BuyView } from './shopping-view.ts';
import { ShoppingFace } from './ShoppingFace.tsx';
import { ShoppingMore } from './ShoppingMore.tsx';
import type { Store } from './store.ts';

/** What is bought of a thing at once, g. Judgement: far beyond a home's. */
const BOUGHT = { least: 1, most: 100_000 } as const;

/** What a tick changed: how it was told before, and the count that stood. */
interface Ticked {
  readonly told: BuyView;
  readonly before: Ingredient['counted'];
}

/** Shopping for the bread that is ordered: a tick is a new count, taken back by a second press. */
export function Shopping(props: {
  readonly store: Store;
  /** For one day alone, to begin with; null: for all that are ahead. */
  readonly day: DayKey | null;
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- it begins with it and goes its own way
  const [day, setDay] = createSignal(props.day);
  const [face, setFace] = createSignal<'list' | 'days' | 'more'>('list');
  const [keyedFor, setKeyedFor] = createSignal<string | null>(null);
  const [ticked, setTicked] = createSignal<ReadonlyMap<string, Ticked>>(new Map());
  const today = createMemo(() => todayOf(props.store.house));
  const days = createMemo(() => shoppingDays(props.store, today()));
  const list = createMemo(() => shoppingList(props.store, days(), day()));
  const units = () => props.store.house.ways();
  const ingredientOf = ({ id, name }: Pick<ShoppingLine, 'id' | 'name'>): Ingredient =>
    props.store.ingredient(id) ?? freshIngredient(name);
  const told = (line: ShoppingLine): BuyView => buyView(line, ingredientOf(line), units());
  const lines = createMemo(() =>
    list().lines.flatMap((line) => {
      const was = ticked().get(line.id);
      return was ? [was.told] : isToBuy(line) ? [told(line)] : [];
    }),
  );
  const isBought = (id: string): boolean => ticked().has(id);
  const lineOf = (id: string | null) => list().lines.find((line) => line.id === id) ?? null;
  const tick = async (line: ShoppingLine, fresh: Ingredient): Promise<void> => {
    const was = { told: told(line), before: ingredientOf(line).counted };
    if (!(await props.store.keep(fresh))) return;
    setTicked(new Map(ticked()).set(line.id, was));
    setKeyedFor(null);
  };
  const untick = async (line: ShoppingLine, { before }: Ticked): Promise<void> => {
    if (!(await props.store.keep({ ...ingredientOf(line), counted: before }))) return;
    setTicked(new Map([...ticked()].filter(([id]) => id !== line.id)));
  };
  const press = (id: string): void => {
    const line = lineOf(id);
    if (line === null) return;
    const was = ticked().get(id);
    const now = props.store.house.now();
    const one = ingredientOf(line);
    if (was) void untick(line, was);
    else if (line.packs === null) setKeyedFor(id);
    else void tick(line, packsMore(one, line.packs, line.there, now));
  };
  const keyed = () => keyedWeight(BOUGHT, units());
  return (
    <Switch>
      <Match when={lineOf(keyedFor())}>
        {(line) => (
          <KeyFace
            house={props.store.house}
            ask={words.boughtAsk}
            of={line().id}
            unit={keyed().unit}
            least={keyed().least}
            most={keyed().most}
            hint={`${told(line()).name}, ${told(line()).much}`}
            blank={false}
            then={words.title}
            back={words.title}
            onTake={(typed) => {
              const grams = (line().there.grams ?? 0) + keyed().record(typed!);
              const now = props.store.house.now();
              void tick(line(), counted(ingredientOf(line()), grams, now));
            }}
            onBack={() => setKeyedFor(null)}
          />
        )}
      </Match>
      <Match when={face() === 'days'}>
        <DaysFace
          days={days()}
          chosen={day()}
          onChoose={(chosen) => {
            setDay(chosen);
            setFace('list');
          }}
          onBack={() => setFace('list')}
        />
      </Match>
      <Match when={face() === 'list'}>
        <ShoppingFace
          lines={lines()}
          told={listTold(list(), day())}
          notes={notesOf(list(), isBought)}
          bought={isBought}
          back={props.back}
          onTick={press}
          onMore={() => setFace('more')}
          onBack={() => props.onBack()}
        />
      </Match>
      <Match when={face() === 'more'}>
        <ShoppingMore
          house={props.store.house}
          days={daysTold(day())}
          lines={lines()}
          bought={isBought}
          notes={[...listTold(list(), day()), ...notesOf(list(), isBought)]}
          onDays={() => setFace('days')}
          onBack={() => setFace('list')}
        />
      </Match>
    </Switch>
  );
}
