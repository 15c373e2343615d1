import { layAsk } from '../../core/day/laid/lay-ask.ts';
import { layLive } from '../../core/day/laid/lay-live.ts';
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
    if (question.kind === 'live')
      return tell({ kind: 'live', answer: layLive(question.question, options) });
    for (const plan of layAsk(question.ask, question.world, options)) tell({ kind: 'plan', plan });
  } catch (error) {
    tell({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
  }
}
