import { createSignal, lazy, Match, Show, Switch, type JSX } from 'solid-js';
import { circle as words } from '../../core/speech/words/circle.ts';
import { start } from '../../core/speech/words/start.ts';
import { Words } from '../../parts/Words.tsx';
import type { DayDraft } from '../day-draft.ts';
import { makeFacePath } from '../face-path.ts';
import type { HouseCircle } from '../house-circle.ts';
import type { House } from '../house.ts';
import { CirclePage } from './CirclePage.tsx';
import { DoughDay } from './dough/DoughDay.tsx';
import type { Face, FaceProps } from './face.ts';
import { HandOver } from './handover/HandOver.tsx';
import { HomeFace } from './HomeFace.tsx';
import { NeighbourFace } from './NeighbourFace.tsx';
import { NeighboursFace } from './NeighboursFace.tsx';
import { NewNeighbour } from './NewNeighbour.tsx';
import { AnotherDay } from './orders/AnotherDay.tsx';
import { DayOrders } from './orders/DayOrders.tsx';
import { DayTurns } from './orders/DayTurns.tsx';
import { StandingFaces } from './orders/StandingFaces.tsx';
import { HoursFace } from './oven/HoursFace.tsx';
import { roomSays } from './oven/room-says.ts';
import { RoomFace } from './oven/RoomFace.tsx';

const Cupboard = lazy(() => import('./cupboard/Cupboard.tsx'));
const Labels = lazy(() => import('./labels/Labels.tsx'));
const ShoppingFor = lazy(() => import('./cupboard/ShoppingFor.tsx'));

/** Orders and those who have them. */
export default function Circle(props: {
  readonly house: House;
  readonly onHome: () => void;
  /** The bread of a day, to be laid on the clock. */
  readonly onDay: (draft: DayDraft) => void;
}): JSX.Element {
  const [opened, setOpened] = createSignal<HouseCircle | 'closed' | null>(null);
  // eslint-disable-next-line solid/reactivity -- called when it is gone back, as a handler is
  const { at, onOpen, onBack } = makeFacePath<Face>({ at: 'home' }, () => props.onHome());
  // eslint-disable-next-line solid/reactivity -- the house is one
  props.house.circle().then(
    (circle) => setOpened(() => circle),
    () => setOpened('closed'),
  );
  const circle = (): HouseCircle | null => {
    const its = opened();
    return its === 'closed' ? null : its;
  };
  return (
    <Show
      when={circle()}
      fallback={
        <CirclePage
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
      }
    >
      {(its) => {
        const each = (): FaceProps => ({ house: props.house, circle: its(), onOpen, onBack });
        return (
          <Switch fallback={<HomeFace {...each()} />}>
            <Match when={at('neighbours')}>
              <NeighboursFace {...each()} />
            </Match>
            <Match when={at('new neighbour')}>
              <NewNeighbour {...each()} />
            </Match>
            <Match when={at('neighbour')} keyed>
              {({ id }) => <NeighbourFace {...each()} id={id} />}
            </Match>
            <Match when={at('cupboard')}>
              <Cupboard {...each()} />
            </Match>
            <Match when={at('dough')}>
              {(its) => (
                <DoughDay {...each()} day={its().day} onDay={(draft) => props.onDay(draft)} />
              )}
            </Match>
            <Match when={at('shopping')}>
              {(its) => <ShoppingFor {...each()} day={its().day} />}
            </Match>
            <Match when={at('day')} keyed>
              {({ day, order, scope }) => (
                <DayOrders
                  {...each()}
                  day={day}
                  order={order}
                  scope={scope}
                  cap={roomSays(props.house, its())}
                  turns={(today) => <DayTurns day={day} today={today} onOpen={onOpen} />}
                />
              )}
            </Match>
            <Match when={at('hand over')}>
              {(face) => <HandOver {...each()} day={face().day} back={face().from} />}
            </Match>
            <Match when={at('standing')}>
              <StandingFaces {...each()} />
            </Match>
            <Match when={at('another day')}>
              <AnotherDay {...each()} />
            </Match>
            <Match when={at('room')}>
              {(face) => <RoomFace {...each()} day={face().day} back={face().from} />}
            </Match>
            <Match when={at('oven hours')}>
              {(face) => <HoursFace {...each()} back={face().from} />}
            </Match>
            <Match when={at('labels')} keyed>
              {({ day }) => <Labels {...each()} day={day} />}
            </Match>
          </Switch>
        );
      }}
    </Show>
  );
}
