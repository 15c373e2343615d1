import type { AskedBake, DayAsk, DayPlan } from '../../core/day/laid/day-plan.ts';
import type { Formula } from '../../core/formula/formula.ts';
import { makeRecipe } from '../../core/formula/make-recipe.ts';
import type { Equipment } from '../../core/kitchen/equipment.ts';
import type { Belief } from '../../core/readiness/belief.ts';
import { askPage } from '../../core/speech/words/day.ts';
import { start } from '../../core/speech/words/start.ts';
import { tellNotice } from '../../core/speech/tell-notice.ts';
import type { Instant, Units } from '../../core/units.ts';
import type { BakeDraft, DayDraft } from '../day-draft.ts';

export const EMPTY_BAKE: BakeDraft = { formula: null, loaves: 2, due: null, pins: {} };
export const EMPTY_DAY: DayDraft = { bakes: [EMPTY_BAKE], kitchen: null, away: [], taken: [] };

/** What an ask is made of besides. */
export interface DraftWorld {
  readonly formulas: readonly Formula[];
  readonly equipment: Pick<Equipment, 'scale' | 'fridge'>;
  readonly belief: Belief;
  readonly now: Instant;
  readonly units: Units;
}

export const formulaOf = (
  { formula }: Pick<BakeDraft, 'formula'>,
  formulas: readonly Formula[],
): Formula | null => formulas.find(({ id }) => id === formula) ?? formulas[0] ?? null;

/** A bread's name in the plan: the second of a kind has a number. */
export function namesOf({ bakes }: DayDraft, formulas: readonly Formula[]): readonly string[] {
  const names = bakes.map((bake) => formulaOf(bake, formulas)?.name ?? '');
  return names.map((name, i) => {
    const before = names.slice(0, i).filter((other) => other === name).length;
    return before === 0 ? name : `${name} ${before + 1}`;
  });
}

/** The ask, or the sentence that says what is missing or cannot be. */
export function askOf(
  draft: DayDraft,
  { formulas, equipment, belief, now, units }: DraftWorld,
):
  | { readonly ask: DayAsk; readonly missing: null }
  | { readonly ask: null; readonly missing: string } {
  const no = (missing: string) => ({ ask: null, missing });
  const names = namesOf(draft, formulas);
  const bakes: AskedBake[] = [];
  for (const [i, bake] of draft.bakes.entries()) {
    const formula = formulaOf(bake, formulas);
    if (formula === null) return no(start.noFormulas);
    if (bake.due === null) return no(askPage.due);
    if (bake.due !== 'now' && bake.due <= now) return no(askPage.past);
    const { scale, fridge } = equipment;
    const { loaves, piece = formula.piece } = bake;
    const made = makeRecipe(formula, { loaves, piece, scale });
    if (made.recipe === null) return no(tellNotice(made.reason, units));
    const { process } = made.recipe;
    bakes.push({
      name: names[i]!,
      recipe: { ...made.recipe, process: { ...process, fridge: fridge.celsius ?? process.fridge } },
      due: bake.due === 'now' ? null : bake.due,
      startAt: bake.due === 'now' ? now : null,
      bake: null,
      pins: bake.pins,
    });
  }
  const { kitchen, away, taken } = draft;
  if (kitchen === null) return no(start.kitchen);
  return {
    ask: { bakes, kitchen, belief, away, ...(taken.length > 0 ? { taken } : {}) },
    missing: null,
  };
}

/** A plan that stands, to be asked anew. */
export const draftOf = ({ ask }: Pick<DayPlan, 'ask'>): DayDraft => ({
  bakes: ask.bakes.map(({ recipe, due, pins }) => ({
    formula: recipe.formula.id,
    loaves: recipe.loaves,
    ...(recipe.piece === recipe.formula.piece ? {} : { piece: recipe.piece }),
    due: due ?? 'now',
    pins,
  })),
  kitchen: ask.kitchen,
  away: ask.away,
  taken: ask.taken ?? [],
});

/** Another question: what was agreed to for the one before is no longer asked for. */
export const changed = (draft: DayDraft, part: Partial<DayDraft>): DayDraft => ({
  ...draft,
  taken: [],
  ...part,
});

/** Another bread has a piece of its own. */
const pieceGone = ({ piece: _, ...bake }: BakeDraft, formula: BakeDraft['formula']): BakeDraft => ({
  ...bake,
  formula,
});

/** One bread changed; its touches are no longer put to hours. */
export const withBake = (draft: DayDraft, at: number, part: Partial<BakeDraft>): DayDraft =>
  changed(draft, {
    bakes: draft.bakes.map((bake, i) => {
      if (i !== at) return bake;
      const { formula } = part;
      const same = formula === undefined || formula === bake.formula;
      return { ...(same ? bake : pieceGone(bake, formula)), pins: {}, ...part };
    }),
  });

/** A touch put to an hour, or (null) let go. */
export const withPin = (
  draft: DayDraft,
  at: number,
  touch: string,
  to: Instant | null,
): DayDraft => ({
  ...draft,
  bakes: draft.bakes.map((bake, i) => {
    if (i !== at) return bake;
    const { [touch]: _, ...others } = bake.pins;
    return { ...bake, pins: to === null ? others : { ...others, [touch]: to } };
  }),
});
