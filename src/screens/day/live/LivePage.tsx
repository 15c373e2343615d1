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
import { NOTHING_STANDS, type Anew } from '../../../core/day/laid/live-question.ts';
import type { Change, PlannedTouch } from '../../../core/day/plan/types.ts';
import { live as words } from '../../../core/speech/words/live.ts';
import { planChanges } from '../../../core/speech/words/plan.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showLength } from '../../../core/speech/lengths.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { hourOrDay, tellDay } from '../../../core/speech/tell-day.ts';
import { tellLooks } from '../../../core/speech/tell-looks.ts';
import { tellMoved, tellOthers } from '../../../core/speech/tell-moved.ts';
import { tellBecause, tellChange, tellOffered, tellTouch } from '../../../core/speech/tell-plan.ts';
import { MINUTE, type Instant } from '../../../core/units.ts';
import { Control } from '../../../parts/Control.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import type { House } from '../../house.ts';
import { nextBowlsOf } from '../bowl-touch.ts';
import { dayClockOf } from '../day-clock.ts';
import { printDay } from '../print/print-day.tsx';
import { CameUp } from './CameUp.tsx';
import { askAnew, withChange } from './live-day.ts';
import { AheadTable, MovesTable } from './LiveTables.tsx';
import { setBackSince } from './set-back.ts';
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
  const found = () => anew()?.stands ?? NOTHING_STANDS;
  let asked = 0;
  createEffect(
    on([plan, stands], async ([one], before) => {
      // What was answered about another plan offers what is gone.
      if (one?.sequence !== before?.[0]?.sequence) setAnew(null);
      if (one === null) return void setAnew(null);
      const mine = (asked += 1);
      const answer = await askAnew(props.house, one);
      if (mine === asked) setAnew(answer);
    }),
  );
  const moved = () => {
    const one = anew();
    return one?.is === 'moved' && one.sign !== declined() ? one : null;
  };
  const many = () => (plan()?.ask.bakes.length ?? 0) > 1;
  const nameOf = ({ batch, name }: PlannedTouch): string =>
    many()
      ? fill(words.ofBake, { bake: showBread(batch), part: tellTouch(name) })
      : tellTouch(name);
  const looks = () =>
    found().looks.flatMap(
      (one) => tellLooks(one, { now: props.house.now(), many: many(), time }) ?? [],
    );
  const clockBack = () => {
    const by = setBackSince(props.house, plan()!);
    const bread = Math.max(...plan()!.ready.map(({ at }) => at));
    return by === null
      ? null
      : fill(words.clockBack, { length: showLength(by / MINUTE), time: time(bread) });
  };
  const ahead = () =>
    (plan()?.touches ?? [])
      .filter(({ at, hands }) => at + hands * MINUTE > props.house.now())
      .slice(0, LISTED);
  const nextBowls = (): string | null =>
    nextBowlsOf(plan()!.ask, ahead()[0], nameOf, props.house.equipment(), time);
  const accept = async (next: Parameters<House['take']>[0] & { kind: 'plan' }): Promise<void> => {
    await props.house.take(next);
    setTold(words.taken);
  };
  const change = async (one: Change): Promise<void> => {
    setAnew(null);
    asked += 1;
    const next = await withChange(props.house, plan()!, one);
    if (next) await accept({ kind: 'plan', plan: next });
    else setAnew({ is: 'undecided', stands: NOTHING_STANDS });
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
            stands={found()}
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
                      {(found) =>
                        unbroken(
                          [
                            tellMoved(found().moves, found().whys, time, many()) ?? '',
                            ...tellOthers(found().others),
                          ].join(' '),
                        )
                      }
                    </Match>
                    <Match when={anew()?.is === 'asPlanned' || anew()?.is === 'moved'}>
                      {told() ?? words.asPlanned}
                    </Match>
                    <Match when={anew()?.is === 'over'}>{words.over}</Match>
                    <Match when={anew()?.is === 'undecided'}>{words.undecided}</Match>
                    <Match when={anew()?.is === 'nothing'}>{told()}</Match>
                  </Switch>
                </p>
                <Show when={clockBack()}>
                  {(line) => <p class="live-look">{unbroken(line())}</p>}
                </Show>
                <For each={looks()}>{(line) => <p class="live-look">{unbroken(line)}</p>}</For>
                <Show when={nextBowls()}>
                  {(line) => <p class="live-look">{unbroken(line())}</p>}
                </Show>
                <For each={found().alone}>
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
                      <MovesTable moves={found().moves} many={many()} time={time} />
                    </section>
                  )}
                </Show>
                <Show when={anew()?.is === 'nothing' ? (anew() as Anew & { is: 'nothing' }) : null}>
                  {(found) => <Nothing found={found()} />}
                </Show>
                <Show when={moved() === null && ahead().length > 0}>
                  <AheadTable touches={ahead()} nameOf={nameOf} time={time} />
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
