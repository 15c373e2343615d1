import { createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import type { CircleWays } from '../../../core/circle/circle.ts';
import type { MinuteOfDay } from '../../../core/kitchen/equipment.ts';
import { hoursPage } from '../../../core/speech/en/circle-oven.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showMinute } from '../../../core/speech/show-time.ts';
import { Control } from '../../../parts/Control.tsx';
import { Tiles } from '../../../parts/Tiles.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CirclePage } from '../CirclePage.tsx';
import type { FaceProps } from '../face.ts';
import { TakeBack } from '../orders/TakeBack.tsx';
import { written } from '../written.ts';
import { MinuteFace } from './MinuteFace.tsx';

const hours = (...all: readonly number[]): readonly MinuteOfDay[] => all.map((hour) => hour * 60);
/** Hours that are offered first, and days before a bake: what bread of two days wants. Judgement. */
const FROM = hours(5, 6, 7, 8, 9, 14);
const TO = hours(10, 11, 12, 14, 16, 20);
const CLOSES_AT = hours(8, 10, 12, 15, 18, 20);
const CLOSES_DAYS = [0, 1, 2, 3, 4, 7] as const;

const daysWords = (days: number): string =>
  days === 0
    ? hoursPage.sameDay
    : days === 1
      ? hoursPage.dayBefore
      : fill(hoursPage.daysBefore, { count: days });

/** When the oven of a bake day bakes, and until when orders are taken. */
export function HoursFace(
  props: FaceProps & {
    /** What its slab leads back to. */
    readonly back: string;
  },
): JSX.Element {
  type At = 'all' | 'from' | 'to' | 'days' | 'closes';
  const [at, setAt] = createSignal<At>('all');
  /** The first half of what is said in two: it is written with the second. */
  const [first, setFirst] = createSignal<number | null>(null);
  const ways = (): CircleWays => props.circle.circle().ways;
  const all = (): void => {
    setFirst(null);
    setAt('all');
  };
  const set = (part: Partial<CircleWays>): void =>
    void written(props.house, props.circle.write({ puts: [], ways: part }));
  const words = (minute: MinuteOfDay): string => showMinute(minute, props.house.ways().clock);
  const shown = (end: 'from' | 'to'): string => {
    const { oven } = ways();
    return oven === null ? '–' : words(oven[end]);
  };
  const closes = (): string => {
    const its = ways().closes;
    if (its === null) return hoursPage.never;
    return fill(hoursPage.closesValue, { date: daysWords(its.days), time: words(its.at) });
  };
  const overMidnight = (): boolean => {
    const { oven } = ways();
    return oven !== null && oven.to <= oven.from;
  };
  const setFrom = (from: MinuteOfDay): void => {
    const { oven } = ways();
    if (oven === null) setFirst(from);
    else set({ oven: { ...oven, from } });
  };
  const setTo = (to: MinuteOfDay): void => {
    const from = ways().oven?.from ?? first();
    if (from !== null) set({ oven: { from, to } });
  };
  const setDays = (days: number): void => {
    const { closes } = ways();
    if (closes === null) setFirst(days);
    else set({ closes: { ...closes, days } });
  };
  const setClosesAt = (minute: MinuteOfDay): void => {
    const days = ways().closes?.days ?? first();
    if (days !== null) set({ closes: { days, at: minute } });
  };
  return (
    <Switch
      fallback={
        <CirclePage
          back={props.back}
          onBack={() => props.onBack()}
          words={
            <Words
              headline={hoursPage.headline}
              detail={overMidnight() ? hoursPage.nextDay : hoursPage.detail}
            >
              <div class="circle-grid">
                <Control
                  label={hoursPage.from}
                  value={shown('from')}
                  onPress={() => setAt('from')}
                />
                <Show when={ways().oven !== null}>
                  <Control label={hoursPage.to} value={shown('to')} onPress={() => setAt('to')} />
                </Show>
                <Control label={hoursPage.closes} value={closes()} onPress={() => setAt('days')} />
              </div>
            </Words>
          }
          controls={
            <>
              <Show when={ways().oven !== null}>
                <Control label={hoursPage.forget} onPress={() => set({ oven: null })} />
              </Show>
              <TakeBack house={props.house} circle={props.circle} />
            </>
          }
        />
      }
    >
      <Match when={at() === 'from'}>
        <MinuteFace
          house={props.house}
          ask={hoursPage.fromAsk}
          hours={FROM}
          at={ways().oven?.from ?? first()}
          not={ways().oven?.to ?? null}
          back={hoursPage.title}
          onMinute={(from) => {
            setFrom(from);
            setAt(ways().oven === null ? 'to' : 'all');
          }}
          onShift={setFrom}
          onBack={() => setAt(first() === null ? 'all' : 'to')}
        />
      </Match>
      <Match when={at() === 'to'}>
        <MinuteFace
          house={props.house}
          ask={hoursPage.toAsk}
          hours={TO}
          at={ways().oven?.to ?? null}
          not={ways().oven?.from ?? first()}
          back={hoursPage.title}
          onMinute={(to) => {
            setTo(to);
            all();
          }}
          onShift={setTo}
          onBack={all}
        />
      </Match>
      <Match when={at() === 'days'}>
        <CirclePage
          back={hoursPage.title}
          onBack={all}
          words={
            <Words headline={hoursPage.closesAsk}>
              <Tiles
                label={hoursPage.closesAsk}
                options={CLOSES_DAYS.map((days) => ({
                  value: String(days),
                  label: daysWords(days),
                }))}
                chosen={ways().closes === null ? undefined : String(ways().closes!.days)}
                onChoose={(days) => {
                  setDays(Number(days));
                  setAt('closes');
                }}
              />
            </Words>
          }
          controls={
            <Show when={ways().closes !== null}>
              <Control
                label={hoursPage.neverClose}
                onPress={() => {
                  set({ closes: null });
                  all();
                }}
              />
            </Show>
          }
        />
      </Match>
      <Match when={at() === 'closes'}>
        <MinuteFace
          house={props.house}
          ask={hoursPage.closesAtAsk}
          hours={CLOSES_AT}
          at={ways().closes?.at ?? null}
          back={hoursPage.title}
          onMinute={(minute) => {
            setClosesAt(minute);
            all();
          }}
          onShift={setClosesAt}
          onBack={all}
        />
      </Match>
    </Switch>
  );
}
