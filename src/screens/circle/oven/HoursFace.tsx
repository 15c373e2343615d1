import { createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import type { CircleWays } from '../../../core/circle/circle.ts';
import type { MinuteOfDay } from '../../../core/kitchen/equipment.ts';
import { hoursPage } from '../../../core/speech/words/circle-oven.ts';
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
  const set = (part: Partial<CircleWays>): Promise<boolean> =>
    written(props.house, props.circle.write({ puts: [], ways: part }));
  /** What was pressed stands on the page it leads to, and stays where it could not be written. */
  const then = (done: Promise<boolean>, go: () => void): void =>
    void done.then((isWritten) => {
      if (isWritten) go();
    });
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
  const setFrom = async (from: MinuteOfDay): Promise<boolean> => {
    const { oven } = ways();
    if (oven !== null) return set({ oven: { ...oven, from } });
    setFirst(from);
    return true;
  };
  const setTo = async (to: MinuteOfDay): Promise<boolean> => {
    const from = ways().oven?.from ?? first();
    return from !== null && set({ oven: { from, to } });
  };
  const setDays = async (days: number): Promise<boolean> => {
    const { closes } = ways();
    if (closes !== null) return set({ closes: { ...closes, days } });
    setFirst(days);
    return true;
  };
  const setClosesAt = async (minute: MinuteOfDay): Promise<boolean> => {
    const days = ways().closes?.days ?? first();
    return days !== null && set({ closes: { days, at: minute } });
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
              detail={overMidnight() ? hoursPage.nextDay : undefined}
            >
              <div class="circle-grid">
                <Control
                  label={hoursPage.from}
                  value={shown('from')}
                  onPress={() => setAt('from')}
                />
                <Control
                  label={hoursPage.to}
                  value={shown('to')}
                  onPress={() => setAt(ways().oven === null ? 'from' : 'to')}
                />
                <Control label={hoursPage.closes} value={closes()} onPress={() => setAt('days')} />
              </div>
            </Words>
          }
          controls={
            <>
              <Show when={ways().oven !== null}>
                <Control label={hoursPage.forget} onPress={() => void set({ oven: null })} />
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
            const to = ways().oven === null ? 'to' : 'all';
            then(setFrom(from), () => setAt(to));
          }}
          onShift={(from) => void setFrom(from)}
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
          onMinute={(to) => then(setTo(to), all)}
          onShift={(to) => void setTo(to)}
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
                onChoose={(days) => then(setDays(Number(days)), () => setAt('closes'))}
              />
            </Words>
          }
          controls={
            <Show when={ways().closes !== null}>
              <Control
                label={hoursPage.neverClose}
                onPress={() => then(set({ closes: null }), all)}
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
          onMinute={(minute) => then(setClosesAt(minute), all)}
          onShift={(minute) => void setClosesAt(minute)}
          onBack={all}
        />
      </Match>
    </Switch>
  );
}
