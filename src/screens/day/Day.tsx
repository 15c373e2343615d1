import { createSignal, Match, Switch, untrack, type JSX } from 'solid-js';
import type { DayAsk, DayPlan } from '../../core/day/laid/day-plan.ts';
import type { PlanResult } from '../../core/day/plan/types.ts';
import { circle } from '../../core/speech/words/circle.ts';
import { askPage } from '../../core/speech/words/day.ts';
import { live } from '../../core/speech/words/live.ts';
import { start } from '../../core/speech/words/start.ts';
import { tellDay } from '../../core/speech/tell-day.ts';
import type { Instant } from '../../core/units.ts';
import { Control } from '../../parts/Control.tsx';
import type { DayDraft } from '../day-draft.ts';
import type { House } from '../house.ts';
import { AskFace, BakeFace, BreadFace, LoavesPage, type AskPage } from './AskFaces.tsx';
import { AwayFace } from './AwayFaces.tsx';
import { DayFace, HourFace } from './DueFaces.tsx';
import { changed, EMPTY_BAKE, formulaOf, withBake } from './draft.ts';
import { dayClockOf } from './day-clock.ts';
import LivePage from './live/LivePage.tsx';
import { PlanPage } from './PlanPage.tsx';
import { createPlanning } from './planning.ts';
import { StandingPage } from './StandingPage.tsx';
import { WarmFace } from './WarmFace.tsx';

type Face = AskPage | 'standing' | 'live' | 'ask' | 'hour' | 'plan';

/** Lays a bake or a few on the clock: asked by taps, shown as a tape, taken by one press. */
export default function Day(props: {
  readonly house: House;
  /** It opens on the day as it runs, and goes back from there. */
  readonly live?: boolean;
  /** It opens on this, to be asked: gathered in the Circle, where it goes back to. */
  readonly asks?: DayDraft | undefined;
  readonly onBake: (id: string) => void;
  readonly onHome: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- the house is one
  const house = props.house;
  const standing = () => house.plan();
  const planning = createPlanning(
    house,
    untrack(() => props.asks),
  );
  const { draft, formulas } = planning;
  const [face, setFace] = createSignal<Face>(
    untrack(() => (props.live ? 'live' : standing() && !props.asks ? 'standing' : 'ask')),
  );
  const [at, setAt] = createSignal(0);
  const [day, setDay] = createSignal(0);
  const bake = () => draft().bakes[at()] ?? EMPTY_BAKE;
  const several = (): boolean => draft().bakes.length > 1;
  /** Back from one question to what it belongs to. */
  const back = (): void => void setFace(several() && at() < draft().bakes.length ? 'bake' : 'ask');
  const toAsk = (): void => void setFace('ask');
  const turn = (page: AskPage, of: number): void => {
    setAt(of);
    setFace(page);
  };
  const lay = (): void => void setFace(planning.lay() ? 'plan' : 'ask');
  /** A change taken on the plan's own page is laid at once. */
  const relay = (change: (draft: DayDraft) => DayDraft): void => {
    planning.change(change);
    lay();
  };
  const take = async (ask: DayAsk, plan: Extract<PlanResult, { fits: true }>): Promise<void> => {
    // What was being said was of a plan that was only looked at.
    house.say('');
    await planning.take(ask, plan);
    setFace(standing() ? 'standing' : 'ask');
  };
  const change = (): void => {
    const plan = standing();
    if (plan === null) return toAsk();
    planning.askAnew(plan);
    setAt(0);
    toAsk();
  };
  const giveUp = async (plan: DayPlan): Promise<void> => {
    await house.take({ kind: 'planOff', plan: plan.id });
    props.onHome();
  };
  const say = (plan: Pick<DayPlan, 'touches' | 'ready'>): void =>
    house.say(tellDay(plan, dayClockOf(house)).said.join(' '));
  const due = (to: Instant | 'now', stays = false): void => {
    planning.change((old) => withBake(old, at(), { due: to }));
    if (!stays) back();
  };
  return (
    <Switch>
      <Match when={face() === 'live'}>
        <LivePage
          house={house}
          onClose={() => (props.live ? props.onHome() : setFace(standing() ? 'standing' : 'ask'))}
        />
      </Match>
      <Match when={face() === 'standing' && standing()}>
        {(plan) => (
          <StandingPage
            house={house}
            plan={plan()}
            more={<Control label={live.title} onPress={() => setFace('live')} />}
            onSay={() => say(plan())}
            onChange={change}
            onGiveUp={() => void giveUp(plan())}
            onBake={(id) => props.onBake(id)}
            onHome={() => props.onHome()}
          />
        )}
      </Match>
      <Match when={face() === 'plan' && planning.laid()}>
        {(its) => (
          <PlanPage
            house={house}
            laid={its()}
            pinNote={planning.pinNote()}
            onTake={(ask, plan) => void take(ask, plan)}
            onDraft={relay}
            onPin={(batch, touch, to) => planning.pin(batch, touch, to)}
            onSay={say}
            onAgain={lay}
            onChange={toAsk}
          />
        )}
      </Match>
      <Match when={face() === 'bread'}>
        <BreadFace
          house={house}
          formulas={formulas()}
          onPick={(formula) => {
            planning.change((old) => withBake(old, at(), { formula }));
            back();
          }}
          onBack={back}
        />
      </Match>
      <Match when={face() === 'loaves'}>
        <LoavesPage
          house={house}
          loaves={bake().loaves}
          onChange={(loaves) => planning.change((old) => withBake(old, at(), { loaves }))}
          onBack={back}
        />
      </Match>
      <Match when={face() === 'due'}>
        <DayFace
          house={house}
          headline={askPage.due}
          now
          back={askPage.title}
          onNow={() => due('now')}
          onDay={(ahead) => {
            setDay(ahead);
            setFace('hour');
          }}
          onBack={back}
        />
      </Match>
      <Match when={face() === 'hour'}>
        <HourFace
          house={house}
          ahead={day()}
          due={typeof bake().due === 'number' ? (bake().due as number) : null}
          onHour={(to) => due(to)}
          onShift={(to) => due(to, true)}
          onBack={back}
        />
      </Match>
      <Match when={face() === 'warm'}>
        <WarmFace
          house={house}
          onPick={(kitchen) => {
            planning.change((old) => changed(old, { kitchen }));
            toAsk();
          }}
          onBack={toAsk}
        />
      </Match>
      <Match when={face() === 'away'}>
        <AwayFace
          house={house}
          away={draft().away}
          onAway={(away) => planning.change((old) => changed(old, { away }))}
          onWeek={() => planning.change((old) => changed(old, {}))}
          onBack={toAsk}
        />
      </Match>
      <Match when={face() === 'bake' && draft().bakes[at()]}>
        <BakeFace
          house={house}
          draft={draft()}
          formulas={formulas()}
          at={at()}
          onTurn={turn}
          onOff={() => {
            planning.change((old) => changed(old, { bakes: old.bakes.toSpliced(at(), 1) }));
            toAsk();
          }}
          onBack={toAsk}
        />
      </Match>
      <Match when={true}>
        <AskFace
          house={house}
          draft={draft()}
          formulas={formulas()}
          missing={planning.missing()}
          onTurn={turn}
          onAdd={() => {
            const last = draft().bakes.at(-1);
            const others = formulas().filter(
              ({ id }) => !draft().bakes.some((one) => formulaOf(one, formulas())?.id === id),
            );
            planning.change((old) =>
              changed(old, {
                bakes: [
                  ...old.bakes,
                  { ...EMPTY_BAKE, formula: others[0]?.id ?? null, due: last?.due ?? null },
                ],
              }),
            );
          }}
          onPlan={lay}
          home={props.asks ? circle.title : start.title}
          onHome={() => props.onHome()}
        />
      </Match>
    </Switch>
  );
}
