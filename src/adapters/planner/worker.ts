import { tellEach } from './tell-each.ts';
import type { Answer, Question } from './messages.ts';

/** The planner's own thread. It answers one question and is ended by the page. */
addEventListener('message', ({ data }: MessageEvent<Question>) => {
  tellEach(
    data.input,
    (answer: Answer) => postMessage(answer),
    () => performance.now(),
  );
});
