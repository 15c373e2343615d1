import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import { logFind as words } from '../../../core/speech/words/log-list.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import { LogPage } from '../LogPage.tsx';
import { countOf } from './BakesPage.tsx';
import type { Finding, FoundBy } from './finding.ts';
import type { Found } from './found.ts';

const ASKS = {
  month: 'whichMonth',
  formula: 'whichFormula',
  tag: 'whichTag',
  turned: 'whichTurned',
} as const satisfies Readonly<Record<FoundBy, keyof typeof words>>;
/** So many at once beside *any*. */
const AT_ONCE = 8;

/** One value to find bakes by, out of those that bakes have. */
export function PickFace(props: {
  readonly by: FoundBy;
  readonly finding: Finding;
  readonly found: Found;
}): JSX.Element {
  const [page, setPage] = createSignal(0);
  const choices = createMemo(() => props.found.choices(props.by));
  const pages = () => Math.max(1, Math.ceil(choices().length / AT_ONCE));
  const at = () => Math.min(page(), pages() - 1);
  const isLast = () => at() === pages() - 1;
  const values = createMemo(
    () =>
      choices()
        .slice(at() * AT_ONCE, (at() + 1) * AT_ONCE)
        .map(({ value }) => value),
    undefined,
    { equals: (a, b) => a.join('\n') === b.join('\n') },
  );
  const countFor = (value: string) => choices().find((one) => one.value === value)?.count ?? 0;
  const nameOf = (value: string) => props.found.nameOf(props.by, value);
  const take = (value: string | null): void => {
    props.finding.choose(props.by, value);
    props.finding.turn('find');
  };
  const chosen = () => props.finding.query()[props.by];
  return (
    <LogPage
      back={words.title}
      onBack={() => props.finding.turn('find')}
      words={
        <Words headline={words[ASKS[props.by]]}>
          <div class="log-grid log-picks log-top" role="group" aria-label={words[ASKS[props.by]]}>
            <Control label={words.any} chosen={chosen() === undefined} onPress={() => take(null)} />
            <For each={values()}>
              {(value) => (
                <Control
                  label={nameOf(value)}
                  value={countOf(countFor(value), countFor(value))}
                  chosen={chosen() === value}
                  fresh={value}
                  onPress={() => take(value)}
                />
              )}
            </For>
          </div>
        </Words>
      }
      controls={
        <Show when={pages() > 1}>
          <Control
            label={isLast() ? words.first : words.more}
            onPress={() => setPage(isLast() ? 0 : at() + 1)}
          />
        </Show>
      }
    />
  );
}
