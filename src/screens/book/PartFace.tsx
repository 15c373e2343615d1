import { createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import { weighedAmounts } from '../../core/formula/mixed-amounts.ts';
import type { Filling, Formula } from '../../core/formula/formula.ts';
import { MOST_SOAK } from '../../core/formula/read-filling.ts';
import { changeFlour } from '../../core/formula/set-flours.ts';
import { allergenPage } from '../../core/speech/words/allergens.ts';
import { bookLines, grains } from '../../core/speech/words/book.ts';
import { bookParts } from '../../core/speech/words/book-parts.ts';
import { fill } from '../../core/speech/fill.ts';
import { showNumber } from '../../core/speech/numbers.ts';
import { plainPart, showPart } from '../../core/speech/show-part.ts';
import { Control } from '../../parts/Control.tsx';
import { Tiles } from '../../parts/Tiles.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { AllergenFace } from './AllergenFace.tsx';
import { BookPage } from './BookPage.tsx';
import type { Editing } from './editing.ts';
import { GrainTiles } from './FlourFace.tsx';
import { NumberFace } from './NumberFace.tsx';
import { partOf, renamed, shortState, tellPart, withPart, type PartKey } from './parts.ts';
import { TextFace } from '../TextFace.tsx';
import { lineName, scaleGrams } from './words.ts';

type Face = 'about' | 'name' | 'grain' | 'allergens' | 'counted' | 'soak';

/** A flour or a filling beside its number: its name, its grain or its water, and what it brings. */
export function PartFace(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly part: PartKey;
  /** It is taken out. */
  readonly onGone: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [face, setFace] = createSignal<Face>('about');
  const toAbout = (): void => void setFace('about');
  const formula = () => props.editing.formula();
  const part = () => partOf(formula(), props.part);
  const flour = () => {
    const { kind, of } = part();
    return kind === 'flour' ? of : undefined;
  };
  const filling = () => {
    const { kind, of } = part();
    return kind === 'filling' ? of : undefined;
  };
  const title = () => lineName(formula(), props.part);
  const soaked = (percent: number): Formula => {
    const { soak: _, ...dry } = filling()!;
    const of: Filling = percent === 0 ? dry : { ...dry, soak: { water: percent } };
    return withPart(formula(), { kind: 'filling', of });
  };
  /** What a soaker of so much water comes to; less than 1 % no formula holds. */
  const tellSoaked = (percent: number): string | null => {
    if (percent > 0 && percent < 1) return null;
    const { soakers } = weighedAmounts(soaked(percent), props.editing.scaled().dough);
    const water = soakers.find(({ id }) => id === filling()!.id);
    return fill(bookLines.is, {
      value: water ? scaleGrams(water.grams, props.part, props.house.ways()) : bookParts.soakNone,
    });
  };
  const takeOut = (): void => {
    // Left before it is gone: nothing here is asked for a filling that is no more.
    const { id } = part().of;
    const [{ editing }, old] = [props, formula()];
    props.onGone();
    editing.change({ ...old, fillings: old.fillings.filter((one) => one.id !== id) });
  };
  /** What is soaked long is soaked cold. */
  const cautions = (): string =>
    filling()?.soak ? `${bookParts.soakCare} ${allergenPage.caution}` : allergenPage.caution;
  const soakValue = (): string => {
    const water = filling()?.soak?.water;
    return water === undefined
      ? bookParts.soakNone
      : fill(bookLines.percent, { percent: showNumber(water) });
  };
  return (
    <Switch>
      <Match when={face() === 'about'}>
        <BookPage
          wide
          back={title()}
          onBack={() => props.onBack()}
          words={
            <Words headline={title()} detail={tellPart(part())} care={cautions()}>
              <div class="book-grid book-top">
                <Control
                  label={allergenPage.label}
                  value={shortState(part())}
                  onPress={() => setFace('allergens')}
                />
                <Show when={flour()}>
                  {(of) => (
                    <Control
                      label={bookParts.grain}
                      value={grains[of().grain]}
                      onPress={() => setFace('grain')}
                    />
                  )}
                </Show>
                <Show when={filling()}>
                  <Control
                    label={bookParts.counted}
                    value={formula().fillingsOf === 'dough' ? bookParts.ofDough : bookParts.ofFlour}
                    onPress={() => setFace('counted')}
                  />
                  <Control
                    label={bookParts.soak}
                    value={soakValue()}
                    onPress={() => setFace('soak')}
                  />
                </Show>
                <Control label={bookParts.name} onPress={() => setFace('name')} />
                <Show when={filling()}>
                  <Control label={bookLines.remove} onPress={takeOut} />
                </Show>
              </div>
            </Words>
          }
        />
      </Match>
      <Match when={face() === 'name'}>
        <TextFace
          page={BookPage}
          ask={bookParts.nameAsk}
          begun={plainPart(part().of.name)}
          lines="one"
          most={60}
          blank={false}
          back={title()}
          onTake={(text) => {
            const name = text.trim();
            const was = part().of.name;
            // What is left as it was shown stays what it is kept as.
            if (name !== '' && name !== was && name !== plainPart(was)) {
              props.editing.change(withPart(formula(), renamed(part(), name)));
            }
            toAbout();
          }}
        />
      </Match>
      <Match when={face() === 'grain'}>
        <BookPage
          back={title()}
          onBack={toAbout}
          words={
            <Words headline={bookParts.grainAsk} detail={showPart(part().of.name)}>
              <GrainTiles
                chosen={flour()!.grain}
                onChoose={(grain) => {
                  if (grain !== flour()!.grain) {
                    props.editing.change(changeFlour(formula(), part().of.id, { grain }));
                  }
                  toAbout();
                }}
              />
            </Words>
          }
        />
      </Match>
      <Match when={face() === 'allergens'}>
        <AllergenFace editing={props.editing} part={props.part} back={title()} onBack={toAbout} />
      </Match>
      <Match when={face() === 'counted'}>
        <BookPage
          back={title()}
          onBack={toAbout}
          words={
            <Words headline={bookParts.countedAsk} detail={bookParts.countedDetail}>
              <Tiles
                label={bookParts.countedAsk}
                chosen={formula().fillingsOf ?? 'flour'}
                options={[
                  { value: 'flour', label: bookParts.ofFlour, means: bookParts.ofFlourMeans },
                  { value: 'dough', label: bookParts.ofDough, means: bookParts.ofDoughMeans },
                ]}
                onChoose={(value) => {
                  const fillingsOf = value as 'flour' | 'dough';
                  if (fillingsOf !== (formula().fillingsOf ?? 'flour')) {
                    props.editing.change({ ...formula(), fillingsOf });
                  }
                  toAbout();
                }}
              />
            </Words>
          }
        />
      </Match>
      <Match when={face() === 'soak'}>
        <NumberFace
          house={props.house}
          ask={bookParts.soakAsk}
          unit="%"
          least={0}
          most={MOST_SOAK}
          now={fill(bookParts.soakNow, { value: fill(bookLines.was, { value: soakValue() }) })}
          tell={tellSoaked}
          back={title()}
          onTake={(typed) => props.editing.change(soaked(typed))}
          onBack={toAbout}
        />
      </Match>
    </Switch>
  );
}
