import { tongue } from '../../../core/speech/tongue.ts';
import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import type { About } from '../../../core/log/about.ts';
import { KEEPSAKE_LIMITS } from '../../../core/log/keepsake-limits.ts';
import { cleanTag } from '../../../core/log/said-with.ts';
import { isTag, tagName, TAGS } from '../../../core/log/tags.ts';
import { keepsakes, tagPage as words } from '../../../core/speech/words/keepsakes.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import { TextFace } from '../../TextFace.tsx';
import { LogPage } from '../LogPage.tsx';
import type { Kept } from './kept.ts';

/** So many at once. */
const ON_PAGE = 8;

const alike = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** Words that a bake is found again by: the catalogue's and the baker's own, each on or off by a press. */
export function TagsFace(props: {
  readonly kept: Kept;
  /** Of all bakes: own words that stand at one may stand at another. */
  readonly abouts: Readonly<Record<string, About>>;
  readonly onBack: () => void;
}): JSX.Element {
  const [page, setPage] = createSignal(0);
  const [typing, setTyping] = createSignal(false);
  const tags = (): readonly string[] => props.kept.said().tags;
  // Words that were just pressed off stay where they are, so that they may be pressed on again.
  const [seen, setSeen] = createSignal<readonly string[]>([]);
  const all = createMemo(() => {
    const used = Object.values(props.abouts).flatMap((about) => about.tags);
    const own = [...new Set([...used, ...seen()])].filter((tag) => !isTag(tag));
    return [...TAGS, ...own.toSorted((a, b) => a.localeCompare(b, tongue()))];
  });
  const pages = (): number => Math.ceil(all().length / ON_PAGE);
  const at = (): number => Math.min(page(), pages() - 1);
  const isLast = (): boolean => at() === pages() - 1;
  const isFull = (): boolean => tags().length >= KEEPSAKE_LIMITS.tags;
  const turn = (tag: string): void => {
    setSeen([...seen(), tag]);
    const has = tags().includes(tag);
    void props.kept.say({ tags: has ? tags().filter((one) => one !== tag) : [...tags(), tag] });
  };
  const add = async (typed: string): Promise<void> => {
    const text = cleanTag(typed);
    const known = all().find((tag) => alike(tag, text) || alike(tagName(tag), text)) ?? text;
    if (
      known === '' ||
      tags().includes(known) ||
      (await props.kept.say({ tags: [...tags(), known] }))
    ) {
      setPage(Math.max(0, Math.floor(all().indexOf(known) / ON_PAGE)));
      setTyping(false);
    }
  };
  return (
    <Show
      when={typing()}
      fallback={
        <LogPage
          wide
          back={keepsakes.title}
          onBack={() => props.onBack()}
          words={
            <Words headline={words.title} detail={isFull() ? words.full : words.detail}>
              <div class="keep-grid keep-top" role="group" aria-label={words.title}>
                <For each={all().slice(at() * ON_PAGE, (at() + 1) * ON_PAGE)}>
                  {(tag) => (
                    <Control
                      label={tagName(tag)}
                      value={tags().includes(tag) ? words.on : undefined}
                      fresh={tag}
                      chosen={tags().includes(tag)}
                      disabled={isFull() && !tags().includes(tag)}
                      onPress={() => turn(tag)}
                    />
                  )}
                </For>
              </div>
            </Words>
          }
          controls={
            <>
              <Control label={words.own} disabled={isFull()} onPress={() => setTyping(true)} />
              <Show when={pages() > 1}>
                <Control
                  label={isLast() ? keepsakes.first : keepsakes.later}
                  onPress={() => setPage(isLast() ? 0 : at() + 1)}
                />
              </Show>
            </>
          }
        />
      }
    >
      <TextFace
        page={LogPage}
        ask={words.ownAsk}
        detail={words.ownDetail}
        begun=""
        lines="one"
        most={KEEPSAKE_LIMITS.tagLetters}
        blank={false}
        back={keepsakes.tags}
        onTake={(typed) => void add(typed)}
        onBack={() => setTyping(false)}
      />
    </Show>
  );
}
