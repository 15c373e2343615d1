import { createMemo, Show, type JSX } from 'solid-js';
import type { DayPlan } from '../../core/day/laid/day-plan.ts';
import { bench } from '../../core/speech/words/bench.ts';
import { dayPlan } from '../../core/speech/words/day.ts';
import { start } from '../../core/speech/words/start.ts';
import { fill } from '../../core/speech/fill.ts';
import { HOUR } from '../../core/units.ts';
import { Slab } from '../../parts/Slab.tsx';
import type { House } from '../house.ts';
import { nextTouch, nextWords } from '../next-touch.ts';
import { inputOf } from './laying.ts';
import { shownOf } from './shown-of.ts';
import { TapePage } from './TapePage.tsx';

/** A feed is offered so long before its hour. Judgement. */
const SOON = HOUR;

/** The plan that stands: its tape, and its first feed once the hour is near. */
export function StandingPage(props: {
  readonly house: House;
  readonly plan: DayPlan;
  readonly more?: JSX.Element;
  readonly onChange: () => void;
  readonly onSay?: (() => void) | undefined;
  readonly onGiveUp: () => void;
  readonly onBake: (id: string) => void;
  readonly onHome: () => void;
}): JSX.Element {
  const day = createMemo(() => shownOf(props.plan, inputOf(props.house, props.plan.ask).input));
  const untouched = (): boolean => props.plan.ask.bakes.every(({ bake }) => bake === null);
  /** The feed that comes next, of a bake that has not begun. */
  const feed = createMemo(() => {
    const waits = props.plan.ask.bakes.filter(({ bake }) => bake === null);
    return props.plan.touches.find(
      ({ batch, name, at }) =>
        name === 'feed levain' &&
        waits.some((one) => one.name === batch) &&
        at - SOON <= props.house.now(),
    );
  });
  const begin = async (name: string): Promise<void> => {
    const id = await props.house.beginPlanned(name);
    if (id !== null) props.onBake(id);
  };
  const ripe = (batch: string): string => {
    const mix = props.plan.touches.find((one) => one.batch === batch && one.name === 'mix');
    return mix ? props.house.hour(mix.at) : '–';
  };
  const next = createMemo(() => nextTouch(props.plan, props.house.now()));
  const slab = (): JSX.Element => (
    <Show
      when={feed()}
      fallback={
        <Slab
          label={bench.thatsIt}
          then={next() ? nextWords(props.house, next()!) : start.title}
          fresh="standing"
          onPress={() => props.onHome()}
        />
      }
    >
      {(now) => (
        <Slab
          label={dayPlan.feedNow}
          then={fill(dayPlan.feedThen, { ratio: now().choice ?? '', time: ripe(now().batch) })}
          fresh={`feed ${now().batch}`}
          disabled={!props.house.holds}
          onPress={() => void begin(now().batch)}
        />
      )}
    </Show>
  );
  return (
    <TapePage
      house={props.house}
      ask={props.plan.ask}
      day={day()}
      slab={slab()}
      onChange={untouched() && props.house.holds ? () => props.onChange() : undefined}
      onSay={props.onSay}
      onGiveUp={props.house.holds ? () => props.onGiveUp() : undefined}
      more={props.more}
    />
  );
}
