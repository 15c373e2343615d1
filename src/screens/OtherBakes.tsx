import { For, Show, type JSX } from 'solid-js';
import { several } from '../core/speech/words/several.ts';
import { fill } from '../core/speech/fill.ts';
import { BakeControl } from '../parts/BakeControl.tsx';
import { runningText } from '../parts/running.ts';
import type { House } from './house.ts';
import { leapIsBeside } from './leap-due.ts';
import { LeapControl } from './LeapControl.tsx';
import type { Other } from './others.ts';
import { starterIsBeside } from './starter-due.ts';
import { StarterControl } from './StarterControl.tsx';
import { TimersControl } from './TimersControl.tsx';

/** With the one on show three: more times at once are not read. */
export const MOST_BESIDE = 2;

/** The next running bakes and timers beside the one on show, one press away; the rest are under More. */
export function OtherBakes(props: {
  readonly house: House;
  readonly others: readonly Other[];
  readonly onBake: (id: string) => void;
  /** What a press on the running timers does; they take the last place. Left out: not shown here. */
  readonly onTimers?: (() => void) | undefined;
}): JSX.Element {
  const time = ({ at, late }: Other): string | null => {
    if (at === null) return null;
    return late ? runningText(at - props.house.now()) : props.house.hour(at);
  };
  const label = (other: Other): string => {
    const { name, waits, stage } = other;
    const values = { bake: name, waits, stage, time: time(other) ?? '' };
    return fill(other.at === null ? several.goTo : several.goToAt, values);
  };
  const onTimers = () =>
    Object.keys(props.house.kitchen().timers).length > 0 ? props.onTimers : undefined;
  /** On a bench it comes before all others; elsewhere they would be nowhere. */
  const leap = (): boolean =>
    leapIsBeside(props.house) &&
    (props.onTimers !== undefined || props.others.length < MOST_BESIDE);
  const many = (): number => MOST_BESIDE - (onTimers() ? 1 : 0) - (leap() ? 1 : 0);
  /** It hurries less than anything else here, and takes no other's place. */
  const starter = (): boolean =>
    starterIsBeside(props.house.kitchen()) && props.others.length < many();
  return (
    <>
      <Show when={leap()}>
        <LeapControl house={props.house} />
      </Show>
      <For each={props.others.slice(0, many()).map(({ id }) => id)}>
        {(id) => {
          const other = () => props.others.find((o) => o.id === id) ?? props.others[0]!;
          return (
            <BakeControl
              mark={other().mark}
              name={other().name}
              waits={other().waits}
              time={time(other())}
              late={other().late}
              label={label(other())}
              onPress={() => props.onBake(id)}
            />
          );
        }}
      </For>
      <Show when={onTimers()}>
        {(open) => <TimersControl house={props.house} onPress={() => open()()} />}
      </Show>
      <Show when={starter()}>
        <StarterControl house={props.house} />
      </Show>
    </>
  );
}
