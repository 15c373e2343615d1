import type { NoTake, Played, SpokenNotes, VoiceNote } from '../../machines/ports.ts';

/** A microphone and a player that end as the test says. */
export interface FakeSpokenNotes extends SpokenNotes {
  /** What is recorded is over: with these bytes, or why there is none. */
  readonly end: (taken: VoiceNote | NoTake) => void;
  readonly hear: (heard: boolean) => void;
  readonly ended: (how: Played) => void;
  /** What goes on just now. */
  readonly now: () => 'records' | 'plays' | null;
  readonly played: VoiceNote[];
}

export const A_VOICE: VoiceNote = {
  type: 'audio/webm;codecs=opus',
  bytes: Uint8Array.of(7, 7),
};

export function fakeSpokenNotes(): FakeSpokenNotes {
  let end: (taken: VoiceNote | NoTake) => void = () => undefined;
  let ended: (how: Played) => void = () => undefined;
  let hear: (heard: boolean) => void = () => undefined;
  let now: 'records' | 'plays' | null = null;
  const played: VoiceNote[] = [];
  return {
    played,
    now: () => now,
    end: (taken) => end(taken),
    hear: (heard) => hear(heard),
    ended: (how) => ended(how),
    record(onHeard) {
      [now, hear] = ['records', onHeard];
      const over = new Promise<VoiceNote | NoTake>((resolve) => {
        end = (taken) => {
          now = null;
          resolve(taken);
        };
      });
      return { over, stop: () => end(A_VOICE), cancel: () => end('stopped') };
    },
    play(voice) {
      now = 'plays';
      played.push(voice);
      const over = new Promise<Played>((resolve) => {
        ended = (how) => {
          now = null;
          resolve(how);
        };
      });
      return { over, stop: () => ended('stopped') };
    },
  };
}
