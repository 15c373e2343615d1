import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import {
  SIGN_NAMES,
  type LoafAnswers,
  type LoafSign,
  type Shown,
} from '../../../core/log/loaf-names.ts';
import { rowsFor } from '../../../core/log/loaf-rows.ts';
import { bench } from '../../../core/speech/words/bench.ts';
import { controls } from '../../../core/speech/words/controls.ts';
import { cutPage } from '../../../core/speech/words/cut-loaf.ts';
import { fill } from '../../../core/speech/fill.ts';
import type { ToldLoaf } from '../../../core/speech/tell-loaf.ts';
import { tellRemedy } from '../../../core/speech/tell-remedy.ts';
import { Control } from '../../../parts/Control.tsx';
import { RemedyWords } from '../../../parts/RemedyWords.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { LogPage } from '../LogPage.tsx';
import './cut.css';

const seen = (answers: LoafAnswers): readonly (readonly [LoafSign, Shown])[] =>
  SIGN_NAMES.flatMap((sign) => {
    const shown = answers[sign];
    return shown === undefined || shown === 'unsure' ? [] : [[sign, shown] as const];
  });

/** What a cut loaf came of, how sure that is, and the one thing to change; kept by the slab. */
export function ResultFace(props: {
  readonly house: House;
  readonly told: ToldLoaf;
  readonly answers: LoafAnswers;
  /** Of the kitchen, m above the sea. */
  readonly height: number;
  /** When it was kept; null: it was not yet. */
  readonly keptAt: number | null;
  /** It was pressed and is not in the record. */
  readonly refused: boolean;
  readonly onKeep: () => void;
  readonly onBefore: () => void;
  readonly onAgain: () => void;
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  const [todo, setTodo] = createSignal(false);
  const rows = createMemo(() =>
    rowsFor(seen(props.answers)).map((row) => tellRemedy(row, props.house.ways(), props.height)),
  );
  const open = (): void => {
    setTodo(true);
    const cares = [...new Set(rows().flatMap(({ care }) => care ?? []))];
    if (cares.length > 0) props.house.say(cares.join(' '));
  };
  return (
    <>
      <LogPage
        back={props.back}
        onBack={() => props.onBack()}
        caption={props.house.caption()}
        words={
          <Words headline={props.told.headline} detail={props.told.detail ?? undefined}>
            <Show when={props.told.change}>
              {(change) => (
                <section class="cut-change barred">
                  <h2>{cutPage.change}</h2>
                  <p>{change()}</p>
                </section>
              )}
            </Show>
            <Show when={props.told.because}>
              {(because) => <p class="cut-because">{because()}</p>}
            </Show>
            <Show when={props.keptAt}>
              {(at) => (
                <p class="cut-because">{fill(cutPage.kept, { date: props.house.date(at()) })}</p>
              )}
            </Show>
            <Show when={props.refused}>
              <p class="cut-because" role="alert">
                {cutPage.refused}
              </p>
            </Show>
          </Words>
        }
        controls={
          <>
            <Show
              when={props.keptAt === null}
              fallback={<Control label={cutPage.again} onPress={() => props.onAgain()} />}
            >
              <Control label={cutPage.before} onPress={() => props.onBefore()} />
            </Show>
            <Control
              label={controls.sayAgain}
              does="sayAgain"
              onPress={() => props.house.say(props.told.said)}
            />
            <Show when={rows().length > 0}>
              <Control label={cutPage.todo} onPress={open} />
            </Show>
          </>
        }
        slab={
          <Show
            when={props.keptAt === null}
            fallback={
              <Slab
                label={bench.thatsIt}
                then={props.back}
                fresh="kept"
                onPress={() => props.onBack()}
              />
            }
          >
            <Slab
              label={cutPage.keep}
              then={cutPage.keepThen}
              fresh="keep"
              disabled={!props.house.holds}
              onPress={() => props.onKeep()}
            />
          </Show>
        }
      />
      <Show when={todo()}>
        <Sheet title={cutPage.todoTitle}>
          {/* The way back comes first: what is told may be read on. */}
          <div class="sheet-grid">
            <Control label={cutPage.back} onPress={() => setTodo(false)} />
          </div>
          <For each={rows()}>{(told) => <RemedyWords told={told} named />}</For>
        </Sheet>
      </Show>
    </>
  );
}
