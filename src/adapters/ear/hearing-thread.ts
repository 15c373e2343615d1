import { makeEngines } from './engines.ts';
import { makeHearing } from './hearing.ts';
import type { FromThread, ToThread } from './messages.ts';

/** The ear's own thread: what is heard comes here, and goes no further. */
const hearing = makeHearing({
  engine: makeEngines(() => import('./learned-nets.ts').then((its) => its.openNets())),
  tell: (told: FromThread) => postMessage(told),
});
addEventListener('message', ({ data }: MessageEvent<ToThread>) => hearing(data));
