import { createSignal, For, Show, type Component, type JSX } from 'solid-js';
import {
  ALLERGENS,
  allergenText,
  hasKinds,
  isOpen,
  kindsIn,
  namesNone,
  ownTexts,
  packetState,
  standsIn,
  unread,
  withAllergen,
  withList,
  type Allergen,
  type KindedAllergen,
  type Packed,
} from '../core/formula/allergens.ts';
import type { Grain } from '../core/formula/formula.ts';
import { GLUTEN_OF, KIND_TEXTS } from '../core/formula/allergen-texts.ts';
import { allergenNames, allergenPage } from '../core/speech/words/allergens.ts';
import { fill } from '../core/speech/fill.ts';
import { showKind, showKinds } from '../core/speech/show-allergen.ts';
import { showPart } from '../core/speech/show-part.ts';
import { Control } from '../parts/Control.tsx';
import { Words } from '../parts/Words.tsx';
import type { SidePageProps } from './SidePage.tsx';

/** So many on a page: those that come to a loaf most often. */
const FIRST = 8;

/**
 * What the packet of a flour or a filling names, a press each: pressed it is named, pressed again it is
 * not. Nothing is none before it is said.
 */
export function PacketFace(props: {
  /** The page it is shown on, and the class of a grid of presses there. */
  readonly page: Component<SidePageProps & { readonly wide?: boolean }>;
  readonly grid: string;
  readonly name: string;
  readonly of: Packed;
  /** Of a flour: it brings its gluten, whatever its packet says. Null: a filling. */
  readonly grain: Grain | null;
  readonly back: string;
  readonly onChange: (to: (of: Packed) => Packed) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [rest, setRest] = createSignal(false);
  const [kinds, setKinds] = createSignal<KindedAllergen | null>(null);
  const title = () => fill(allergenPage.title, { name: showPart(props.name) });
  const list = () => props.of.allergens ?? [];
  /** The grain's own gluten with it. */
  const all = () =>
    props.grain === null ? list() : [allergenText('gluten', GLUTEN_OF[props.grain]), ...list()];
  const state = () => packetState(props.of);
  const change = (to: (of: Packed) => Packed): void => props.onChange(to);
  const isRead = (): boolean => state() === 'read' && !isOpen(list());
  const turn = (allergen: Allergen, kind?: string): void =>
    change((of) => withList(of, withAllergen(of.allergens ?? [], allergen, kind)));
  /** A flour's own grain is no question: its packet cannot leave it out. */
  const kindsToAsk = (kinded: KindedAllergen): readonly string[] => {
    const own = kinded === 'gluten' && props.grain !== null ? GLUTEN_OF[props.grain] : null;
    return KIND_TEXTS[kinded].filter((kind) => kind !== own);
  };
  const value = (allergen: Allergen): string | undefined => {
    const stands = standsIn(all(), allergen);
    if (stands === 'no') return undefined;
    if (stands === 'open') return allergenPage.maybe;
    return showKinds(kindsIn(all(), allergen)) || allergenPage.yes;
  };
  const press = (allergen: Allergen): void => {
    if (hasKinds(allergen)) setKinds(allergen);
    else turn(allergen);
  };
  const names = (): JSX.Element => (
    <div class={props.grid}>
      <For each={rest() ? ALLERGENS.slice(FIRST) : ALLERGENS.slice(0, FIRST)}>
        {(allergen) => (
          <Control
            label={allergenNames[allergen]}
            value={value(allergen)}
            fresh={allergen}
            chosen={standsIn(all(), allergen) === 'named'}
            onPress={() => press(allergen)}
          />
        )}
      </For>
      <Show when={rest()}>
        <For each={ownTexts(list())}>
          {(text) => (
            <Control
              label={text}
              value={allergenPage.yes}
              chosen
              onPress={() =>
                change((of) =>
                  withList(
                    of,
                    (of.allergens ?? []).filter((one) => one !== text),
                  ),
                )
              }
            />
          )}
        </For>
      </Show>
    </div>
  );
  return (
    <Show
      when={kinds()}
      keyed
      fallback={
        <props.page
          wide
          back={props.back}
          onBack={() => props.onBack()}
          words={
            <Words headline={title()} detail={allergenPage.stands[state()]}>
              {names()}
            </Words>
          }
          controls={
            <>
              <Show
                when={list().length > 0}
                fallback={
                  <Control
                    label={allergenPage.none}
                    chosen={state() === 'none'}
                    onPress={() =>
                      change(state() === 'none' ? (of) => withList(of, []) : namesNone)
                    }
                  />
                }
              >
                <Control
                  label={allergenPage.right}
                  chosen={isRead()}
                  disabled={isOpen(list())}
                  onPress={() =>
                    change(isRead() ? unread : (of) => withList(of, of.allergens ?? []))
                  }
                />
              </Show>
              <Control
                label={rest() ? allergenPage.first : allergenPage.others}
                onPress={() => setRest(!rest())}
              />
            </>
          }
        />
      }
    >
      {(kinded) => (
        <props.page
          wide
          back={title()}
          onBack={() => setKinds(null)}
          words={
            <Words headline={allergenPage.kindAsk[kinded]} detail={allergenPage.caution}>
              <div class={props.grid}>
                <For each={kindsToAsk(kinded)}>
                  {(kind) => (
                    <Control
                      label={showKind(kind)}
                      value={kindsIn(list(), kinded).includes(kind) ? allergenPage.yes : undefined}
                      fresh={kind}
                      chosen={kindsIn(list(), kinded).includes(kind)}
                      onPress={() => turn(kinded, kind)}
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
