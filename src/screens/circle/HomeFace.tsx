import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import { daysAhead } from '../../core/circle/orders.ts';
import { circle as words, neighbourWords } from '../../core/speech/words/circle.ts';
import { hoursPage } from '../../core/speech/words/circle-oven.ts';
import { cupboard } from '../../core/speech/words/cupboard.ts';
import { labelPage } from '../../core/speech/words/label.ts';
import { standingWords } from '../../core/speech/words/orders.ts';
import { start } from '../../core/speech/words/start.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Words } from '../../parts/Words.tsx';
import { createCircleClock } from './circle-clock.ts';
import { CirclePage } from './CirclePage.tsx';
import type { Face, FaceProps } from './face.ts';
import { TakeBack } from './orders/TakeBack.tsx';

/** So many days at once: with what else there is, two rows of presses on a tablet that lies. */
const DAYS = 3;

/** The Circle as it opens: the next days that bread is fetched, and what else there is. */
export function HomeFace(props: FaceProps): JSX.Element {
  const [page, setPage] = createSignal(0);
  // eslint-disable-next-line solid/reactivity -- the house is one
  const clock = createCircleClock(props.house);
  const days = createMemo(() =>
    daysAhead(props.circle.circle(), clock.today(), (page() + 1) * DAYS + 1),
  );
  const here = () => days().slice(page() * DAYS, (page() + 1) * DAYS);
  const isMore = (): boolean => days().length > (page() + 1) * DAYS;
  const empty = (): string | undefined => {
    if (days().length > 0) return undefined;
    return props.circle.circle().neighbours.length === 0 ? words.first : words.none;
  };
  const to = (label: string, face: Face, value?: string): JSX.Element => (
    <Control label={label} value={value} onPress={() => props.onOpen(face)} />
  );
  return (
    <CirclePage
      wide
      back={start.title}
      onBack={() => props.onBack()}
      words={
        <Words headline={words.title} detail={empty()}>
          <div class="circle-grid circle-home circle-top" role="group" aria-label={words.days}>
            <For each={here()}>
              {({ day, loaves }) =>
                to(
                  clock.date(day),
                  { at: 'day', day },
                  fill(words.loaves, shown({ loaves }, props.house.ways())),
                )
              }
            </For>
            {to(neighbourWords.title, { at: 'neighbours' })}
            {to(standingWords.title, { at: 'standing' })}
            {to(cupboard.title, { at: 'cupboard' })}
            {to(labelPage.title, { at: 'labels', day: null })}
            {to(hoursPage.title, { at: 'oven hours', from: words.title })}
          </div>
        </Words>
      }
      slab={
        <Slab
          label={words.newOrder}
          then={words.newOrderThen}
          fresh="new order"
          onPress={() => props.onOpen({ at: 'another day' })}
        />
      }
      controls={
        <>
          <Control label={start.title} onPress={() => props.onBack()} />
          <Show when={isMore() || page() > 0}>
            <Control
              label={isMore() ? words.laterDays : words.firstDays}
              onPress={() => setPage(isMore() ? page() + 1 : 0)}
            />
          </Show>
          <TakeBack house={props.house} circle={props.circle} />
        </>
      }
    />
  );
}
