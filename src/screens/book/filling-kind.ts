import {
  FILLING_FACTS,
  FILLING_KINDS,
  type FillingKind,
} from '../../core/formula/filling-facts.ts';
import type { Filling } from '../../core/formula/formula.ts';

const HERB =
  /\b(herbs?|thyme|rosemary|sage|oregano|marjoram|dill|basil|parsley|chives?|mint|tarragon|lovage|savory)\b/i;

/** Names by which a baker calls them, English ones; judgement. What is in oil is none of them. */
const NAMED: readonly (readonly [RegExp, Filling['keeps'], FillingKind])[] = [
  [HERB, 'perishable', 'freshHerbs'],
  [HERB, 'shelf', 'driedHerbs'],
  [/\b(walnuts?|hazelnuts?|almonds?|pecans?|cashews?|pistachios?)\b/i, 'shelf', 'nuts'],
  [/\bsesame\b/i, 'shelf', 'sesame'],
  [/\b(pumpkin|sunflower) seeds?\b/i, 'shelf', 'seeds'],
  [
    /\b(raisins?|sultanas?|currants|prunes|dried (cherries|cranberries|figs|dates|apricots|plums|apples?|pears?))\b/i,
    'shelf',
    'driedFruit',
  ],
  [/\bolives?\b/i, 'shelf', 'dryOlives'],
  [/\bolives?\b/i, 'perishable', 'brinedOlives'],
];
const IN_OIL = /\b(oil|pesto)\b/i;

/**
 * What kind a filling is of, by its name and how it keeps; else by its facts, where one kind alone has
 * them. Null: nobody can tell, or water goes in with it.
 */
export function kindOf({ name, keeps, brings, soak }: Omit<Filling, 'pct'>): FillingKind | null {
  if (soak || IN_OIL.test(name)) return null;
  const named = NAMED.find(([words, how]) => how === keeps && words.test(name));
  if (named) return named[2];
  const alike = FILLING_KINDS.filter((kind) => {
    const facts = FILLING_FACTS[kind];
    return (
      facts.keeps === keeps &&
      facts.brings.salt === brings?.salt &&
      facts.brings.water === brings.water
    );
  });
  return alike.length === 1 ? alike[0]! : null;
}
