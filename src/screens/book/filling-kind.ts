import { unparted } from '../../core/circle/label/packet-search.ts';
import {
  FILLING_FACTS,
  FILLING_KINDS,
  type FillingKind,
} from '../../core/formula/filling-facts.ts';
import type { Filling } from '../../core/formula/formula.ts';

/** A word by itself, in whichever tongue. */
export const word = (...words: readonly string[]): RegExp =>
  new RegExp(`(?<!\\p{L})(?:${words.join('|')})(?!\\p{L})`, 'iu');

const HERB = word(
  'herbs?|thyme|rosemary|sage|oregano|marjoram|dill|basil|parsley|chives?|mint|tarragon|lovage|savory',
  'herbes?|thym|romarin|sauge|origan|marjolaine|aneth|basilic|persil|ciboulette|menthe|estragon',
  'livèche|sarriette|kräuter|thymian|rosmarin|salbei|majoran|basilikum|petersilie|schnittlauch',
  'minze|liebstöckel|bohnenkraut',
);

/** Names by which a baker calls them, in each of the tongues; judgement. What is in oil is none of them. */
const NAMED: readonly (readonly [RegExp, Filling['keeps'], FillingKind])[] = [
  [HERB, 'perishable', 'freshHerbs'],
  [HERB, 'shelf', 'driedHerbs'],
  [
    word(
      'walnuts?|hazelnuts?|almonds?|pecans?|cashews?|pistachios?',
      'noix(?! (?:de coco|de muscade))|noisettes?|amandes?|pistaches?',
      '(?:wal|hasel|pekan|cashew)n[uü]sse?|mandeln?|pistazien?',
    ),
    'shelf',
    'nuts',
  ],
  [word('sesame|sésame|sesam(?:saat)?'), 'shelf', 'sesame'],
  [
    word(
      '(?:pumpkin|sunflower) seeds?',
      'graines de (?:courge|tournesol)',
      '(?:kürbis|sonnenblumen)kerne?',
    ),
    'shelf',
    'seeds',
  ],
  [
    word(
      'raisins?|sultanas?|currants|prunes',
      'dried (?:cherries|cranberries|figs|dates|apricots|plums|apples?|pears?)',
      'pruneaux?|(?:cerises|figues|dattes|abricots|pommes|poires|canneberges) (?:secs|sèches|séchée?s)',
      'rosinen|sultaninen|backpflaumen|(?:trocken|dörr)(?:kirschen|aprikosen|pflaumen|feigen)',
      'getrocknete (?:kirschen|cranberrys|feigen|datteln|aprikosen|pflaumen|äpfel|birnen)',
    ),
    'shelf',
    'driedFruit',
  ],
  [word('olives?|oliven?'), 'shelf', 'dryOlives'],
  [word('olives?|oliven?'), 'perishable', 'brinedOlives'],
];
const IN_OIL = word('oil|pesto|huile|\\p{L}*öl');

/**
 * What kind a filling is of, by its name and how it keeps; else by its facts, where one kind alone has
 * them. Null: nobody can tell, or water goes in with it.
 */
export function kindOf({
  name: written,
  keeps,
  brings,
  soak,
}: Omit<Filling, 'pct'>): FillingKind | null {
  const name = unparted(written);
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
