import {
  createEffect,
  createMemo,
  createSignal,
  For,
  Match,
  on,
  Show,
  Switch,
  type JSX,
} from 'solid-js';
import { stageOf } from '../../../../machines/kitchen/stage-of.ts';
import type { Change } from '../../../core/day/plan/types.ts';
import { live as words } from '../../../core/speech/en/live.ts';
import { planChanges } from '../../../core/speech/en/plan.ts';
import { fill } from '../../../core/speech/fill.ts';
import { hourOrDay, tellDay } from '../../../core/speech/tell-day.ts';
import { tellMove, tellMoved } from '../../../core/speech/tell-moved.ts';
import { tellBecause, tellChange, tellOffered, tellTouch } from '../../../core/speech/tell-plan.ts';
import { MINUTE, type Instant } from '../../../core/units.ts';
import { Control } from '../../../parts/Control.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import type { House } from '../../house.ts';
import { dayClockOf } from '../day-clock.ts';
import { printDay } from '../print/print-day.tsx';
import { askAnew, takeChange, unattended, type Anew } from './anew.ts';
import { CameUp } from './CameUp.tsx';
import { toCalendar } from './to-calendar.ts';
import './Live.css';

/** Minutes after which a day is asked anew though nothing was done. */
const TURN = 5 * MINUTE;
/** Touches ahead that are listed; the tape has them all. */
const LISTED = 6;
/** Ways out of a day that does not fit, a press each. */
const OFFERED = 4;

/** The day while it runs: what comes next, what moved and why, and what to do when something comes up. */
export default function LivePage(props: {
  readonly house: House;
  readonly onClose: () => void;
}): JSX.Element {
  const plan = createMemo(() => props.house.plan());
  const [page, setPage] = createSignal<'day' | 'came'>('day');
  const [anew, setAnew] = createSignal<Anew | null>(null);
  const [declined, setDeclined] = createSignal<string | null>(null);
  const [told, setTold] = createSignal<string | null>(null);
  const clock = () => dayClockOf(props.house);
  const time = (at: Instant): string => hourOrDay(at, clock());
  /** Whatever a fresh plan may come of. */
  const stands = createMemo(() => {
    const { seq, bakes } = props.house.kitchen();
    const turn = Math.floor(props.house.now() / TURN);
    return [seq, turn, ...Object.values(bakes).map((bake) => stageOf(bake))].join(' ');
  });
  const alone = createMemo(
    on([plan, stands], ([one]) => (one === null ? [] : unattended(props.house, one))),
  );
  let asked = 0;
  createEffect(
    on([plan, stands], async ([one]) => {
      if (one === null) return void setAnew(null);
      const mine = (asked += 1);
      const found = await askAnew(props.house, one);
      if (mine === asked) setAnew(found);
    }),
  );
  const moved = () => {
    const found = anew();
    return found?.is === 'moved' && found.sign !== declined() ? found : null;
  };
  const ahead = () =>
    (plan()?.touches ?? [])
      .filter(({ at, hands }) => at + hands * MINUTE > props.house.now())
      .slice(0, LISTED);
  const accept = async (next: Parameters<House['take']>[0] & { kind: 'plan' }): Promise<void> => {
    await props.house.take(next);
    setTold(words.taken);
  };
  const change = async (one: Change): Promise<void> => {
    setAnew(null);
    const next = await takeChange(props.house, plan()!, one);
    if (next) await accept({ kind: 'plan', plan: next });
    else setAnew({ is: 'undecided' });
  };
  const hand = async (): Promise<void> => {
    const handed = await toCalendar(props.house, plan()!).catch(() => null);
    if (handed !== 'left') setTold(handed === null ? words.notShared : words.shared);
  };
  const Nothing = (nothing: { readonly found: Anew & { is: 'nothing' } }): JSX.Element => (
    <section class="live-offer">
      <h2 class="sheet-part">
        {fill(planChanges.title, { time: time(Math.max(...plan()!.ready.map(({ at }) => at))) })}
      </h2>
      <For each={tellBecause(nothing.found.because)}>{(line) => <p>{line}</p>}</For>
      <p>{tellOffered(nothing.found.changes.length)}</p>
      <Show when={nothing.found.changes.length > 0}>
        <div class="sheet-grid">
          <For each={nothing.found.changes.slice(0, OFFERED)}>
            {(one) => (
              <Control
                label={tellChange(one, time, nothing.found.asked)[0]!}
                disabled={!props.house.holds}
                onPress={() => void change(one)}
              />
            )}
          </For>
        </div>
      </Show>
    </section>
  );
  return (
    <Switch>
      <Match when={page() === 'came' && plan()}>
        {(one) => (
          <CameUp
            house={props.house}
            plan={one()}
            time={time}
            onTaken={() => {
              setTold(words.taken);
              setPage('day');
            }}
            onBack={() => setPage('day')}
          />
        )}
      </Match>
      <Match when={page() === 'day'}>
        <Sheet title={words.title}>
          <Show when={plan()} fallback={<p>{words.none}</p>}>
            {(one) => (
              <>
                <p class="live-told">{unbroken(tellDay(one(), clock()).shown.join(' '))}</p>
                <p class="live-stands" role="status">
                  <Switch fallback={told() ?? words.working}>
                    <Match when={moved()}>
                      {(found) => unbroken(tellMoved(found().moves, found().whys, time) ?? '')}
                    </Match>
                    <Match when={anew()?.is === 'asPlanned' || anew()?.is === 'moved'}>
                      {told() ?? words.asPlanned}
                    </Match>
                    <Match when={anew()?.is === 'over'}>{words.over}</Match>
                    <Match when={anew()?.is === 'undecided'}>{words.undecided}</Match>
                    <Match when={anew()?.is === 'nothing'}>{told()}</Match>
                  </Switch>
                </p>
                <For each={alone()}>
                  {(touch) => (
                    <p class="live-warn">
                      {unbroken(
                        fill(words.ironAway, {
                          touch: tellTouch(touch.name),
                          time: time(touch.at),
                        }),
                      )}
                    </p>
                  )}
                </For>
                <Show when={moved()}>
                  {(found) => (
                    <section class="live-offer">
                      <div class="sheet-grid">
                        <Control
                          label={words.take}
                          fresh={found().sign}
                          strong
                          disabled={!props.house.holds}
                          onPress={() => void accept({ kind: 'plan', plan: found().next })}
                        />
                        <Control label={words.keep} onPress={() => setDeclined(found().sign)} />
                      </div>
                      <table class="live-table">
                        <thead>
                          <tr>
                            <th scope="col">{words.columns.touch}</th>
                            <th scope="col">{words.columns.was}</th>
                            <th scope="col">{words.columns.now}</th>
                          </tr>
                        </thead>
                        <tbody>
                          <For each={found().moves.map((move) => tellMove(move, time))}>
                            {(line) => (
                              <tr>
                                <th scope="row">{line.name}</th>
                                <td>{line.was}</td>
                                <td class="live-new">{line.now}</td>
                              </tr>
                            )}
                          </For>
                        </tbody>
                      </table>
                    </section>
                  )}
                </Show>
                <Show when={anew()?.is === 'nothing' ? (anew() as Anew & { is: 'nothing' }) : null}>
                  {(found) => <Nothing found={found()} />}
                </Show>
                <Show when={moved() === null && ahead().length > 0}>
                  <table class="live-table">
                    <thead>
                      <tr>
                        <th scope="col">{words.columns.touch}</th>
                        <th scope="col">{words.columns.now}</th>
                        <th scope="col">{words.columns.fine}</th>
                        <th scope="col">{words.columns.last}</th>
                      </tr>
                    </thead>
                    <tbody>
                      <For each={ahead()}>
                        {(touch) => (
                          <tr>
                            <th scope="row">{tellTouch(touch.name)}</th>
                            <td class="live-new">{time(touch.at)}</td>
                            <td>{touch.frozen ? words.frozen : time(touch.fineUntil)}</td>
                            <td>{touch.frozen ? '' : time(touch.lastPossible)}</td>
                          </tr>
                        )}
                      </For>
                    </tbody>
                  </table>
                </Show>
              </>
            )}
          </Show>
          <div class="sheet-grid">
            <Control label={words.back} onPress={() => props.onClose()} />
            <Show when={plan()}>
              {(one) => (
                <>
                  <Control
                    label={words.came}
                    disabled={anew()?.is === 'over'}
                    onPress={() => setPage('came')}
                  />
                  <Control label={words.print} onPress={() => printDay(props.house, one())} />
                  <Control label={words.calendar} onPress={() => void hand()} />
                </>
              )}
            </Show>
          </div>
        </Sheet>
      </Match>
    </Switch>
  );
}
