import type { Ear } from '../../../machines/ear-port.ts';
import type { NoTake, Stop } from '../../../machines/ports.ts';
import type { EarEngine, Saying } from '../../core/ear/person.ts';
import { openLine, type LineParts, type NoSound, type Sound, type Wire } from './line.ts';
import type { FromThread, ToThread } from './messages.ts';

/** What is asked of a thread; a Worker is one. */
export interface EarThread {
  postMessage(asked: ToThread, transfer?: Transferable[]): void;
  onmessage: ((event: MessageEvent<FromThread>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  terminate(): void;
}

export interface EarParts extends LineParts, Pick<Ear, 'tone'> {
  readonly thread: () => EarThread;
  readonly wire: () => Wire;
  /** Real milliseconds. */
  readonly later: (ms: number, then: () => void) => Stop;
  readonly failed: (error: Error) => void;
}

/** A microphone that is open is heard within this time, ms, or not at all. Judgement: a busy tablet is slow. */
const HEARD_WITHIN = 5_000;

/** One question that the thread has; `fail`: it has it no more. */
interface Asked {
  readonly hear: (told: FromThread) => void;
  readonly fail: Stop;
}

/**
 * An ear whose thread listens, cuts and decides: sound goes past the page, which is told small things
 * alone. One microphone at a time: who asks for it later stops who had it. The thread stays while it is
 * idle, its engine with it, and is ended where it fails.
 */
export function makeEar(parts: EarParts): Ear {
  let thread: EarThread | null = null;
  let turns = 0;
  const asked = new Map<number, Asked>();
  let stopLast: Stop = () => {};

  const fail = (message: string): void => {
    thread?.terminate();
    thread = null;
    parts.failed(new Error(`The ear failed: ${message}`));
    for (const one of [...asked.values()]) one.fail();
  };
  const post = (question: ToThread, transfer: Transferable[] = []): void => {
    if (!thread) {
      const made = (thread = parts.thread());
      made.onmessage = ({ data }) => {
        if (data.kind === 'failed') fail(data.message);
        else asked.get(data.turn)?.hear(data);
      };
      made.onerror = ({ message }) => fail(message);
    }
    thread.postMessage(question, transfer);
  };
  const fetch = (engine: EarEngine): Promise<boolean> =>
    new Promise((resolve) => {
      const turn = (turns += 1);
      const end = (here: boolean): void => {
        asked.delete(turn);
        resolve(here);
      };
      const hear = (told: FromThread): void => void (told.kind === 'fetched' && end(told.here));
      asked.set(turn, { hear, fail: () => end(false) });
      post({ kind: 'fetch', turn, engine });
    });

  /** Has the thread hear the microphone until it is stopped, or over and told why. */
  const hear = (
    engine: EarEngine,
    question: (sound: Sound & { readonly turn: number }) => ToThread,
    told: (told: FromThread) => unknown,
    over: (why: NoSound) => void,
  ): { readonly stop: Stop; readonly enough: () => boolean } => {
    stopLast();
    const turn = (turns += 1);
    const wire = parts.wire();
    let isOver = false;
    let stopWaiting: Stop = () => {};
    let shutLine: Stop = wire.close;
    const stop = (): void => {
      if (isOver) return;
      isOver = true;
      stopWaiting();
      shutLine();
      if (asked.delete(turn)) post({ kind: 'shut', turn });
    };
    const end = (why: NoSound): void => {
      if (isOver) return;
      stop();
      over(why);
    };
    const begin = (sound: Sound): void => {
      stopWaiting = parts.later(HEARD_WITHIN, () => end('failed'));
      asked.set(turn, {
        hear(its) {
          if (its.kind === 'told' && its.told.kind === 'open') stopWaiting();
          told(its);
        },
        fail() {
          asked.delete(turn);
          end('failed');
        },
      });
      post(question({ turn, ...sound }), [sound.port]);
    };
    // The microphone is not open while the engine is still on its way.
    void fetch(engine).then((here) => {
      if (isOver) return;
      if (here) shutLine = openLine(parts, wire, begin, end);
      else end('failed');
    });
    /** What was heard till now is enough; false: the thread heard nothing. */
    const enough = (): boolean => {
      if (!asked.has(turn)) return false;
      stopWaiting();
      shutLine();
      post({ kind: 'enough', turn });
      return true;
    };
    return { stop, enough };
  };

  return {
    fetch,
    tone: parts.tone,
    listen(ask, tell) {
      const { stop } = hear(
        ask.engine,
        (sound) => ({ kind: 'listen', ask, ...sound }),
        (its) => its.kind === 'told' && tell(its.told),
        (why) => tell({ kind: 'over', why }),
      );
      return (stopLast = stop);
    },
    take(engine, onSpeaks) {
      let end: (ended: readonly Saying[] | NoTake) => void = () => {};
      const over = new Promise<readonly Saying[] | NoTake>((resolve) => (end = resolve));
      const { enough, stop } = hear(
        engine,
        (sound) => ({ kind: 'take', engine, ...sound }),
        (its) => {
          if (its.kind === 'told' && its.told.kind === 'speaks') onSpeaks(its.told.speaks);
          if (its.kind !== 'taken') return;
          stop();
          end(its.sayings ?? 'silent');
        },
        // Unplugged in the middle of a phrase: it is said once more.
        (why) => end(why === 'gone' ? 'failed' : why),
      );
      const cancel = (): void => {
        stop();
        end('stopped');
      };
      stopLast = cancel;
      return { over, cancel, stop: () => void (enough() || cancel()) };
    },
  };
}
