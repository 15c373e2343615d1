import { createMemo, createSignal, Show, type JSX } from 'solid-js';
import { weighInsOf } from '../../../machines/kitchen/weigh-ins.ts';
import { LOAVES, makeRecipe } from '../../core/formula/make-recipe.ts';
import { BREAD } from '../../core/formula/piece-for-bread.ts';
import { lossOf } from '../../core/oven/bake-loss-learned.ts';
import { recipeBowls } from '../../core/kitchen/split-bowls.ts';
import { scaleBy, type ScaleBy, type Scaled } from '../../core/formula/scale-by.ts';
import { bookScale } from '../../core/speech/words/book.ts';
import { bowlPage } from '../../core/speech/words/bowls.ts';
import { start } from '../../core/speech/words/start.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { tellShares } from '../../core/speech/in-bowls.ts';
import { keyedWeight } from '../../core/speech/keyed.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { showPart } from '../../core/speech/show-part.ts';
import { showWeight } from '../../core/speech/weights.ts';
import { Control } from '../../parts/Control.tsx';
import { Stepper } from '../../parts/Stepper.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { BookPage } from './BookPage.tsx';
import { BowlsFace } from './BowlsFace.tsx';
import type { Editing } from './editing.ts';
import { NumberFace } from './NumberFace.tsx';

type By = 'bread' | 'flour' | 'dough' | 'bin';

/** Most flour or dough that is keyed for one bake, g. Judgement. */
const MOST = 40_000;

/** For how much a formula's grams are told: loaves, or what there is of flour or dough. */
export function ScaleFace(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly onBack: () => void;
}): JSX.Element {
  const [at, setAt] = createSignal<By | 'bowls' | null>(null);
  const units = () => props.house.ways();
  const formula = () => props.editing.formula();
  const scaled = () => props.editing.scaled();
  const loss = createMemo(() => {
    const { vessel } = formula().process;
    const loaves = weighInsOf(props.house.kitchen()).filter((one) => one.vessel === vessel);
    return (piece: number): number => lossOf(piece, loaves).mean;
  });
  const main = () => formula().flours.reduce((a, b) => (b.pct > a.pct ? b : a));
  const asks = () => ({
    bread: bookScale.breadAsk,
    flour: bookScale.flourAsk,
    dough: bookScale.doughAsk,
    bin: fill(bookScale.binAsk, { name: showPart(main().name) }),
  });
  const scaleOf = (by: By, grams: number): ScaleBy =>
    by === 'bread'
      ? { by, loaves: scaled().loaves, bread: grams, loss: loss() }
      : by === 'bin'
        ? { by, flours: { [main().id]: grams } }
        : { by, grams };
  /** Bowls that a bake of this size is shared between. */
  const bowls = createMemo(() => {
    const { loaves, piece } = scaled();
    const equipment = props.house.equipment();
    const { recipe } = makeRecipe(formula(), { loaves, piece, scale: equipment.scale });
    return recipe ? recipeBowls(recipe, equipment) : [];
  });
  /** Beside the keys there is room for the first of it. */
  const toldShort = (of: Scaled): string =>
    fill(bookScale.told, {
      ...shown({ loaves: of.loaves }),
      piece: showWeight(Math.round(of.piece), units()),
      grams: showWeight(Math.round(of.dough), units()),
    });
  const told = (): string =>
    [toldShort(scaled()), tellShares(bowls(), units())].filter(Boolean).join(' ');
  const keyed = (by: By) => keyedWeight(by === 'bread' ? BREAD : { least: 1, most: MOST }, units());
  return (
    <Show
      when={at()}
      fallback={
        <BookPage
          back={showBread(formula().name)}
          onBack={() => props.onBack()}
          words={
            <Words headline={bookScale.title} detail={told()}>
              <div class="book-row book-top">
                <b>{bookScale.loaves}</b>
                <Stepper
                  label={bookScale.loaves}
                  value={scaled().loaves}
                  least={LOAVES.least}
                  most={LOAVES.most}
                  fewer={start.fewer}
                  more={start.more}
                  onChange={(loaves) => props.editing.setScale({ by: 'own', loaves })}
                />
              </div>
              <div class="book-grid">
                <Control label={bookScale.bread} onPress={() => setAt('bread')} />
                <Control label={bookScale.bin} onPress={() => setAt('bin')} />
                <Control label={bookScale.flour} onPress={() => setAt('flour')} />
                <Control label={bookScale.dough} onPress={() => setAt('dough')} />
              </div>
            </Words>
          }
          controls={
            <Show when={bowls().length > 1}>
              <Control label={bowlPage.press} onPress={() => setAt('bowls')} />
            </Show>
          }
        />
      }
      keyed
    >
      {(by) =>
        by === 'bowls' ? (
          <BowlsFace
            house={props.house}
            bowls={bowls()}
            back={bookScale.title}
            onBack={() => setAt(null)}
          />
        ) : (
          <NumberFace
            house={props.house}
            ask={asks()[by]}
            unit={keyed(by).unit}
            least={keyed(by).least}
            most={keyed(by).most}
            now={bookScale.detail}
            tell={(typed) => {
              const made = scaleBy(formula(), scaleOf(by, keyed(by).record(typed)));
              return made.scaled === null ? null : toldShort(made.scaled);
            }}
            back={bookScale.title}
            onTake={(typed) => props.editing.setScale(scaleOf(by, keyed(by).record(typed)))}
            onBack={() => setAt(null)}
          />
        )
      }
    </Show>
  );
}
