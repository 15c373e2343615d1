import { createSignal, lazy, Match, Show, Suspense, Switch, type JSX } from 'solid-js';
import { log as words } from '../../core/speech/words/log.ts';
import { start } from '../../core/speech/words/start.ts';
import { Words } from '../../parts/Words.tsx';
import { makeFacePath } from '../face-path.ts';
import type { HouseLog } from '../house-log.ts';
import type { House } from '../house.ts';
import type { Face, FaceProps } from './face.ts';
import { makeFinding } from './list/finding.ts';
import { ListFace } from './list/ListFace.tsx';
import { LogPage } from './LogPage.tsx';

const BakeFace = lazy(() => import('./bake/BakeFace.tsx'));
const CompareFace = lazy(() => import('./plots/CompareFace.tsx'));
const CutFace = lazy(() => import('./cut/CutFace.tsx'));
const KeepsakesFace = lazy(() => import('./keepsakes/KeepsakesFace.tsx'));
const PlotsFace = lazy(() => import('./plots/PlotsFace.tsx'));
const ShareFace = lazy(() => import('./bake/ShareFace.tsx'));

/** Past bakes: what happened, why, and the one thing to change. */
export default function Log(props: {
  readonly house: House;
  readonly onHome: () => void;
}): JSX.Element {
  const [opened, setOpened] = createSignal<HouseLog | 'closed' | null>(null);
  // eslint-disable-next-line solid/reactivity -- called when it is gone back, as a handler is
  const { at, onOpen, onBack } = makeFacePath<Face>({ at: 'list' }, () => props.onHome());
  // eslint-disable-next-line solid/reactivity -- the house is one
  props.house.log().then(
    (log) => setOpened(() => log),
    () => setOpened('closed'),
  );
  const finding = makeFinding();
  const log = (): HouseLog | null => {
    const its = opened();
    return its === 'closed' ? null : its;
  };
  const waiting = (
    <LogPage
      back={start.title}
      onBack={() => props.onHome()}
      words={
        <Show
          when={opened() === 'closed'}
          fallback={<Words headline={words.title} detail={words.opening} />}
        >
          <Words headline={words.closed} detail={words.closedDetail} />
        </Show>
      }
    />
  );
  return (
    <Show when={log()} fallback={waiting}>
      {(its) => {
        const each = (): FaceProps => ({ house: props.house, log: its(), onOpen, onBack });
        return (
          <Suspense>
            <Switch fallback={<ListFace {...each()} finding={finding} />}>
              <Match when={at('bake')} keyed>
                {({ start }) => <BakeFace {...each()} start={start} />}
              </Match>
              <Match when={at('cut')} keyed>
                {({ start }) => <CutFace {...each()} start={start} />}
              </Match>
              <Match when={at('keepsakes')} keyed>
                {({ start }) => <KeepsakesFace {...each()} start={start} />}
              </Match>
              <Match when={at('share')} keyed>
                {({ start }) => <ShareFace {...each()} start={start} />}
              </Match>
              <Match when={at('compare')} keyed>
                {({ start }) => <CompareFace {...each()} start={start} />}
              </Match>
              <Match when={at('plots')}>
                <PlotsFace {...each()} />
              </Match>
            </Switch>
          </Suspense>
        );
      }}
    </Show>
  );
}
