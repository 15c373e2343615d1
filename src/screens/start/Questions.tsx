import type { JSX } from 'solid-js';
import { joins, start } from '../../core/speech/words/start.ts';
import { showHeat } from '../../core/speech/heats.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import type { Units } from '../../core/units.ts';
import { Control } from '../../parts/Control.tsx';
import type { Chosen } from './chosen.ts';
import { loavesTold } from './draft.ts';

/** What a bake begins with: each question with its answer so far, and what else is one press away. */
export function Questions(props: {
  readonly chosen: Chosen;
  readonly units: Units;
  readonly onAsk: (question: 'formula' | 'loaves' | 'kitchen' | 'where') => void;
  readonly children: JSX.Element;
}): JSX.Element {
  const draft = () => props.chosen.draft();
  const cell = (ask: string, value: string, to: Parameters<typeof props.onAsk>[0]): JSX.Element => (
    // Named whole: where a notice takes the height not every question is in sight.
    <Control label={ask} value={value} name={`${ask} ${value}`} onPress={() => props.onAsk(to)} />
  );
  const bread = (): string => {
    const formula = props.chosen.formula();
    return formula ? showBread(formula.name) : start.noFormulas;
  };
  const warmth = (): string => {
    const { kitchen } = draft();
    return kitchen === null ? '–' : showHeat(kitchen, props.units);
  };
  return (
    <div class="start-grid">
      {cell(start.formula, bread(), 'formula')}
      {cell(start.loaves, loavesTold(draft(), props.units), 'loaves')}
      {cell(start.kitchen, warmth(), 'kitchen')}
      {cell(start.where, joins[draft().from], 'where')}
      {props.children}
    </div>
  );
}
