import type { JSX } from 'solid-js';
import { start } from '../../core/speech/words/start.ts';
import { Control } from '../../parts/Control.tsx';
import type { House } from '../house.ts';
import { nextTouch, nextWords } from '../next-touch.ts';

/** The way to the Day; what the plan that stands wants hands for next is told on it. */
export function PlanDay(props: { readonly house: House; readonly onDay: () => void }): JSX.Element {
  const next = (): string | undefined => {
    const plan = props.house.plan();
    const touch = plan && nextTouch(plan, props.house.now());
    return touch ? nextWords(props.house, touch) : undefined;
  };
  return <Control label={start.planDay} value={next()} fresh="day" onPress={() => props.onDay()} />;
}
