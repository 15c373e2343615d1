import type { Recipe } from '../../../src/core/formula/recipe.ts';
import type { LoafAnswers } from '../../../src/core/log/loaf-names.ts';
import type { Celsius } from '../../../src/core/units.ts';
import type { Dice } from '../../truth/synthetic.ts';
import type { Hand } from './hand.ts';
import type { TrueDough } from './true-dough.ts';

/** How far a bake goes: to its note, ended as the baskets are filled, left standing in its bowl, or over and flat. */
export type Goes = 'whole' | 'early' | 'open' | 'tray';

/** A bake of the invented kitchen before it is baked: what it is of and what will happen in it. */
export interface BakeDay {
  readonly bake: string;
  readonly recipe: Recipe;
  readonly room: Celsius;
  /** The dough out of its first mix. */
  readonly mixed: Celsius;
  readonly lnV: number;
  readonly goes: Goes;
  /** Whether anything is measured or told at all. */
  readonly measured: boolean;
  /** Hours of the bulk as a share of those the dough wants. */
  readonly bulk: number;
  readonly crust: 'pale' | 'golden' | 'dark';
  /** A press taken back and done again; a dough temperature keyed wrong and mended. */
  readonly slip: 'none' | 'takeBack' | 'correct';
  /** A key of the catalogue's notes or the baker's own words; null: none. */
  readonly note: string | null;
  /** What the cut loaf showed; null: nobody said. */
  readonly cut: LoafAnswers | null;
}

/** A day as it is walked. */
export interface OnTheDay {
  readonly hand: Hand;
  readonly dice: Dice;
  readonly day: BakeDay;
  readonly loaves: readonly string[];
  /** Once it is mixed and salted. */
  dough?: TrueDough;
}

/** @throws where the machine refuses: an invented day must be one that can be. */
export function must(taken: boolean, what: string): void {
  if (!taken) throw new Error(`Refused: ${what}.`);
}

/** Minutes that hands need, and whatever of it rang is hushed on the way. */
export function work({ hand, dice }: Pick<OnTheDay, 'hand' | 'dice'>, minutes: number): void {
  const ringing = hand.fold.wanted(hand.kitchen).ringing;
  if (ringing) {
    hand.turn(Math.round(dice.between(1, 4)) / 2);
    const still = hand.fold.wanted(hand.kitchen).ringing;
    if (still) must(hand.do({ kind: 'heard', call: still.id }), `heard ${still.id}`);
  }
  hand.turn(Math.round(minutes * dice.between(0.7, 1.4)));
}
