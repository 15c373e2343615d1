import { ONE_LOOK } from '../../core/readiness/one-look.ts';
import { answersOf } from '../../core/records/seen.ts';
import { MINUTE } from '../../core/units.ts';
import type { QuestionList } from '../../core/speech/words/questions.ts';
import type { Focus } from '../focus.ts';

type Answers = Readonly<Record<string, string>>;

/**
 * What a look's list need not ask any more: its answers, and what was read of the dough minutes before it
 * or since. The newer sign stands.
 */
export function toldAlready({ machine, bake }: Focus, list: QuestionList): Answers {
  const { answers, entered } = machine.context;
  if (list !== 'bulkSigns') return answers;
  const began = entered['bulk.look'] ?? 0;
  const readings = Object.values(bake.context.readings).toSorted((a, b) => a.at - b.at);
  const read = (is: (at: number) => boolean): Answers =>
    answersOf(readings.filter(({ at }) => is(at)).map(({ reading }) => reading));
  return {
    ...read((at) => at <= began && at > began - ONE_LOOK * MINUTE),
    ...answers,
    ...read((at) => at > began),
  };
}
