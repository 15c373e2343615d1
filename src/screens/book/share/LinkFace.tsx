import { createResource, createSignal, Show, type JSX } from 'solid-js';
import type { Formula } from '../../../core/formula/formula.ts';
import { bench } from '../../../core/speech/words/bench.ts';
import { share, shareLink } from '../../../core/speech/words/share.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { Control } from '../../../parts/Control.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { BookPage } from '../BookPage.tsx';
import './Share.css';

/** Addresses that no other device finds. */
const LOCAL = /^https?:\/\/(localhost|127\.|\[::1\])/;

/** A formula as a link, and as a code for a telephone's camera. */
export function LinkFace(props: {
  readonly house: House;
  readonly formula: Formula;
  readonly onBack: () => void;
}): JSX.Element {
  const [sheets] = createResource(() => props.house.sheets());
  const [shown, setShown] = createSignal(false);
  const [told, setTold] = createSignal<string | null>(null);
  const link = (): string | null => sheets()?.link(props.formula) ?? null;
  const code = () => (link() === null ? null : (sheets()?.code(link()!) ?? null));
  const detail = (): string => {
    if (!sheets()) return '';
    if (link() === null) return shareLink.noLink;
    const address = link()!.split('#')[0]!;
    if (LOCAL.test(address)) return fill(shareLink.local, { address });
    return code() === null ? shareLink.noCode : shareLink.detail;
  };
  const copy = async (): Promise<void> => {
    const done = await sheets()!.copy(link()!);
    setTold(done ? shareLink.copied : shareLink.notCopied);
  };
  return (
    <>
      <BookPage
        back={share.title}
        onBack={() => props.onBack()}
        words={
          <Words headline={share.link} detail={told() ?? detail()}>
            <Show when={link() !== null && (!code() || told() === shareLink.notCopied)}>
              <p class="share-link">{link()}</p>
            </Show>
          </Words>
        }
        controls={
          <Show when={link() !== null}>
            <Show when={code()}>
              <Control label={shareLink.show} onPress={() => setShown(true)} />
            </Show>
            <Control label={shareLink.copy} onPress={() => void copy()} />
          </Show>
        }
      />
      <Show when={shown() && code()}>
        {(drawn) => (
          <Sheet title={shareLink.headline}>
            <div class="share-shown">
              <svg
                class="share-code"
                viewBox={`0 0 ${drawn().size} ${drawn().size}`}
                role="img"
                aria-label={fill(shareLink.alt, { name: showBread(props.formula.name) })}
              >
                <rect width={drawn().size} height={drawn().size} fill="#fff" />
                <path d={drawn().path} fill="#000" shape-rendering="crispEdges" />
              </svg>
              <Control label={bench.close} onPress={() => setShown(false)} />
            </div>
          </Sheet>
        )}
      </Show>
    </>
  );
}
