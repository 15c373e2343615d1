import { createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import type { DayAsk } from '../../core/day/laid/day-plan.ts';
import { touchKey } from '../../core/day/plan/ics.ts';
import { bench } from '../../core/speech/words/bench.ts';
import { dayPlan } from '../../core/speech/words/day.ts';
import type { Instant } from '../../core/units.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { bowlTouch } from './bowl-touch.ts';
import type { DayShown } from './day-shown.ts';
import { DayMore } from './DayMore.tsx';
import { DayPage } from './DayPage.tsx';
import { DayTable } from './DayTable.tsx';
import { planAlt, planDetail, planHeadline, readOf } from './shown-of.ts';
import { TapeFace } from './TapeFace.tsx';
import { TouchPage } from './TouchPage.tsx';

/** A plan: its tape or its table, each touch behind its own press, and what else may be done with it. */
export function TapePage(props: {
  readonly house: House;
  readonly ask: DayAsk;
  readonly day: DayShown;
  readonly note?: string | undefined;
  /** What putting a touch to an hour came to. */
  readonly pinNote?: string | undefined;
  readonly slab: JSX.Element;
  /** Asked anew; left out where that may not be. */
  readonly onChange?: (() => void) | undefined;
  readonly onPin?: ((batch: string, touch: string, at: Instant | null) => void) | undefined;
  readonly onSay?: (() => void) | undefined;
  readonly onGiveUp?: (() => void) | undefined;
  readonly more?: JSX.Element;
}): JSX.Element {
  const [open, setOpen] = createSignal<string | null>(null);
  const [table, setTable] = createSignal(false);
  const [more, setMore] = createSignal(false);
  const read = () => readOf(props.house, props.ask);
  const touch = () => props.day.touches.find((one) => touchKey(one) === open());
  const detail = (): string => planDetail(props.house, props.ask);
  return (
    <Switch
      fallback={
        <>
          <DayPage
            wide
            caption={props.house.caption()}
            words={
              <Show
                when={table()}
                fallback={
                  <TapeFace
                    day={props.day}
                    read={read()}
                    headline={planHeadline(props.house, props.day)}
                    detail={detail()}
                    alt={planAlt(props.house, props.day)}
                    note={props.note}
                    onTouch={setOpen}
                  />
                }
              >
                <div class="day-tape">
                  <Words headline={planHeadline(props.house, props.day)}>
                    <p>{detail()}</p>
                    <DayTable house={props.house} day={props.day} read={read()} />
                  </Words>
                </div>
              </Show>
            }
            slab={props.slab}
            controls={
              <>
                <Show when={props.onChange}>
                  <Control label={dayPlan.change} onPress={() => props.onChange?.()} />
                </Show>
                <Show when={props.onSay}>
                  <Control label={dayPlan.say} onPress={() => props.onSay?.()} />
                </Show>
                <Control label={bench.more} onPress={() => setMore(true)} />
              </>
            }
          />
          <Show when={more()}>
            <DayMore
              table={table()}
              onTable={() => {
                setTable(!table());
                setMore(false);
              }}
              onGiveUp={props.onGiveUp}
              more={props.more}
              onClose={() => setMore(false)}
            />
          </Show>
        </>
      }
    >
      <Match when={touch()}>
        {(its) => (
          <TouchPage
            house={props.house}
            day={props.day}
            touch={its()}
            pinned={read().stays(its())}
            bowls={bowlTouch(props.ask, its(), props.house.equipment(), (at) =>
              props.house.hour(at),
            )}
            note={props.pinNote}
            onPin={props.onPin && ((at) => props.onPin!(its().batch, its().name, at))}
            onBack={() => setOpen(null)}
          />
        )}
      </Match>
    </Switch>
  );
}
