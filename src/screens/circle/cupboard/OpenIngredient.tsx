import { createSignal, Match, Switch, type JSX } from 'solid-js';
import type { Ingredient } from '../../../core/circle/circle.ts';
import { counted } from '../../../core/circle/stock.ts';
import { ingredientPage as words } from '../../../core/speech/words/cupboard.ts';
import { fill } from '../../../core/speech/fill.ts';
import { keyedWeight } from '../../../core/speech/keyed.ts';
import { showNumber } from '../../../core/speech/numbers.ts';
import { IngredientFace } from './IngredientFace.tsx';
import { KeyFace } from './KeyFace.tsx';
import { PackFaces } from './PackFaces.tsx';
import type { Store } from './store.ts';
import { begun } from './words.ts';

/** What is counted of one ingredient, g. Judgement: far beyond a home's. */
const COUNT = { least: 0, most: 500_000 } as const;
/** Less that can be used than this would be a slip of the finger. Judgement. */
const USABLE = { least: 1, most: 100 } as const;

/** One ingredient and all its pages. */
export function OpenIngredient(props: {
  readonly store: Store;
  readonly one: Ingredient;
  readonly onDrop: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [face, setFace] = createSignal<'page' | 'count' | 'pack' | 'usable'>('page');
  /** Something was written here: the last change of the circle is one of this page. */
  const [isTouched, setTouched] = createSignal(false);
  const toPage = (): void => void setFace('page');
  const keep = async (fresh: Ingredient): Promise<void> => {
    if (!(await props.store.keep(fresh))) return;
    setTouched(true);
    toPage();
  };
  const name = () => begun(props.one.name);
  const keyed = () => keyedWeight(COUNT, props.store.house.ways());
  const count = (grams: number): Promise<void> =>
    keep(counted(props.one, grams, props.store.house.now()));
  const use = async (percent: number): Promise<void> => {
    const { pack } = props.one;
    if (pack === null) return;
    await keep({ ...props.one, pack: { ...pack, usable: percent / 100 } });
  };
  const share = () =>
    fill(words.percent, { percent: showNumber((props.one.pack?.usable ?? 1) * 100) });
  return (
    <Switch>
      <Match when={face() === 'page'}>
        <IngredientFace
          store={props.store}
          one={props.one}
          isTouched={isTouched()}
          onKeep={(fresh) => void keep(fresh)}
          onCount={() => setFace('count')}
          onPack={() => setFace('pack')}
          onUsable={() => setFace('usable')}
          onDrop={() => props.onDrop()}
          onBack={() => props.onBack()}
        />
      </Match>
      <Match when={face() === 'count'}>
        <KeyFace
          house={props.store.house}
          ask={words.countAsk}
          of={props.one.id}
          unit={keyed().unit}
          least={keyed().least}
          most={keyed().most}
          hint={words.countDetail}
          blank={false}
          then={name()}
          back={name()}
          onTake={(typed) => void count(keyed().record(typed!))}
          onBack={toPage}
        />
      </Match>
      <Match when={face() === 'pack'}>
        <PackFaces
          store={props.store}
          one={props.one}
          onKept={() => {
            setTouched(true);
            toPage();
          }}
          onBack={toPage}
        />
      </Match>
      <Match when={face() === 'usable'}>
        <KeyFace
          house={props.store.house}
          ask={words.usableAsk}
          of={props.one.id}
          unit={words.percentUnit}
          least={USABLE.least}
          most={USABLE.most}
          hint={fill(words.usableNow, { value: share() })}
          blank={false}
          then={name()}
          back={name()}
          onTake={(typed) => void use(typed!)}
          onBack={toPage}
        />
      </Match>
    </Switch>
  );
}
