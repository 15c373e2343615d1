import { createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import { freshIngredient, knownAs } from '../../../core/circle/cupboard.ts';
import { cupboard } from '../../../core/speech/words/cupboard.ts';
import type { HouseCircle } from '../../house-circle.ts';
import type { House } from '../../house.ts';
import { CirclePage } from '../CirclePage.tsx';
import { TextFace } from '../../TextFace.tsx';
import { Costs } from './Costs.tsx';
import { ListFace } from './ListFace.tsx';
import { MenuFace, type CupboardPart } from './MenuFace.tsx';
import { OpenIngredient } from './OpenIngredient.tsx';
import { Shopping } from './Shopping.tsx';
import { openStore } from './store.ts';

/** Letters of an ingredient's name at most. */
const NAME = 80;

/** The store cupboard: its list, each ingredient's page, what is to be bought, what a loaf costs. */
export default function Cupboard(props: {
  readonly house: House;
  readonly circle: HouseCircle;
  readonly onBack: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- the house and its circle are one
  const store = openStore(props.house, props.circle);
  const [face, setFace] = createSignal<'menu' | 'find' | CupboardPart>('menu');
  const [at, setAt] = createSignal<string | null>(null);
  const [sought, setSought] = createSignal('');
  const [page, setPage] = createSignal(0);
  const toMenu = (): void => void setFace('menu');
  const seek = (text: string): void => {
    setSought(text);
    setPage(0);
  };
  const one = () => (at() === null ? null : store.ingredient(at()!));
  const [dropped, setDropped] = createSignal(false);
  const pick = (id: string): void => {
    setDropped(false);
    setAt(id);
  };
  const drop = async (id: string): Promise<void> => {
    if (!(await store.drop(id))) return;
    setAt(null);
    setDropped(true);
  };
  const add = async (name: string): Promise<void> => {
    const fresh = freshIngredient(name);
    if (fresh.id === '' || !(await store.keep(fresh))) return;
    seek('');
    setAt(fresh.id);
  };
  /** A name that stands there is opened; a part of names narrows the list. */
  const find = (text: string): void => {
    setFace('list');
    const known = knownAs(store.ingredients(), text);
    if (known) setAt(known.id);
    else seek(text);
  };
  return (
    <Switch fallback={<MenuFace onOpen={setFace} onBack={() => props.onBack()} />}>
      <Match when={one()}>
        {(its) => (
          <OpenIngredient
            store={store}
            one={its()}
            onDrop={() => void drop(its().id)}
            onBack={() => setAt(null)}
          />
        )}
      </Match>
      <Match when={face() === 'find'}>
        <TextFace
          page={CirclePage}
          ask={cupboard.findAsk}
          detail={cupboard.findDetail}
          begun=""
          lines="one"
          most={NAME}
          blank
          back={cupboard.list}
          onTake={find}
          onBack={() => setFace('list')}
        />
      </Match>
      <Match when={face() === 'shopping'}>
        <Shopping store={store} day={null} back={cupboard.title} onBack={toMenu} />
      </Match>
      <Match when={face() === 'costs'}>
        <Costs store={store} onBack={toMenu} />
      </Match>
      <Match when={face() === 'list'}>
        <Show when={[sought()]} keyed>
          {([text = '']) => (
            <ListFace
              store={store}
              sought={text}
              at={page()}
              onPage={setPage}
              back={text === '' ? cupboard.title : cupboard.list}
              dropped={dropped()}
              onPick={pick}
              onFind={() => setFace('find')}
              onAll={() => seek('')}
              onAdd={(name) => void add(name)}
              onBack={() => (text === '' ? toMenu() : seek(''))}
            />
          )}
        </Show>
      </Match>
    </Switch>
  );
}
