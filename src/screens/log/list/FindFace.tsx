import { For, Show, type JSX } from 'solid-js';
import { logFind as words, logList } from '../../../core/speech/words/log-list.ts';
import { log } from '../../../core/speech/words/log.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import { LogPage } from '../LogPage.tsx';
import { countOf } from './BakesPage.tsx';
import { FOUND_BY, type Finding, type FoundBy } from './finding.ts';
import type { Found } from './found.ts';

/** By what bakes are chosen, what is chosen already, and how many that leaves. */
export function FindFace(props: { readonly finding: Finding; readonly found: Found }): JSX.Element {
  const chosen = (by: FoundBy): string => {
    const value = props.finding.query()[by];
    return value === undefined ? words.any : props.found.nameOf(by, value);
  };
  /** What no bake has is not asked for. */
  const offered = (by: FoundBy): boolean =>
    props.finding.query()[by] !== undefined || by !== 'tag' || props.found.choices(by).length > 0;
  const shows = () => props.finding.query().hidden === true;
  return (
    <LogPage
      back={log.title}
      onBack={() => props.finding.turn('bakes')}
      words={
        <Words
          headline={words.title}
          detail={countOf(props.found.bakes().length, props.found.of())}
        >
          <div class="log-grid log-top" role="group" aria-label={words.title}>
            <For each={FOUND_BY}>
              {(by) => (
                <Show when={offered(by)}>
                  <Control
                    label={words[by]}
                    value={chosen(by)}
                    onPress={() => props.finding.turn(by)}
                  />
                </Show>
              )}
            </For>
            <Show when={props.found.hidden() > 0}>
              <Control
                label={words.hidden}
                value={shows() ? words.shown : words.notShown}
                chosen={shows()}
                onPress={() => props.finding.showHidden(!shows())}
              />
            </Show>
          </div>
        </Words>
      }
      controls={
        <Show when={props.finding.isAsked()}>
          <Control label={logList.showAll} strong onPress={() => props.finding.clear()} />
        </Show>
      }
    />
  );
}
