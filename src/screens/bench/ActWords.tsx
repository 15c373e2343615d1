import { createMemo, lazy, Show, Suspense, type JSX } from 'solid-js';
import { samePlain } from '../../../machines/kitchen/same-plain.ts';
import { bench } from '../../core/speech/words/bench.ts';
import { callWords } from '../../core/speech/words/calls.ts';
import { readyWindow } from '../../core/speech/words/running.ts';
import { taskPress } from '../../core/speech/words/tasks.ts';
import { HOUR } from '../../core/units.ts';
import { fill } from '../../core/speech/fill.ts';
import { BakeMark } from '../../parts/BakeMark.tsx';
import { CallMark } from '../../parts/CallMark.tsx';
import { Lines } from '../../parts/Lines.tsx';
import { ReadyWindow } from '../../parts/ReadyWindow.tsx';
import { Tiles } from '../../parts/Tiles.tsx';
import { runningText } from '../../parts/running.ts';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { saidFor } from './by-voice.ts';
import { faceOf } from './small/face-of.ts';
import type { BenchView } from './view.ts';

/** The tile that leads to what may be done ahead. */
const AHEAD = 'ahead';

const SmallWords = lazy(() => import('./small/SmallWords.tsx'));
const BesideTask = lazy(() => import('./small/BesideTask.tsx'));
const ReadThrough = lazy(() => import('./ReadThrough.tsx'));

/** From here on an hour alone no longer says which day it is of. */
const LONG = 20 * HOUR;

interface ActWordsProps {
  readonly house: House;
  readonly bake: string;
  readonly view: BenchView;
  readonly ringing: boolean;
  /** Whether the running time stands above. */
  readonly timed: boolean;
  /** The bake's mark, where more than one runs. */
  readonly mark: number | undefined;
  readonly onAhead: () => void;
}

/** The words of one act: a child's where it is theirs. */
export function ActWords(props: ActWordsProps): JSX.Element {
  const ages = () => {
    const { small } = props.house.ways();
    return small !== 'off' && faceOf(small, props.view) === 'own' ? small : null;
  };
  return (
    <Show when={ages()} fallback={<BakerWords {...props} />}>
      {(small) => (
        <Suspense>
          <SmallWords {...props} ages={small()} />
        </Suspense>
      )}
    </Show>
  );
}

/** The words of one act. While it rings there is its call and nothing to answer yet. */
function BakerWords(props: ActWordsProps): JSX.Element {
  // While it rings there is little time to read: a hot call gives its caution, the others the act.
  const hot = (): boolean => props.view.call === 'hot';
  const care = (): string | undefined =>
    props.ringing && !hot() ? undefined : (props.view.care ?? undefined);
  const detail = (): string | undefined =>
    props.view.stage === 'read.plan' || (props.ringing && hot()) || props.view.detail === care()
      ? undefined
      : props.view.detail || undefined;
  /** While it rings the bake's name stands for its place: bigger words need the room. */
  const place = (): string => {
    const where = (props.ringing && props.view.whose) || props.view.place;
    const since = props.view.since;
    return since === null ? where : `${where} · ${runningText(since - props.house.now())}`;
  };
  /** A window that reaches into another day names its days. */
  const hour = (at: number): string => {
    const { house, view } = props;
    const long = view.window !== null && view.window.latest - house.now() > LONG;
    return long ? `${house.day(at)} ${house.hour(at)}` : house.hour(at);
  };
  /** Drawn anew where another act or other answers stand there, not with every fact. */
  const answers = createMemo(
    () => {
      const { who, stage, task, tiles, ahead, window } = props.view;
      const options = tiles.map(({ label, deed }, i) => ({
        value: String(i),
        label,
        does: saidFor(props.view, deed, false),
      }));
      // Beside a window there is no room for it on every screen: there it stands under More.
      if (ahead > 0 && window === null)
        options.push({
          value: AHEAD,
          label: fill(taskPress.ahead, { count: ahead }),
          does: undefined,
        });
      return { act: [who, stage, task], options };
    },
    { act: [], options: [] },
    { equals: samePlain },
  );
  const choose = (value: string): void => {
    const tile = props.view.tiles[Number(value)];
    if (value === AHEAD) props.onAhead();
    else if (tile) void props.house.take(tile.deed);
  };
  return (
    <Words
      headline={props.view.headline}
      detail={detail()}
      care={care()}
      picture={
        <>
          <Show when={props.ringing && props.view.call}>
            {(kind) => <CallMark kind={kind()} word={callWords[kind()]} />}
          </Show>
          {/* With how long it has called: who comes back late sees so before the first touch. */}
          <Show when={!props.timed}>
            <p class="act-place">
              <Show when={props.mark}>{(mark) => <BakeMark mark={mark()} />}</Show>
              <span>{place()}</span>
            </p>
          </Show>
        </>
      }
    >
      <Show when={!props.ringing}>
        <Show when={props.view.stage === 'read.plan'}>
          <Suspense>
            <ReadThrough house={props.house} bake={props.view.who} />
          </Suspense>
        </Show>
        <Show when={props.view.lines.length > 0}>
          <Lines label={bench.lines} lines={props.view.lines} />
        </Show>
        <Show when={props.house.ways().small !== 'off'}>
          <Suspense>
            <BesideTask {...props} />
          </Suspense>
        </Show>
        <Show when={answers().options.length > 0}>
          <Tiles label={props.view.headline} options={answers().options} onChoose={choose} />
        </Show>
        <Show when={props.view.deadline !== null && props.view.window}>
          {(window) => (
            <ReadyWindow
              {...window()}
              now={props.house.now()}
              hour={hour}
              words={{
                now: readyWindow.now.replace(' {time}', ''),
                earliest: readyWindow.earliest.replace(' {time}', ''),
                likely: readyWindow.likely.replace(' {time}', ''),
                latest: readyWindow.latest.replace(' {time}', ''),
                alt: fill(window().likely === null ? readyWindow.hours : readyWindow.alt, {
                  time: hour(window().earliest),
                  until: hour(window().latest),
                  likely: hour(window().likely ?? window().latest),
                }),
              }}
            />
          )}
        </Show>
      </Show>
    </Words>
  );
}
