import {
  createEffect,
  createMemo,
  createSignal,
  Match,
  on,
  onCleanup,
  Show,
  Switch,
  untrack,
  type JSX,
} from 'solid-js';
import { cutOf, type CutFact } from '../../../core/log/cut-of.ts';
import { dayOfBake } from '../../../core/log/day-of-bake.ts';
import type { LoafAnswers, LoafSign, Shown } from '../../../core/log/loaf-names.ts';
import { LOAF_MODEL, readLoaf } from '../../../core/log/read-loaf.ts';
import type { CutRead } from '../../../core/records/cut-read.ts';
import { cutLoaf } from '../../../core/speech/words/cut-loaf.ts';
import { log as logWords } from '../../../core/speech/words/log.ts';
import { tellLoaf } from '../../../core/speech/tell-loaf.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { Words } from '../../../parts/Words.tsx';
import type { FaceProps } from '../face.ts';
import { LogPage } from '../LogPage.tsx';
import { logsOf, recordsOf } from '../records-of.ts';
import { AskFace } from './AskFace.tsx';
import { ResultFace } from './ResultFace.tsx';

/** One answer, in the order they were given. */
interface Given {
  readonly sign: LoafSign;
  readonly shown: Shown | 'unsure';
}

/** The last time this loaf was told of, and the first, wherever that was written. */
const cutsOf = (props: FaceProps & { readonly start: string }): readonly CutFact[] =>
  logsOf(props.house, props.log)
    .flatMap((records) => cutOf(records, props.start) ?? [])
    .toSorted((a, b) => a.at - b.at);

/** The first time: when it was cut at the latest. */
const firstCut = (props: FaceProps & { readonly start: string }): number =>
  Math.min(
    props.house.now(),
    ...logsOf(props.house, props.log).flatMap((records) =>
      records.flatMap(({ fact }) =>
        fact.kind === 'cut' && fact.target === props.start ? [fact.at] : [],
      ),
    ),
  );

/** A cut loaf, read by two or three looks and by the day it had: what it came of, and the one thing to change. */
export default function CutFace(props: FaceProps & { readonly start: string }): JSX.Element {
  const found = createMemo(() => recordsOf(props.house, props.log, props.start));
  /** The bread's name: the page that is gone back to. */
  const name = (): string => {
    const fact = found()?.records.find((row) => row.fact.id === props.start)?.fact;
    return fact?.kind === 'start' ? showBread(fact.recipe.formula.name) : logWords.title;
  };
  const height = (): number => props.house.equipment().height ?? 0;
  const day = untrack(
    () =>
      dayOfBake(logsOf(props.house, props.log), props.start, {
        cutAt: firstCut(props),
        height: height(),
      }) ?? {},
  );
  const kept = createMemo(() => cutsOf(props).at(-1) ?? null);
  // What was kept is shown until the loaf is looked at again.
  const [again, setAgain] = createSignal(untrack(kept) === null);
  const [given, setGiven] = createSignal<readonly Given[]>([]);
  const [was, setWas] = createSignal<Given | null>(null);
  const [refused, setRefused] = createSignal(false);
  const answers = createMemo((): LoafAnswers =>
    Object.fromEntries(given().map(({ sign, shown }) => [sign, shown])),
  );
  const loaf = createMemo(() => readLoaf(answers(), day));
  const asked = createMemo((): LoafSign | null => (again() ? loaf().next : null));
  const read = createMemo((): CutRead => {
    const { says, causes, change, because } = loaf();
    return { says, causes, change, because, model: LOAF_MODEL };
  });
  const shown = createMemo(() => (again() ? read() : kept()?.read) ?? read());
  const told = createMemo(() => tellLoaf(shown()));
  createEffect(
    on([asked, again], ([sign]) => {
      if (found() === null) return;
      props.house.say(sign === null ? told().said : cutLoaf[sign].ask);
    }),
  );
  onCleanup(() => props.house.say(''));

  const answer = (shown: string): void => {
    const sign = asked();
    if (sign === null) return;
    setWas(null);
    setGiven([...given(), { sign, shown: shown as Given['shown'] }]);
  };
  const before = (): void => {
    setWas(given().at(-1) ?? null);
    setGiven(given().slice(0, -1));
  };
  const keep = async (): Promise<void> => {
    const stood = kept()?.id;
    await props.house.take({
      kind: 'cut',
      target: props.start,
      answers: answers(),
      read: read(),
    });
    if (kept()?.id === stood) setRefused(true);
    else props.onBack();
  };
  const startAgain = (): void => {
    setGiven([]);
    setWas(null);
    setAgain(true);
  };
  return (
    <Show
      when={found()}
      fallback={
        <LogPage
          back={logWords.title}
          onBack={() => props.onBack()}
          words={<Words headline={logWords.gone} />}
        />
      }
    >
      <Switch>
        <Match when={asked()}>
          {(sign) => (
            <AskFace
              house={props.house}
              sign={sign()}
              filled={day.filled !== false}
              chosen={was()?.sign === sign() ? was()!.shown : undefined}
              onChoose={answer}
              onBefore={given().length > 0 ? before : null}
              back={name()}
              onBack={() => props.onBack()}
            />
          )}
        </Match>
        <Match when={asked() === null}>
          <ResultFace
            house={props.house}
            told={told()}
            answers={again() ? answers() : (kept()?.answers ?? {})}
            height={height()}
            keptAt={again() ? null : (kept()?.at ?? null)}
            refused={refused()}
            onKeep={() => void keep()}
            onBefore={before}
            back={name()}
            onAgain={startAgain}
            onBack={() => props.onBack()}
          />
        </Match>
      </Switch>
    </Show>
  );
}
