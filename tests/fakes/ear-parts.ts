import type { EarParts, EarThread } from '../../src/adapters/ear/make-ear.ts';
import type { FromThread, ToThread } from '../../src/adapters/ear/messages.ts';

export interface FakeThread extends EarThread {
  readonly asked: ToThread[];
  /** The last question that opened a port. */
  readonly turn: number;
  ended: boolean;
  tell(told: FromThread): void;
}

export interface FakeTrack {
  stopped: number;
  onended: (() => void) | null;
  stop(): void;
}

/** What an ear is made of, as the test has it; all that was made is kept in order. */
export interface FakeEarParts {
  parts: EarParts;
  readonly threads: FakeThread[];
  readonly tracks: FakeTrack[];
  readonly wires: { closed: number; lost: () => void }[];
  readonly sessions: boolean[];
  readonly waits: { readonly ms: number; readonly then: () => void }[];
  readonly failed: string[];
  /** Whether an engine can be had. */
  here: boolean;
  /** The microphone comes after this, or not. */
  leave: Promise<void>;
}

export const opensPort = ({ kind }: ToThread): boolean => kind === 'listen' || kind === 'take';

export function makeEarParts(): FakeEarParts {
  const thread = (): FakeThread => {
    const made: FakeThread = {
      asked: [],
      ended: false,
      onmessage: null,
      onerror: null,
      get turn() {
        return made.asked.filter(opensPort).at(-1)!.turn;
      },
      postMessage(asked) {
        made.asked.push(asked);
        if (asked.kind === 'fetch')
          made.tell({ turn: asked.turn, kind: 'fetched', here: its.here });
      },
      terminate: () => void (made.ended = true),
      tell: (data) => made.onmessage?.({ data } as MessageEvent<FromThread>),
    };
    its.threads.push(made);
    return made;
  };
  const getUserMedia = async (): Promise<MediaStream> => {
    await its.leave;
    const track: FakeTrack = { stopped: 0, onended: null, stop: () => void (track.stopped += 1) };
    its.tracks.push(track);
    return { getTracks: () => [track] } as never;
  };
  const its: FakeEarParts = {
    parts: {
      media: { getUserMedia },
      session: (open) => void its.sessions.push(open),
      wire() {
        const wire = { closed: 0, lost: () => {} };
        its.wires.push(wire);
        return {
          async connect(_, lost) {
            wire.lost = lost;
            return { port: {} as MessagePort, rate: 48_000 };
          },
          close: () => void (wire.closed += 1),
        };
      },
      thread,
      later(ms, then) {
        const wait = { ms, then };
        its.waits.push(wait);
        return () => {
          if (its.waits.includes(wait)) its.waits.splice(its.waits.indexOf(wait), 1);
        };
      },
      failed: ({ message }) => its.failed.push(message),
      tone: () => Promise.resolve(),
    },
    ...{ threads: [], tracks: [], wires: [], sessions: [], waits: [], failed: [] },
    here: true,
    leave: Promise.resolve(),
  };
  return its;
}
