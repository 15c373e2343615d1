import type { Stop } from '../../../machines/ports.ts';
import { whyNone } from '../microphone.ts';

/** Samples come out of `port`, so many a second. */
export interface Sound {
  readonly port: MessagePort;
  readonly rate: number;
}

/** What carries a microphone's sound past the page. Made inside a press: some browsers let no other one run. */
export interface Wire {
  /** `lost`: the tablet took the sound away. */
  connect(stream: MediaStream, lost: Stop): Promise<Sound>;
  readonly close: Stop;
}

export interface LineParts {
  readonly media: Pick<MediaDevices, 'getUserMedia'> | undefined;
  /** The microphone is wanted, or no more: some tablets have to be told. */
  readonly session: (open: boolean) => void;
}

/**
 * As it sounds in the kitchen. What makes telephone calls pleasant would make a room's loudness, by which
 * is judged what can be told apart, a number without a meaning; it would gate soft beginnings, and differ
 * between a saying as it was learned and as it is heard. No echo is to be taken out, for nothing sounds
 * while the ear is open; and asking for that makes some tablets play and hear as telephones do.
 */
const AS_IT_IS: MediaTrackConstraints = {
  channelCount: 1,
  echoCancellation: false,
  noiseSuppression: false,
  autoGainControl: false,
};

/** Why there is no sound, or none any more. */
export type NoSound = 'denied' | 'none' | 'gone' | 'failed';

/**
 * Opens the microphone onto the wire. Stopped, it is let go at once: also where the leave to use it only
 * comes afterwards.
 */
export function openLine(
  { media, session }: LineParts,
  wire: Wire,
  open: (sound: Sound) => void,
  over: (why: NoSound) => void,
): Stop {
  let tracks: readonly MediaStreamTrack[] = [];
  let isOver = false;
  const stop = (): void => {
    if (isOver) return;
    isOver = true;
    for (const track of tracks) {
      track.onended = null;
      track.stop();
    }
    wire.close();
    session(false);
  };
  const end = (why: NoSound): void => {
    if (isOver) return;
    stop();
    over(why);
  };
  const begin = async (from: Pick<MediaDevices, 'getUserMedia'>): Promise<void> => {
    const stream = await from.getUserMedia({ audio: AS_IT_IS });
    tracks = stream.getTracks();
    if (isOver) return tracks.forEach((track) => track.stop());
    // It was unplugged, or somebody took the leave back.
    for (const track of tracks) track.onended = () => end('gone');
    const sound = await wire.connect(stream, () => end('gone'));
    if (!isOver) open(sound);
  };
  session(true);
  if (media) begin(media).catch((cause: unknown) => end(whyNone(cause)));
  else end('none');
  return stop;
}
