import { createSignal, type Signal } from 'solid-js';
import { MINUTE, type Instant } from '../../../core/units.ts';
import type { House } from '../../house.ts';
import type { BenchView } from '../view.ts';
import { praiseOf } from './praise-of.ts';

/** How long the words of what was done stand beside the next step. Judgement. */
const STANDS = 2 * MINUTE;

interface Praised {
  readonly words: string;
  readonly at: Instant;
  readonly step: string;
}

const stepOf = ({ who, stage, task }: BenchView): string => `${who} ${stage} ${task ?? ''}`;

/** By the house, for as long as the page lives; in no fact. */
const all = new WeakMap<House, Signal<Praised | null>>();
const of = (house: House): Signal<Praised | null> => {
  const found = all.get(house) ?? createSignal<Praised | null>(null);
  all.set(house, found);
  return found;
};

/** A step's slab was pressed. */
export function pressed(house: House, view: BenchView): void {
  const words = praiseOf(house.ways().small, view);
  of(house)[1](words === null ? null : { words, at: house.now(), step: stepOf(view) });
}

/** What was begun is not known to be done. */
export const forgetPraise = (house: House): void => void of(house)[1](null);

/** Shown with the next step, and gone with the next press or after a while; null: nothing. */
export function praised(house: House, view: BenchView): string | null {
  const found = of(house)[0]();
  if (found === null || found.step === stepOf(view)) return null;
  return house.now() - found.at < STANDS ? found.words : null;
}
