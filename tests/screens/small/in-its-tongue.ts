import { expect } from 'vitest';
import type { Ages } from '../../../src/core/small/ages.ts';
import {
  smallWords,
  type SmallStep,
  type SmallWords,
} from '../../../src/core/small/small-words.ts';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { inEnglish, type Catalogues, type Tongue } from '../../../src/core/speech/tongue.ts';
import { gate as english } from '../../../src/core/speech/words/gate.ts';
import { unbroken } from '../../../src/parts/unbroken.ts';
import { focusOn } from '../../../src/screens/focus.ts';
import { questionView } from '../../../src/screens/bench/question-view.ts';
import { benchView } from '../../../src/screens/bench/view.ts';
import type { OnBench } from '../bench/on-bench.tsx';

export const WORDS: Readonly<Record<Tongue, Catalogues>> = { en: {}, fr, de };

/** A child's words of a step, read of the tongue's own file and not of what stands. */
function wordsOf(tongue: Tongue, ages: Ages, step: SmallStep): SmallWords {
  if (tongue === 'en') return inEnglish(() => ({ ...smallWords(ages, step) }));
  const [all] = Object.values(WORDS[tongue][`small-${ages}`] ?? {});
  const found = (all as Readonly<Partial<Record<SmallStep, SmallWords>>> | undefined)?.[step];
  if (!found) throw new Error(`No words of ${step} for ${ages} in ${tongue}.`);
  return found;
}
const grownUpOf = (tongue: Tongue): string =>
  tongue === 'en'
    ? inEnglish(() => english.grownUp)
    : (WORDS[tongue]['gate']!['gate'] as typeof english).grownUp;

const textOf = (selector: string): string | null =>
  document.querySelector(selector)?.textContent ?? null;

export type Kind = 'headline' | 'act' | 'task' | 'praise';
/** A step as it was seen, and what of it stands in other words than the English. */
export interface Told {
  readonly step: SmallStep;
  readonly differs: readonly Kind[];
}

/**
 * Holds what the bench shows a child to its tongue: the act, the child's task, what is praised of the step
 * that was `pressed` before, and the baker's headline; none of it is the English where that is another text.
 */
export function expectTongue(
  at: OnBench,
  tongue: Tongue,
  ages: Ages,
  pressed: SmallStep | null,
): Told {
  const { house } = at;
  const focus = focusOn(house.kitchen(), at.bake)!;
  const hour = (instant: number): string => house.hour(instant);
  const view = () =>
    benchView(house.kitchen(), focus, hour, questionView, house.ways(), house.equipment());
  const { headline, stage, task } = view();
  const step = (task ?? stage) as SmallStep;
  const differs: Kind[] = [];
  const shows = (kind: Kind, selector: string, words: string, other: string): void => {
    const shown = textOf(selector);
    const where = `${kind} of ${step}`;
    expect(shown, where).toContain(unbroken(words));
    if (words === other) return;
    differs.push(kind);
    expect(shown, where).not.toContain(unbroken(other));
  };
  const [own, others] = [wordsOf(tongue, ages, step), wordsOf('en', ages, step)];
  const isGate = document.querySelector('.small-stand') !== null;
  const isOwn = document.querySelector('.act.small') !== null;
  if (isGate) shows('act', '.act-headline', grownUpOf(tongue), grownUpOf('en'));
  else if (isOwn) shows('act', '.act-headline', own.act, others.act);
  const bakers = inEnglish(() => view().headline);
  shows('headline', isOwn ? '.small-baker' : '.act-headline', headline, bakers);
  shows('task', '.small-task', own.task, others.task);
  if (pressed !== null && document.querySelector('.small-praise') !== null) {
    const praise = (of: Tongue): string => wordsOf(of, ages, pressed).praise;
    shows('praise', '.small-praise', praise(tongue), praise('en'));
  }
  return { step, differs };
}
