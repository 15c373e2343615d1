import { createMemo, createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import { NOTHING_SAID } from '../../../core/log/about.ts';
import { logBake as words } from '../../../core/speech/words/log-bake.ts';
import { log } from '../../../core/speech/words/log.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { Face, FaceProps } from '../face.ts';
import { LogPage } from '../LogPage.tsx';
import { recordsOf } from '../records-of.ts';
import { ChartFace } from './ChartFace.tsx';
import { endShown, firstSays, firstTable } from './first-table.ts';
import { RowsTable } from './RowsTable.tsx';
import { PAGES, pagesOf, type PageName } from './tables.ts';
import { tellingOf, type Telling } from './telling.ts';
import './Bake.css';

/** What happened in one bake, page by page: the first tells it in one look. */
export default function BakeFace(props: FaceProps & { readonly start: string }): JSX.Element {
  const telling = createMemo(() => {
    const found = recordsOf(props.house, props.log, props.start);
    return found && tellingOf(props.house, found, props.start);
  });
  return (
    <Show
      when={telling()}
      fallback={
        <LogPage
          back={log.title}
          onBack={() => props.onBack()}
          words={<Words headline={log.title} detail={log.gone} />}
        />
      }
    >
      {(its) => <OneBake {...props} telling={its()} />}
    </Show>
  );
}

function OneBake(
  props: FaceProps & { readonly start: string; readonly telling: Telling },
): JSX.Element {
  const [at, setAt] = createSignal<PageName | 'first' | 'chart'>('first');
  const [failed, setFailed] = createSignal(false);
  const pages = createMemo(() => pagesOf(props.telling));
  const there = () => PAGES.filter((name) => pages()[name]);
  const shown = () => {
    const name = at();
    const page = name === 'first' || name === 'chart' ? undefined : pages()[name];
    return page && { name: name as PageName, page };
  };
  const about = () => props.log.abouts()[props.start] ?? NOTHING_SAID;
  const name = () => showBread(props.telling.page.name);
  const turn = (page: PageName | 'first' | 'chart'): void => {
    // What is being said is of the page that was left.
    props.house.say('');
    setAt(page);
  };
  const open = (face: Exclude<Face['at'], 'list' | 'plots' | 'bake'>): void => {
    props.house.say('');
    props.onOpen({ at: face, start: props.start });
  };
  const after = (page: PageName): PageName | null => there()[there().indexOf(page) + 1] ?? null;
  const hide = async (): Promise<void> => {
    const why = await props.log.say(props.start, { hidden: !about().hidden });
    setFailed(why !== null);
  };
  return (
    <Switch
      fallback={
        <LogPage
          wide
          back={log.title}
          onBack={() => props.onBack()}
          caption={props.house.caption()}
          words={
            <Words headline={name()} detail={endShown(props.telling)}>
              <RowsTable headless table={firstTable(props.telling, about())} label={name()} />
            </Words>
          }
          controls={
            <>
              <Control label={words.pages.times} onPress={() => turn('times')} />
              <Control label={words.chart} onPress={() => turn('chart')} />
              <Control label={words.cut} onPress={() => open('cut')} />
              <Control label={words.keepsakes} onPress={() => open('keepsakes')} />
              <Control label={words.compare} onPress={() => open('compare')} />
              <Control label={words.share} onPress={() => open('share')} />
            </>
          }
        />
      }
    >
      <Match when={at() === 'chart'}>
        <ChartFace house={props.house} telling={props.telling} onBack={() => turn('first')} />
      </Match>
      <Match when={shown()}>
        {(its) => (
          <LogPage
            wide
            back={name()}
            onBack={() => turn('first')}
            caption={props.house.caption()}
            words={
              <Words
                headline={words.pages[its().name]}
                detail={failed() ? words.notWritten : undefined}
              >
                <RowsTable table={its().page.table} label={words.pages[its().name]} />
                <Show when={its().page.detail}>{(more) => <p class="bake-more">{more()}</p>}</Show>
              </Words>
            }
            controls={
              <>
                <Show when={after(its().name)}>
                  {(next) => <Control label={words.pages[next()]} onPress={() => turn(next())} />}
                </Show>
                <Control
                  label={words.say}
                  onPress={() =>
                    props.house.say(
                      its().name === 'times'
                        ? `${firstSays(props.telling)} ${its().page.says}`
                        : its().page.says,
                    )
                  }
                />
                <Show when={after(its().name) === null}>
                  <Control
                    label={about().hidden ? words.show : words.hide}
                    fresh="hide"
                    disabled={!props.house.holds}
                    onPress={() => void hide()}
                  />
                </Show>
              </>
            }
          />
        )}
      </Match>
    </Switch>
  );
}
