import { createMemo, createSignal, For, Match, Show, Switch, type JSX } from 'solid-js';
import type { Standing } from '../../../core/circle/circle.ts';
import { dayAfter, weekdayOf, type DayKey } from '../../../core/circle/day-key.ts';
import { changedFrom, endedBefore } from '../../../core/circle/order-changes.ts';
import { standingOrderId, standsOn } from '../../../core/circle/orders.ts';
import { put, type Change } from '../../../core/circle/row.ts';
import { circle as circleWords } from '../../../core/speech/words/circle.ts';
import { orderFace, standingWords } from '../../../core/speech/words/orders.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Pressable } from '../../../parts/Pressable.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import { createCircleClock } from '../circle-clock.ts';
import { CirclePage } from '../CirclePage.tsx';
import type { FaceProps } from '../face.ts';
import { written } from '../written.ts';
import { DayTiles } from './DayTiles.tsx';
import { linesWords, nameOf } from './order-words.ts';
import { TakeBack } from './TakeBack.tsx';
import './Orders.css';

/** Weekdays, Monday first. */
const WEEK = [1, 2, 3, 4, 5, 6, 0] as const;
/** Its next day is looked for so far ahead. */
const WEEKS = 60;

type At = 'list' | 'one' | 'weekday' | 'from' | 'until';

/** What comes every week: all of it in a list, each with its weekday, its first and its last day. */
export function StandingFaces(props: FaceProps): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- the house is one
  const clock = createCircleClock(props.house);
  const today = clock.today;
  const [at, setAt] = createSignal<At>('list');
  /** One that goes on as another is still the one that is open. */
  const [ids, setIds] = createSignal<readonly string[]>([]);
  const circle = () => props.circle.circle();
  const all = createMemo(() =>
    circle().standing.filter(({ until }) => until === null || until >= today()),
  );
  const open = (): Standing | null =>
    circle().standing.findLast(({ id }) => ids().includes(id)) ?? null;
  const write = (change: Change): void => {
    setAt('one');
    void written(props.house, props.circle.write(change));
  };
  const begins = ({ from }: Standing): DayKey => (from > clock.today() ? from : clock.today());
  const nextDay = (one: Standing): DayKey | null => {
    const ahead = (one.weekday - weekdayOf(begins(one)) + 7) % 7;
    const first = dayAfter(begins(one), ahead);
    for (let week = 0; week < WEEKS; week++) {
      if (standsOn(one, dayAfter(first, 7 * week))) return dayAfter(first, 7 * week);
    }
    return null;
  };
  const told = ({ weekday, lines, from, until }: Standing): string =>
    [
      fill(standingWords.told, {
        date: clock.weekday(weekday),
        line: linesWords(props.house, lines),
      }),
      ...(from > clock.today() ? [fill(standingWords.begins, { date: clock.date(from) })] : []),
      ...(until === null ? [] : [fill(standingWords.ends, { date: clock.date(until) })]),
    ].join(', ');
  const title = (one: Standing): string => nameOf(circle(), one.who);
  const turned = (one: Standing, weekday: number): void => {
    const freshId = props.circle.freshId();
    setIds([...ids(), freshId]);
    write(changedFrom(circle(), one, begins(one), { weekday }, freshId));
  };
  const skipsAhead = ({ skips }: Standing): readonly DayKey[] =>
    skips.filter((day) => day >= clock.today()).toSorted();
  const cell = (label: string, value: string, to: At): JSX.Element => (
    <Control label={label} value={value} onPress={() => setAt(to)} />
  );
  return (
    <Switch
      fallback={
        <CirclePage
          wide
          back={circleWords.title}
          onBack={() => props.onBack()}
          words={
            <Words
              headline={standingWords.title}
              detail={all().length === 0 ? standingWords.none : undefined}
            >
              <div class="orders-grid circle-top" role="group" aria-label={standingWords.title}>
                <For each={all()}>
                  {(one) => (
                    <Pressable
                      class="orders-entry"
                      fresh={`standing ${one.id}`}
                      onPress={() => {
                        setIds([one.id]);
                        setAt('one');
                      }}
                    >
                      <b>{title(one)}</b>
                      <span>{unbroken(told(one))}</span>
                    </Pressable>
                  )}
                </For>
              </div>
            </Words>
          }
          controls={<TakeBack house={props.house} circle={props.circle} />}
        />
      }
    >
      <Match when={at() === 'one' && open()}>
        {(one) => (
          <CirclePage
            wide
            back={standingWords.title}
            onBack={() => setAt('list')}
            words={
              <Words headline={title(one())} detail={linesWords(props.house, one().lines)}>
                <div class="circle-grid circle-top orders-lines">
                  <Control
                    label={standingWords.what}
                    disabled={nextDay(one()) === null}
                    onPress={() => {
                      const day = nextDay(one());
                      if (day === null) return;
                      const order = standingOrderId(one().id, day);
                      props.onOpen({ at: 'day', day, order, scope: 'all' });
                    }}
                  />
                  {cell(standingWords.weekdayShort, clock.weekday(one().weekday), 'weekday')}
                  <Show when={one().from > clock.today()}>
                    {cell(standingWords.from, clock.date(one().from), 'from')}
                  </Show>
                  {cell(
                    standingWords.until,
                    one().until === null ? standingWords.on : clock.date(one().until!),
                    'until',
                  )}
                  <For each={skipsAhead(one())}>
                    {(day) => (
                      <Control
                        label={standingWords.left}
                        value={clock.date(day)}
                        fresh={`left ${day}`}
                        chosen
                        onPress={() =>
                          write({
                            puts: [
                              put('standing', {
                                ...one(),
                                skips: one().skips.filter((skip) => skip !== day),
                              }),
                            ],
                          })
                        }
                      />
                    )}
                  </For>
                </div>
              </Words>
            }
            controls={
              <>
                <TakeBack house={props.house} circle={props.circle} />
                <Control
                  label={orderFace.off}
                  onPress={() => {
                    write(endedBefore(circle(), one(), clock.today()));
                    setAt('list');
                  }}
                />
              </>
            }
          />
        )}
      </Match>
      <Match when={at() === 'weekday' && open()}>
        {(one) => (
          <CirclePage
            back={title(one())}
            onBack={() => setAt('one')}
            words={
              <Words headline={standingWords.weekday}>
                <div class="orders-week circle-top" role="group" aria-label={standingWords.weekday}>
                  <For each={WEEK}>
                    {(day) => (
                      <Control
                        label={clock.weekday(day)}
                        chosen={one().weekday === day}
                        onPress={() => turned(one(), day)}
                      />
                    )}
                  </For>
                </div>
              </Words>
            }
          />
        )}
      </Match>
      <Match when={at() === 'from' && open()}>
        {(one) => (
          <DayTiles
            clock={clock}
            headline={standingWords.fromAsk}
            first={clock.today()}
            step={1}
            chosen={one().from}
            back={title(one())}
            onDay={(from) => write({ puts: [put('standing', { ...one(), from })] })}
            onBack={() => setAt('one')}
          />
        )}
      </Match>
      <Match when={at() === 'until' && open()}>
        {(one) => (
          <DayTiles
            clock={clock}
            headline={standingWords.untilAsk}
            first={nextDay({ ...one(), until: null }) ?? begins(one())}
            step={7}
            other={standingWords.on}
            chosen={one().until ?? 'other'}
            back={title(one())}
            onOther={() => write({ puts: [put('standing', { ...one(), until: null })] })}
            onDay={(until) => write({ puts: [put('standing', { ...one(), until })] })}
            onBack={() => setAt('one')}
          />
        )}
      </Match>
    </Switch>
  );
}
