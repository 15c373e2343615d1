import { createSignal, For, Show, type JSX } from 'solid-js';
import {
  ALLERGENS,
  hasKinds,
  kindsIn,
  ownTexts,
  standsIn,
  withAllergen,
  type Allergen,
  type KindedAllergen,
} from '../../core/formula/allergens.ts';
import { ALLERGEN_TEXTS, KIND_TEXTS } from '../../core/formula/allergen-texts.ts';
import { allergenNames, allergenPage } from '../../core/speech/words/allergens.ts';
import { neighbourWords as words } from '../../core/speech/words/circle.ts';
import { fill } from '../../core/speech/fill.ts';
import { showKind, showKinds } from '../../core/speech/show-allergen.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import { CirclePage } from './CirclePage.tsx';

/** So many on a page: those that bread brings most often. */
const FIRST = 8;

/** What somebody must not eat, a press each: pressed it is on their list, pressed again it is not. */
export function WatchFace(props: {
  readonly name: string;
  readonly watch: readonly string[];
  readonly onWatch: (watch: readonly string[]) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [rest, setRest] = createSignal(false);
  const [kinds, setKinds] = createSignal<KindedAllergen | null>(null);
  const turn = (allergen: Allergen, kind?: string): void =>
    props.onWatch(withAllergen(props.watch, allergen, kind));
  /** All kinds of it, as long as none is named. */
  const isAll = (allergen: Allergen): boolean => props.watch.includes(ALLERGEN_TEXTS[allergen]);
  const value = (allergen: Allergen): string | undefined => {
    if (standsIn(props.watch, allergen) === 'no') return undefined;
    return (
      showKinds(kindsIn(props.watch, allergen)) || (hasKinds(allergen) ? words.all : words.yes)
    );
  };
  const turnAll = (allergen: KindedAllergen): void => {
    const others = props.watch.filter((text) => standsIn([text], allergen) === 'no');
    props.onWatch(isAll(allergen) ? others : [...others, ALLERGEN_TEXTS[allergen]]);
  };
  const turnKind = (allergen: KindedAllergen, kind: string): void => {
    const named = props.watch.filter((text) => text !== ALLERGEN_TEXTS[allergen]);
    props.onWatch(withAllergen(named, allergen, kind));
  };
  return (
    <Show
      when={kinds()}
      keyed
      fallback={
        <CirclePage
          wide
          back={props.name}
          onBack={() => props.onBack()}
          words={
            <Words headline={fill(words.watchAsk, { name: props.name })} detail={words.watchDetail}>
              <div class="circle-grid circle-top">
                <For each={rest() ? ALLERGENS.slice(FIRST) : ALLERGENS.slice(0, FIRST)}>
                  {(allergen) => (
                    <Control
                      label={allergenNames[allergen]}
                      value={value(allergen)}
                      fresh={allergen}
                      chosen={standsIn(props.watch, allergen) !== 'no'}
                      onPress={() => (hasKinds(allergen) ? setKinds(allergen) : turn(allergen))}
                    />
                  )}
                </For>
                <Show when={rest()}>
                  <For each={ownTexts(props.watch)}>
                    {(text) => (
                      <Control
                        label={text}
                        value={words.yes}
                        chosen
                        onPress={() => props.onWatch(props.watch.filter((one) => one !== text))}
                      />
                    )}
                  </For>
                </Show>
              </div>
            </Words>
          }
          controls={
            <Control
              label={rest() ? allergenPage.first : allergenPage.others}
              onPress={() => setRest(!rest())}
            />
          }
        />
      }
    >
      {(kinded) => (
        <CirclePage
          wide
          back={props.name}
          onBack={() => setKinds(null)}
          words={
            <Words headline={allergenPage.kindAsk[kinded]}>
              <div class="circle-grid circle-top">
                <Control
                  label={words.allKinds[kinded]}
                  value={isAll(kinded) ? words.yes : undefined}
                  fresh={kinded}
                  chosen={isAll(kinded)}
                  onPress={() => turnAll(kinded)}
                />
                <For each={KIND_TEXTS[kinded]}>
                  {(kind) => (
                    <Control
                      label={showKind(kind)}
                      value={kindsIn(props.watch, kinded).includes(kind) ? words.yes : undefined}
                      fresh={kind}
                      chosen={kindsIn(props.watch, kinded).includes(kind)}
                      onPress={() => turnKind(kinded, kind)}
                    />
                  )}
                </For>
              </div>
            </Words>
          }
        />
      )}
    </Show>
  );
}
