import { layAsk, layInput } from '../../core/day/laid/lay-ask.ts';
import type { Answer, Question } from './messages.ts';

/**
 * Answers one question, plan by plan.
 *
 * @param now milliseconds of a clock that runs while it is planned; left out, the search counts its steps
 */
export function answer(
  question: Question,
  tell: (answer: Answer) => void,
  now?: () => number,
): void {
  const options = now ? { now } : {};
  try {
    const plans =
      question.kind === 'ask'
        ? layAsk(question.ask, question.world, options)
        : layInput(question.input, { ...options, why: question.why ?? true });
    for (const plan of plans) tell({ kind: 'plan', plan });
  } catch (error) {
    tell({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
  }
}
