import { createMemo, Show, type JSX } from 'solid-js';
import { careLines } from '../../../core/speech/words/care.ts';
import { callWords } from '../../../core/speech/words/calls.ts';
import { countGame, small, waitPath } from '../../../core/speech/words/small.ts';
import { BakeMark } from '../../../parts/BakeMark.tsx';
import { CallMark } from '../../../parts/CallMark.tsx';
import { CountTiles } from '../../../parts/CountTiles.tsx';
import { Sketch } from '../../../parts/Sketch.tsx';
import { Tiles } from '../../../parts/Tiles.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { WaitPath } from '../../../parts/WaitPath.tsx';
import { focusOn } from '../../focus.ts';
import type { House, Ways } from '../../house.ts';
import type { BenchView } from '../view.ts';
import { ChildTask, Praise } from './ChildTask.tsx';
import { isScattered } from './face-of.ts';
import { isChilds, shareOf, smallView, type SmallView } from './small-view.ts';
import { StrewnSheet } from './StrewnSheet.tsx';
import './paper.css';
import './SmallFace.css';
import './SmallPlaces.css';

/** How far it has come, for ears. */
const told = (share: number): string => {
  if (share >= 1) return waitPath.there;
  if (share > 0.85) return waitPath.near;
  if (share > 0.55) return waitPath.most;
  if (share > 0.45) return waitPath.half;
  return share > 0.1 ? waitPath.some : waitPath.begins;
};

/** A step as a child sees it: one picture, the act, a sentence, their own task, and what the baker does. */
export default function SmallWords(props: {
  readonly house: House;
  /** Whose bench it is on. */
  readonly bake: string;
  readonly view: BenchView;
  readonly ages: Exclude<Ways['small'], 'off'>;
  readonly ringing: boolean;
  readonly mark: number | undefined;
}): JSX.Element {
  const child = createMemo((before: SmallView | undefined): SmallView | undefined => {
    const focus = focusOn(props.house.kitchen(), props.bake);
    return focus ? smallView(props.ages, props.house.kitchen(), focus, props.view) : before;
  });
  /** What is asked for beside a wait and is hot or sharp is not pressed in a child's view. */
  const tiles = () => props.view.tiles.filter((tile) => isChilds(props.ages, tile));
  const game = () => (props.ringing ? null : (child()?.game ?? null));
  const isStrewn = (): boolean => !props.ringing && isScattered(props.view);
  /** What the child is told of raw dough is not told once more. */
  const care = (): string | null =>
    child()?.raw && props.view.care === careLines.RAW_DOUGH ? null : props.view.care;
  /** What stands there beside the picture, by its room: SmallFace.css. */
  const shows = (): 'few' | 'four' | 'sheet' | 'mark' | undefined => {
    const { count = 0 } = game() ?? {};
    if (isStrewn()) return 'sheet';
    if (count > 0) return count > 2 ? 'four' : 'few';
    return child()?.mark && !props.ringing ? 'mark' : undefined;
  };
  return (
    <Show when={child()}>
      {(shown) => (
        <div class="act paper small" data-shows={shows()}>
          <Show when={props.ringing && props.view.call}>
            {(kind) => <CallMark kind={kind()} word={callWords[kind()]} />}
          </Show>
          <Show when={!props.ringing}>
            <Praise house={props.house} view={props.view} />
          </Show>
          <div class="small-picture">
            <Sketch name={shown().sketch} />
          </div>
          <div class="small-words">
            <h1 class="act-headline">{unbroken(shown().act)}</h1>
            <p class="act-detail">{unbroken(shown().say)}</p>
          </div>
          <Show when={!props.ringing && shown().wait}>
            {(wait) => {
              const share = () => shareOf(wait(), props.house.now());
              return <WaitPath share={share()} alt={told(share())} />;
            }}
          </Show>
          <Show when={game()}>
            {(played) => (
              <CountTiles
                label={countGame[played().kind]}
                names={Object.values(countGame.nth).slice(0, played().count)}
                shape={played().kind === 'corners' ? 'corner' : 'piece'}
                fresh={`${props.view.who} ${props.view.stage} ${props.view.place}`}
              />
            )}
          </Show>
          <Show when={isStrewn()}>
            <StrewnSheet house={props.house} view={props.view} />
          </Show>
          <Show when={!props.ringing}>
            <ChildTask house={props.house} told={shown()} />
          </Show>
          <p class="small-baker">
            <Show when={props.mark}>{(mark) => <BakeMark mark={mark()} />}</Show>
            <b>{props.view.whose ?? small.baker}</b> {unbroken(props.view.headline)}
            <Show when={shown().wait}>. {unbroken(props.view.detail)}</Show>
          </p>
          <Show when={shown().raw}>
            <p class="small-raw barred act-heed">{unbroken(small.raw)}</p>
          </Show>
          <Show when={care()}>
            {(care) => <p class="small-care barred act-heed">{unbroken(care())}</p>}
          </Show>
          <Show when={!props.ringing && tiles().length > 0}>
            <Tiles
              label={props.view.headline}
              options={tiles().map(({ label }, i) => ({ value: String(i), label }))}
              onChoose={(value) => {
                const tile = tiles()[Number(value)];
                if (tile) void props.house.take(tile.deed);
              }}
            />
          </Show>
        </div>
      )}
    </Show>
  );
}
