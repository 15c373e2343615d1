import { createMemo, createSignal, Show, type JSX } from 'solid-js';
import { weighInsOf } from '../../../machines/kitchen/weigh-ins.ts';
import type { Formula } from '../../core/formula/formula.ts';
import { BREAD, pieceForBread } from '../../core/formula/piece-for-bread.ts';
import { lossOf } from '../../core/oven/bake-loss-learned.ts';
import { bench } from '../../core/speech/words/bench.ts';
import { keypad } from '../../core/speech/words/controls.ts';
import { bread as words } from '../../core/speech/words/start.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { keyedWeight } from '../../core/speech/keyed.ts';
import { showWeight } from '../../core/speech/weights.ts';
import type { Grams } from '../../core/units.ts';
import { Control } from '../../parts/Control.tsx';
import { NumberPad } from '../../parts/NumberPad.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { breadQuestion } from './draft.ts';

interface Asked {
  readonly house: House;
  readonly formula: Formula;
  /** The weight that was asked for; null: as the recipe's dough comes out. */
  readonly bread: Grams | null;
}

const lossHere = ({ house, formula }: Asked) => {
  const loaves = weighInsOf(house.kitchen()).filter(
    ({ vessel }) => vessel === formula.process.vessel,
  );
  return (piece: Grams) => lossOf(piece, loaves);
};

/** How heavy a baked loaf will be, and the press that changes it. */
function BreadLine(
  props: Asked & { readonly onAsk: () => void; readonly onBread: (bread: null) => void },
): JSX.Element {
  const usual = createMemo(() => {
    const { piece } = props.formula;
    return Math.round(piece * (1 - lossHere(props)(piece).mean));
  });
  const grams = (n: Grams): string => showWeight(n, props.house.ways());
  return (
    <div class="start-grid start-each">
      <Control
        label={words.label}
        value={
          props.bread === null ? fill(words.about, { grams: grams(usual()) }) : grams(props.bread)
        }
        onPress={() => props.onAsk()}
      />
      <Show when={props.bread !== null}>
        <Control
          label={words.usual}
          value={fill(words.about, { grams: grams(usual()) })}
          onPress={() => {
            props.house.half(breadQuestion(props.formula.id)).keep('');
            props.onBread(null);
          }}
        />
      </Show>
    </div>
  );
}

/** The weight of a baked loaf, keyed in; the dough it takes, by what loaves lose in this oven. */
function BreadFace(
  props: Asked & { readonly onBread: (bread: Grams | null) => void },
): JSX.Element {
  const [typed, setTyped] = createSignal<Grams | null>(null);
  const keyed = () => keyedWeight(BREAD, props.house.ways());
  const loss = createMemo(() => lossHere(props));
  const hint = (): string => {
    const [grams, of] = [typed(), loss()];
    if (grams !== null && grams >= BREAD.least && grams <= BREAD.most) {
      const piece = Math.round(pieceForBread(grams, (one) => of(one).mean));
      return fill(words.dough, shown({ grams: piece }, props.house.ways()));
    }
    const { mean, count } = of(props.formula.piece);
    return fill(count > 0 ? words.learned : words.loses, {
      percent: Math.round(mean * 100),
      count,
    });
  };
  return (
    <Words headline={words.ask}>
      <NumberPad
        label={words.ask}
        unit={keyed().unit}
        words={{
          point: bench.point,
          clear: keypad.clear,
          hint: hint(),
          outside: fill(bench.only, { range: keyed().range }),
          again: keypad.again,
        }}
        half={props.house.half(breadQuestion(props.formula.id))}
        min={keyed().least}
        max={keyed().most}
        onTyped={(number) => {
          const grams = number === null ? null : keyed().record(number);
          setTyped(grams);
          props.onBread(
            grams !== null && grams >= BREAD.least && grams <= BREAD.most ? grams : null,
          );
        }}
      />
    </Words>
  );
}

/** How heavy a baked loaf is to be: told beside how many, or asked with its keys. */
export default function Bread(props: {
  readonly house: House;
  readonly formula: Formula | null;
  readonly bread: Grams | null;
  readonly keys: boolean;
  readonly onAsk: () => void;
  readonly onBread: (bread: Grams | null) => void;
}): JSX.Element {
  return (
    <Show when={props.formula}>
      {(formula) => (
        <Show when={props.keys} fallback={<BreadLine {...props} formula={formula()} />}>
          <BreadFace {...props} formula={formula()} />
        </Show>
      )}
    </Show>
  );
}
