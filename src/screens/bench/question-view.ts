import type { BakeAct, OvenAct } from '../../core/records/fact.ts';
import { beforeOvenItems, closes } from '../../core/records/lists.ts';
import { isWarm } from '../../core/formula/is-warm.ts';
import type { ListName } from '../../core/records/stage.ts';
import {
  bulkVerdict,
  crustVerdict,
  levainVerdict,
  loafVerdict,
  mustDiscard,
  pokeVerdict,
  warmVerdict,
  type Verdict,
} from '../../core/readiness/verdict.ts';
import { heed } from '../../core/speech/en/heed.ts';
import { questions, type QuestionList } from '../../core/speech/en/questions.ts';
import { tinBase } from '../../core/speech/en/signs.ts';
import {
  discardLevain,
  readyForCold,
  verdicts,
  type VerdictOn,
} from '../../core/speech/en/verdicts.ts';
import type { Option, Question } from '../../core/speech/words.ts';
import { VERDICT_ACTS } from './acts.ts';
import type { Focus } from '../focus.ts';
import type { Asked, Press } from './view.ts';

type Answers = Readonly<Record<string, string>>;

/** Which look a list of signs belongs to; the other lists end with their last answer. */
const VERDICT: Readonly<
  Partial<
    Record<
      QuestionList,
      {
        on: VerdictOn;
        judge: (answers: Answers) => Verdict;
        because?: (typeof verdicts)[VerdictOn]['because'];
      }
    >
  >
> = {
  levainSigns: { on: 'levain', judge: levainVerdict },
  bulkSigns: { on: 'bulk', judge: bulkVerdict },
  loafSigns: { on: 'loaf', judge: loafVerdict },
  warmSigns: { on: 'warm', judge: warmVerdict },
  pokeSigns: { on: 'poke', judge: pokeVerdict },
  crustSigns: { on: 'crust', judge: crustVerdict },
};

/**
 * At the oven too a warm loaf is told by its dent alone, a cold one is not; and a dough that goes to
 * the fridge is told so once it is ready.
 */
const verdictOf = ({ bake }: Focus, list: QuestionList) => {
  const warm = isWarm(bake.context.recipe.process);
  if (list === 'pokeSigns' && warm)
    return { on: 'poke' as const, judge: warmVerdict, because: verdicts.warm.because };
  if (list === 'bulkSigns' && !warm)
    return { ...VERDICT.bulkSigns!, because: { ...verdicts.bulk.because, ready: readyForCold } };
  return VERDICT[list];
};

/** What to mend about an answer, or null. */
const heedOf = (list: QuestionList, item: string, value: string | undefined): string | null => {
  const items = (heed as Readonly<Record<string, Readonly<Record<string, Answers>>>>)[list];
  return (value !== undefined && items?.[item]?.[value]) || null;
};

const answer = (who: string, item: string, option: Option): Press => ({
  label: option.label,
  deed: { kind: 'press', who, act: 'answer', item, value: option.value },
});

const ask = (
  { who }: Focus,
  list: QuestionList,
  question: Question,
  { done, of, last }: { done: number; of: number; last: string | null },
  given: string | undefined,
): Asked => {
  const slab = answer(who, question.item, question.slab);
  const detail = heedOf(list, question.item, given) ?? question.detail ?? '';
  return {
    headline: question.ask,
    detail,
    // What the last answer asks to heed is said, and captioned, before the next question.
    spoken: [last, question.ask].filter(Boolean).join(' '),
    slab: { label: slab.label, then: `${done + 1} of ${of}`, deed: slab.deed },
    tiles: question.tiles.map((tile) => answer(who, question.item, tile)),
    progress: { done, of },
  };
};

const actPress = (who: string, act: BakeAct | OvenAct, label: string): Press => ({
  label,
  deed: { kind: 'press', who, act },
});

/** Hands beat the model: a look may be called ready before its signs are said. */
const readyPress = (who: string, on: VerdictOn) =>
  ({ kind: 'press', who, act: VERDICT_ACTS[on].ready }) as const;

/** All signs are in: the likeliest act is the slab, the other two are tiles. Hands beat the model. */
const choose = (
  { who }: Focus,
  on: VerdictOn,
  { say }: Verdict,
  because: (typeof verdicts)[VerdictOn]['because'],
): Asked => {
  const words = verdicts[on];
  const first = say === 'unsure' ? 'notYet' : say;
  const others = (['ready', 'notYet', 'over'] as const).filter((act) => act !== first);
  const slab = words.acts[first];
  return {
    headline: words.headline,
    detail: because[say],
    spoken: because[say],
    slab: {
      label: slab.label,
      then: slab.then,
      deed: { kind: 'press', who, act: VERDICT_ACTS[on][first] },
    },
    tiles: others.map((act) => actPress(who, VERDICT_ACTS[on][act], words.acts[act].label)),
  };
};

const isAskedHere = ({ machine }: Focus, list: QuestionList, item: string): boolean =>
  list !== 'beforeOven' ||
  !('vessel' in machine.context) ||
  beforeOvenItems(machine.context.vessel).includes(item);

/** A question as it is asked here: at the oven a warm loaf's dent is no hint, and a tin is tipped out. */
const askedHere = (focus: Focus, list: QuestionList, question: Question): Question => {
  const { process } = focus.bake.context.recipe;
  if (list === 'pokeSigns' && question.item === 'dent' && isWarm(process)) {
    return questions.warmSigns[0] ?? question;
  }
  return list === 'crustSigns' && question.item === 'base' && process.vessel === 'tin'
    ? { ...question, detail: tinBase }
    : question;
};

/** A checklist's present question, or its verdict once all signs are in. Null for a weigh card. */
export function questionView(focus: Focus, list: ListName): Asked | null {
  if (list === 'feed' || list === 'first' || list === 'second') return null;
  const { answers } = focus.machine.context;
  if (list === 'levainSigns' && mustDiscard(answers)) {
    const { headline, detail, spoken, slab, then } = discardLevain;
    const ended = { kind: 'press', who: focus.who, act: 'ended' } as const;
    return { headline, detail, spoken, slab: { label: slab.label, then, deed: ended }, tiles: [] };
  }
  // A stone has no lid: what nobody needs to answer is not asked.
  const all = questions[list]
    .filter(({ item }) => isAskedHere(focus, list, item))
    .map((question) => askedHere(focus, list, question));
  const open = all.find(({ item }) => !closes(list, item, answers[item]));
  const verdict = verdictOf(focus, list);
  if (open === undefined) {
    if (!verdict) return null;
    const { on, judge, because = verdicts[on].because } = verdict;
    return choose(focus, on, judge(answers), because);
  }
  const closed = all.filter(({ item }) => closes(list, item, answers[item]));
  const before = closed.at(-1);
  const last = before ? heedOf(list, before.item, answers[before.item]) : null;
  const done = closed.length;
  return {
    ...ask(focus, list, open, { done, of: all.length, last }, answers[open.item]),
    ...(verdict ? { ready: readyPress(focus.who, verdict.on) } : {}),
  };
}
