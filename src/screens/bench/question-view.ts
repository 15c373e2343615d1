import type { Kitchen } from '../../../machines/kitchen/kitchen.ts';
import type { Deed, OvenAct } from '../../core/records/fact.ts';
import { isChecklist } from '../../core/records/checklists.ts';
import { beforeOvenItems, closes } from '../../core/records/lists.ts';
import { isWarm } from '../../core/formula/is-warm.ts';
import type { ListName } from '../../core/records/stage.ts';
import { isTicked } from '../../core/records/ticked.ts';
import {
  bulkVerdict,
  levainVerdict,
  loafVerdict,
  mustDiscard,
  pokeVerdict,
  warmVerdict,
  type Verdict,
} from '../../core/readiness/verdict.ts';
import { heedLines } from '../../core/speech/words/heed.ts';
import { questions, type QuestionList } from '../../core/speech/words/questions.ts';
import { signsLines } from '../../core/speech/words/signs.ts';
import {
  discardLevain,
  verdicts,
  type MoreAct,
  type VerdictOn,
  verdictsLines,
} from '../../core/speech/words/verdicts.ts';
import type { Option, Question } from '../../core/speech/words.ts';
import { VERDICT_ACTS } from './acts.ts';
import { choose } from './choose.ts';
import { coreIsRead, crustView, type Here } from './crust-view.ts';
import { fill } from '../../core/speech/fill.ts';
import { between } from '../../core/speech/measures.ts';
import { doorView } from './door-view.ts';
import { heedOf } from './list-ended.ts';
import { isOut } from './stood-out.ts';
import { toldAlready } from './told-already.ts';
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
};

/**
 * A loaf that stands out after the fridge is not told by its dent alone; and a dough that goes to the
 * fridge is told so once it is ready.
 */
const verdictOf = ({ bake }: Focus, list: QuestionList) => {
  if (list === 'bulkSigns' && !isWarm(bake.context.recipe.process))
    return {
      ...VERDICT.bulkSigns!,
      because: { ...verdicts.bulk.because, ready: verdictsLines.readyForCold },
    };
  if (list === 'warmSigns' && isOut(bake.context))
    return { on: 'warm' as const, judge: pokeVerdict, because: verdicts.poke.because };
  return VERDICT[list];
};

/** What loaves may be chosen for besides the three answers: cold ones stand out, those over bake flat. */
const MORE: Readonly<Partial<Record<QuestionList, readonly MoreAct[]>>> = {
  loafSigns: ['standOut', 'flat'],
  warmSigns: ['flat'],
};

/** Not grown, and it springs back at once. */
const isTight = ({ grown, dent }: Answers): boolean => grown !== 'grown' && dent === 'springs';

const AT_SEA: Here = { height: 0, units: { heat: 'C', weight: 'g' } };

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
    slab: { label: slab.label, then: fill(between.of, { done: done + 1, of }), deed: slab.deed },
    tiles: question.tiles.map((tile) => answer(who, question.item, tile)),
    progress: { done, of },
  };
};

const isAskedHere = ({ machine, bake }: Focus, list: QuestionList, item: string): boolean => {
  if (list === 'warmSigns') return item === 'dent' || isOut(bake.context);
  return (
    list !== 'beforeOven' ||
    !('waiting' in machine.context) ||
    beforeOvenItems(machine.context.vessel).includes(item)
  );
};

/** A question as it is asked here: at the oven a warm loaf's dent is no hint, and a tin is tipped out. */
const askedHere = (focus: Focus, list: QuestionList, question: Question): Question => {
  const { process } = focus.bake.context.recipe;
  if (list === 'pokeSigns' && question.item === 'dent' && isWarm(process)) {
    return questions.warmSigns[0] ?? question;
  }
  return list === 'crustSigns' && question.item === 'base' && process.vessel === 'tin'
    ? { ...question, detail: signsLines.tinBase }
    : question;
};

/** What both looks at the oven are told by, is known beside the answers: door-view.ts, crust-view.ts. */
const READY_AT_OVEN: Readonly<Partial<Record<QuestionList, OvenAct>>> = {
  pokeSigns: 'pokeReady',
  crustSigns: 'crustReady',
};

/** Hands beat the model: a look may be called ready before its signs are said. */
const readyOf = (focus: Focus, list: QuestionList): Deed | undefined => {
  const verdict = verdictOf(focus, list);
  const act = verdict ? VERDICT_ACTS[verdict.on].ready : READY_AT_OVEN[list];
  return act && { kind: 'press', who: focus.who, act };
};

/**
 * A checklist's present question, or its verdict once all signs are in. Null for what is ticked. `over`:
 * the loaves were called over at their look. `kitchen`: what a look at the oven is told by, `here` where it
 * stands and how it is told.
 */
export function questionView(
  focus: Focus,
  list: ListName,
  over: boolean,
  kitchen: Kitchen,
  here: Here = AT_SEA,
): Asked | null {
  if (isTicked(list)) return null;
  const answers = toldAlready(focus, list);
  if (list === 'levainSigns' && mustDiscard(answers)) {
    const { headline, detail, spoken, slab, then } = discardLevain;
    const ended = { kind: 'press', who: focus.who, act: 'ended' } as const;
    return { headline, detail, spoken, slab: { label: slab.label, then, deed: ended }, tiles: [] };
  }
  // A stone has no lid: what nobody needs to answer is not asked.
  const all = questions[list]
    .filter(({ item }) => isAskedHere(focus, list, item))
    .map((question) => askedHere(focus, list, question));
  const given = (item: string): boolean =>
    closes(list, item, answers[item]) || (item === 'core' && coreIsRead(kitchen, focus));
  // Loaves that were called over are not asked again whether they are ready.
  const open = over && list === 'pokeSigns' ? undefined : all.find(({ item }) => !given(item));
  if (open === undefined) {
    if (list === 'pokeSigns') return doorView(kitchen, focus, over);
    if (list === 'crustSigns') return crustView(kitchen, focus, here);
    const verdict = verdictOf(focus, list);
    if (!verdict) return null;
    const { on, judge, because = verdicts[on].because } = verdict;
    const { say } = judge(answers);
    const chosen = { on, say, because, more: MORE[list] ?? [], tight: isTight(answers) };
    return {
      ...choose(focus.who, chosen),
      closing: isChecklist(list) ? heedLines.listComplete : null,
    };
  }
  const closed = all.filter(({ item }) => given(item));
  const before = closed.at(-1);
  const last = before ? heedOf(list, before.item, answers[before.item]) : null;
  const done = closed.length;
  const ready = readyOf(focus, list);
  return {
    ...ask(focus, list, open, { done, of: all.length, last }, answers[open.item]),
    ...(ready ? { ready } : {}),
    // A number is worth more than a tile, and a filled loaf wants more than one.
    ...(open.item === 'core' ? { third: 'weigh' } : {}),
  };
}
