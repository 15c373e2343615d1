import { createMemo, For, Show, type JSX } from 'solid-js';
import { planOutline } from '../../core/day/outline.ts';
import type { WeighLine } from '../../core/formula/recipe.ts';
import { recipeBowls, sharesOf } from '../../core/kitchen/split-bowls.ts';
import { warnOf } from '../../core/kitchen/warn-of.ts';
import { bowlPage } from '../../core/speech/words/bowls.ts';
import { night } from '../../core/speech/words/kitchen.ts';
import { readThrough } from '../../core/speech/words/start.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { tellLine } from '../../core/speech/tell-line.ts';
import { showShares } from '../../core/speech/in-bowls.ts';
import { tellNotice } from '../../core/speech/tell-notice.ts';
import { unbroken } from '../../parts/unbroken.ts';
import type { House } from '../house.ts';
import { lastTold } from '../last-told.ts';
import { loadSize } from '../load-size.ts';
import './ReadThrough.css';

/** What a bake needs, how long hands are needed, when it ends: before anything is wet. */
export default function ReadThrough(props: {
  readonly house: House;
  readonly bake: string;
}): JSX.Element {
  const context = () => props.house.kitchen().bakes[props.bake]?.context;
  const outline = createMemo(() => {
    const bake = context();
    return (
      bake &&
      planOutline({
        recipe: bake.recipe,
        kitchen: bake.kitchen,
        from: 'levain.feed',
        perLoad: loadSize(props.house.equipment(), bake.recipe.process.vessel),
        now: bake.entered['read.plan'] ?? props.house.kitchen().now,
      })
    );
  });
  const needs = createMemo(() => {
    const lines = context()?.recipe.lines;
    return lines ? [...lines.first, ...lines.second, ...lines.filling] : [];
  });
  const bowls = createMemo(() => {
    const recipe = context()?.recipe;
    return recipe ? recipeBowls(recipe, props.house.equipment()) : [];
  });
  /** A line with what each bowl takes of it, where there are several. */
  const need = (line: WeighLine): string => {
    const { item, grams } = line;
    const ways = props.house.ways();
    const facts = shown({ grams, name: tellLine(line) }, ways);
    return bowls().length < 2
      ? fill(readThrough.line, facts)
      : fill(bowlPage.needs, { ...facts, shares: showShares(sharesOf(bowls(), item), ways) });
  };
  const warned = createMemo(() => {
    const bake = context();
    if (!bake) return [];
    const { recipe, loaves } = bake;
    const here = warnOf('read.plan', recipe, loaves.length, props.house.equipment());
    // How much one bowl takes is told by what this kitchen holds; the usual figure goes then.
    const shares = here.some(({ key }) => key.startsWith('bowls'));
    return [...recipe.warnings.filter(({ key }) => !(shares && key === 'heavyDough')), ...here];
  });
  const last = createMemo(() => {
    const formula = context()?.recipe.formula.id;
    return formula === undefined ? null : lastTold(props.house, formula);
  });
  const time = (at: number): string => `${props.house.day(at)} ${props.house.hour(at)}`;
  return (
    <Show when={outline()}>
      {(plan) => (
        <div class="through">
          <Show when={last()}>{(told) => <p class="through-last">{unbroken(told())}</p>}</Show>
          <ul class="through-times">
            <li>{fill(readThrough.handsOn, shown({ minutes: plan().handsOn }))}</li>
            <li>
              {plan().loads === 1
                ? readThrough.load
                : fill(readThrough.loads, { loads: plan().loads })}
            </li>
            <li>{fill(readThrough.ends, { time: time(plan().out) })}</li>
            <Show when={plan().cold}>
              {(cold) => (
                <li>
                  {readThrough.overnight} {night.plug}{' '}
                  {fill(night.phone, { time: props.house.hour(cold().to) })}
                </li>
              )}
            </Show>
            <For each={warned()}>{(w) => <li>{tellNotice(w, props.house.ways())}</li>}</For>
          </ul>
          <ul class="through-needs" aria-label={readThrough.needs}>
            <For each={needs()}>{(line) => <li>{unbroken(need(line))}</li>}</For>
          </ul>
        </div>
      )}
    </Show>
  );
}
