import { createSignal, Show, type JSX } from 'solid-js';
import { KEEPSAKE_LIMITS } from '../../../core/log/keepsake-limits.ts';
import { keepsakes, photoWords as words } from '../../../core/speech/words/keepsakes.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { FileControl } from '../../FileControl.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { EraseFace } from '../../EraseFace.tsx';
import { LogPage } from '../LogPage.tsx';
import type { Kept } from './kept.ts';
import { Photo } from './Photo.tsx';

/** Photos of a bake, each as large as there is room; taken, and erased for good. */
export function PhotosFace(props: {
  readonly house: House;
  readonly kept: Kept;
  /** Which one is shown first; left out: the last. */
  readonly at?: string | undefined;
  readonly onBack: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- it begins with it and goes its own way
  const [at, setAt] = createSignal(props.at);
  const [busy, setBusy] = createSignal(false);
  const [erases, setErases] = createSignal(false);
  const all = () => props.kept.photos() ?? [];
  const index = (): number => {
    const found = all().findIndex(({ id }) => id === at());
    return found < 0 ? all().length - 1 : found;
  };
  const one = () => all()[index()];
  const still = (): boolean => busy() || all().length >= KEEPSAKE_LIMITS.photos;
  const take = async (file: File): Promise<void> => {
    if (still()) return;
    setBusy(true);
    if (await props.kept.takePhoto(file)) setAt(all().at(-1)?.id);
    setBusy(false);
  };
  const erase = async (): Promise<void> => {
    const its = one();
    if (its && (await props.kept.erase(its.id))) setErases(false);
  };
  const date = (): string => {
    const its = one();
    return its ? props.house.date(its.at) : '';
  };
  const headline = (): string => {
    if (busy()) return words.busy;
    const numbers = { n: index() + 1, of: all().length };
    return all().length === 0 ? words.none : fill(words.one, numbers);
  };
  const detail = (): string => {
    if (all().length === 0) return words.noneDetail;
    return all().length >= KEEPSAKE_LIMITS.photos
      ? words.full
      : fill(words.oneDetail, { date: date() });
  };
  return (
    <Show
      when={erases() && one()}
      fallback={
        <LogPage
          back={keepsakes.title}
          onBack={() => props.onBack()}
          words={
            <Words headline={headline()} detail={detail()}>
              <Show when={one()} keyed>
                {(its) => (
                  <Photo of={its} class="keep-large" alt={fill(words.alt, { n: index() + 1 })} />
                )}
              </Show>
            </Words>
          }
          controls={
            <>
              <FileControl
                label={words.camera}
                accept="image/*"
                camera
                disabled={still()}
                onFile={(file) => void take(file)}
              />
              <FileControl
                label={words.choose}
                accept="image/*"
                disabled={still()}
                onFile={(file) => void take(file)}
              />
              <Show when={all().length > 1}>
                <Control
                  label={words.next}
                  fresh={words.next}
                  onPress={() => setAt(all()[(index() + 1) % all().length]?.id)}
                />
              </Show>
              <Show when={one()}>
                <Control
                  label={words.erase}
                  disabled={busy()}
                  onPress={() => {
                    setAt(one()?.id);
                    setErases(true);
                  }}
                />
              </Show>
            </>
          }
        />
      }
    >
      <EraseFace
        page={LogPage}
        ask={words.eraseAsk}
        detail={words.eraseDetail}
        back={keepsakes.photos}
        onErase={() => void erase()}
        onBack={() => setErases(false)}
      />
    </Show>
  );
}
