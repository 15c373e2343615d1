import { answer } from './answer.ts';
import type { Answer, Question } from './messages.ts';

/** The planner's own thread: one question after the other, until the page ends it. */
addEventListener('message', ({ data }: MessageEvent<Question>) => {
  answer(
    data,
    (told: Answer) => postMessage(told),
    () => performance.now(),
  );
});
