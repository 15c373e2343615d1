import { createEffect, createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import type { Studio } from '../../../machines/ports.ts';
import { gate } from '../../core/speech/words/gate.ts';
import { record as words } from '../../core/speech/words/record.ts';
import { voiceWords } from '../../core/speech/words/voice.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { HoldSlab } from '../../parts/HoldSlab.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';
import { mayRecord } from '../may-record.ts';
import {
  clipsOf,
  nextToRecord,
  pagesOf,
  shortWords,
  STAGES,
  type Clip,
  type StageOfClips,
} from './record-view.ts';
import { RecordClip } from './RecordClip.tsx';

/** Clips by their stage, each spoken anew by a grown-up. */
export default function RecordPage(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [studio, setStudio] = createSignal<Studio | null>(null);
  const [lost, setLost] = createSignal(false);
  const [recorded, setRecorded] = createSignal<ReadonlySet<string>>(new Set());
  const [stage, setStage] = createSignal<StageOfClips | null>(null);
  const [page, setPage] = createSignal(0);
  const [at, setAt] = createSignal<string | null>(null);
  const count = (): void => void studio()?.recorded().then(setRecorded);
  const open = (): void =>
    void props.house.studio().then(
      (found) => {
        setStudio(found);
        count();
      },
      () => setLost(true),
    );
  // Where something gets hot the hands belong there.
  const isFree = createMemo(() => mayRecord(props.house.kitchen(), props.house.now()));
  createEffect(() => {
    if (!isFree() && at() === null) props.onBack();
  });
  const clips = createMemo(() => {
    const [from, of] = [studio(), stage()];
    return from && of ? clipsOf(from.clips, of) : [];
  });
  const pages = createMemo(() => pagesOf(clips()));
  const clip = () => clips().find(({ id }) => id === at());
  const pageOf = (one: Clip | null): number =>
    Math.max(0, one === null ? 0 : pages().findIndex((page) => page.includes(one)));
  /** Where something is left to be spoken there. */
  const toStage = (next: StageOfClips): void => {
    setStage(next);
    setPage(pageOf(nextToRecord(clips(), recorded())));
  };
  const toNext = (): void => {
    count();
    const next = clips()[clips().findIndex(({ id }) => id === at()) + 1];
    setAt(next?.id ?? null);
    setPage(pageOf(next ?? clips().at(-1)!));
  };
  const toClip = (next: Clip | null): void => {
    if (next === null) return;
    setStage(STAGES.find((of) => clipsOf([next], of).length > 0) ?? null);
    setPage(pageOf(next));
    setAt(next.id);
  };
  /** To the next that is left of this stage, behind this clip or from its top; none where this is the last. */
  const behind = (one: Clip): (() => void) | undefined => {
    const next = nextToRecord(clips(), recorded(), clips().indexOf(one) + 1);
    return next === null || next === one ? undefined : () => toClip(next);
  };
  const all = () => studio()?.clips ?? [];
  const doneOf = (of: readonly Clip[]) => ({
    done: of.filter(({ id }) => recorded().has(id)).length,
    of: of.length,
  });
  const counted = (of: StageOfClips): string => {
    return fill(words.of, doneOf(clipsOf(all(), of)));
  };
  const total = (): string => fill(words.total, doneOf(all()));
  const gateFace = (): JSX.Element => (
    <KitchenPage
      back={voiceWords.title}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={gate.grownUp}
          detail={words.detail}
          care={lost() ? words.lost : undefined}
        />
      }
      slab={
        <HoldSlab label={words.hold} holding={words.holding} then={words.title} onHeld={open} />
      }
      controls={<Control label={voiceWords.title} onPress={() => props.onBack()} />}
    />
  );
  const stagesFace = (): JSX.Element => (
    <KitchenPage
      back={voiceWords.title}
      onBack={() => props.onBack()}
      words={
        <Words headline={words.which} detail={total()}>
          <div class="kitchen-grid">
            <For each={STAGES}>
              {(one) => (
                <Control
                  label={words.stages[one]}
                  value={counted(one)}
                  onPress={() => toStage(one)}
                />
              )}
            </For>
            <Control
              label={words.jump}
              disabled={nextToRecord(all(), recorded()) === null}
              onPress={() => toClip(nextToRecord(all(), recorded()))}
            />
          </div>
        </Words>
      }
    />
  );
  const listFace = (of: StageOfClips): JSX.Element => (
    <KitchenPage
      back={words.which}
      onBack={() => setStage(null)}
      words={
        <Words headline={words.stages[of]} care={of === 'numbers' ? words.wholeNumbers : undefined}>
          <div class="kitchen-grid">
            <For each={pages()[page()]}>
              {(one) => (
                <Control
                  label={shortWords(one)}
                  value={recorded().has(one.id) ? words.yours : words.asItCame}
                  fresh={one.id}
                  onPress={() => setAt(one.id)}
                />
              )}
            </For>
          </div>
        </Words>
      }
      controls={
        <>
          <Control
            label={words.before}
            fresh={page()}
            disabled={page() === 0}
            onPress={() => setPage((n) => n - 1)}
          />
          <Control
            label={words.next}
            value={fill(words.of, { done: page() + 1, of: pages().length })}
            fresh={page()}
            disabled={page() === pages().length - 1}
            onPress={() => setPage((n) => n + 1)}
          />
        </>
      }
    />
  );
  return (
    <Show when={studio()} fallback={gateFace()}>
      {(from) => (
        <Show when={stage()} fallback={stagesFace()}>
          {(of) => (
            <Show when={clip()} keyed fallback={listFace(of())}>
              {(one) => (
                <RecordClip
                  house={props.house}
                  studio={from()}
                  clip={one}
                  recorded={recorded().has(one.id)}
                  back={words.stages[of()]}
                  onChange={count}
                  onKept={toNext}
                  jump={behind(one)}
                  onBack={() => setAt(null)}
                />
              )}
            </Show>
          )}
        </Show>
      )}
    </Show>
  );
}
