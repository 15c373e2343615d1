import { createEffect, on, Show, type JSX } from 'solid-js';
import { logList as words } from '../../../core/speech/words/log-list.ts';
import { start } from '../../../core/speech/words/start.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { FaceProps } from '../face.ts';
import { LogPage } from '../LogPage.tsx';
import { BakeRows } from './BakeRows.tsx';
import type { Finding } from './finding.ts';
import type { Found } from './found.ts';
import { makeRows } from './make-rows.ts';

/** "12 of 240 bakes", or "240 bakes" where none is left out. */
export const countOf = (found: number, of: number): string => {
  if (found < of) return fill(words.some, { n: found, count: of });
  return of === 1 ? words.one : fill(words.many, { count: of });
};

/** All bakes that are found, and what finds them. */
export function BakesPage(
  props: FaceProps & { readonly finding: Finding; readonly found: Found },
): JSX.Element {
  const bakes = () => props.found.bakes();
  // eslint-disable-next-line solid/reactivity -- the finding is one
  const rows = makeRows(bakes, ({ start: id }) => id, props.finding);
  createEffect(on(() => props.finding.query(), rows.toTop, { defer: true }));
  const hasAny = () => props.found.of() > 0 || props.finding.isAsked();
  const isPaged = () => bakes().length > rows.fit();
  const nothing = () => {
    if (hasAny()) return { headline: words.nothing, detail: words.nothingDetail };
    if (props.found.hidden() > 0) return { headline: words.hidden, detail: words.hiddenDetail };
    return { headline: words.none, detail: words.noneDetail };
  };
  return (
    <LogPage
      back={start.title}
      onBack={() => props.onBack()}
      words={
        <div class="log-list">
          <Show when={hasAny()}>
            <div class="log-head">
              <Show when={bakes().length > 0}>
                <h1 class="act-headline" aria-live="polite">
                  {countOf(bakes().length, props.found.of())}
                </h1>
              </Show>
              <input
                class="log-search"
                type="search"
                autocomplete="off"
                spellcheck={false}
                enterkeyhint="done"
                aria-label={words.search}
                placeholder={words.search}
                value={props.finding.query().text ?? ''}
                onInput={({ currentTarget }) => props.finding.type(currentTarget.value)}
                onKeyDown={(e) => e.key === 'Enter' && e.currentTarget.blur()}
              />
            </div>
          </Show>
          <Show
            when={bakes().length > 0}
            fallback={
              <div aria-live="polite">
                <Words headline={nothing().headline} detail={nothing().detail} />
              </div>
            }
          >
            <BakeRows
              house={props.house}
              log={props.log}
              rows={rows}
              count={bakes().length}
              onPick={(id) => props.onOpen({ at: 'bake', start: id })}
            />
          </Show>
        </div>
      }
      controls={
        <>
          <Show when={isPaged()}>
            <Control label={words.newer} disabled={rows.isFirst()} onPress={() => rows.turn(-1)} />
            <Control label={words.older} disabled={rows.isLast()} onPress={() => rows.turn(1)} />
          </Show>
          <Show when={hasAny() || props.found.hidden() > 0}>
            <Control label={words.find} onPress={() => props.finding.turn('find')} />
          </Show>
          <Show when={props.finding.isAsked()}>
            <Control label={words.showAll} strong onPress={() => props.finding.clear()} />
          </Show>
        </>
      }
      aside={
        <Show when={hasAny()}>
          <Control label={words.mine} onPress={() => props.onOpen({ at: 'plots' })} />
        </Show>
      }
    />
  );
}
