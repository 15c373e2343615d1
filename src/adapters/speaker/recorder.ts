import type { NoTake, Stop, Take } from '../../../machines/ports.ts';
import type { Sound } from '../../core/speech/recording.ts';
import { whyNone } from '../microphone.ts';

export interface RecorderParts {
  readonly media: Pick<MediaDevices, 'getUserMedia'> | undefined;
  /** So many bits a second, or as many as the browser likes. */
  readonly open: (stream: MediaStream, bits?: number) => MediaRecorder;
  readonly decode: (file: Blob) => Promise<Sound>;
  /** Tells again and again whether anything is heard just now. */
  readonly level: (stream: MediaStream, then: (heard: boolean) => void) => Stop;
  /** The microphone is wanted, or no more: some tablets have to be told. */
  readonly session: (open: boolean) => void;
  /** Real milliseconds. */
  readonly later: (ms: number, then: () => void) => Stop;
}

/** What becomes of what the microphone heard. */
export interface Wanted<T> {
  /** It is over by itself after so long, ms. */
  readonly most: number;
  readonly bits?: number;
  /** Rejects where it cannot be read. */
  readonly made: (file: Blob) => Promise<T | NoTake>;
}
/** A recorder that was stopped hands over what it has within this, ms. Judgement. */
const HANDS_OVER = 3_000;

/** Listens from now until it is stopped. The microphone is let go at once, whatever comes of it. */
export function listen<T>(
  parts: RecorderParts,
  { most, bits, made }: Wanted<T>,
  onHeard: (heard: boolean) => void,
): Take<T> {
  let isOver = false;
  let end: (ended: T | NoTake) => void = () => {};
  const over = new Promise<T | NoTake>((resolve) => (end = resolve));
  let letGo: Stop = () => {};
  let stopWaiting: Stop = () => {};
  const close = (ended: T | NoTake): void => {
    isOver = true;
    stopWaiting();
    letGo();
    end(ended);
  };
  let finish: Stop = () => close('stopped');

  const take = async (blobs: readonly Blob[]): Promise<void> => {
    close(await made(new Blob([...blobs], { type: blobs[0]?.type ?? '' })));
  };

  const begin = async (): Promise<void> => {
    if (!parts.media) return close('none');
    parts.session(true);
    letGo = () => parts.session(false);
    const stream = await parts.media.getUserMedia({ audio: true });
    const stopTracks = (): void => stream.getTracks().forEach((track) => track.stop());
    if (isOver) return stopTracks();
    const blobs: Blob[] = [];
    let stopLevel: Stop = () => {};
    letGo = () => {
      letGo = () => {};
      stopLevel();
      stopTracks();
      parts.session(false);
    };
    const recorder = parts.open(stream, bits);
    recorder.ondataavailable = ({ data }) => void (data.size > 0 && blobs.push(data));
    recorder.onerror = () => close('failed');
    recorder.onstop = () => {
      if (isOver) return;
      take(blobs).catch(() => close('failed'));
    };
    finish = () => {
      finish = () => {};
      stopWaiting();
      recorder.stop();
      letGo();
      stopWaiting = parts.later(HANDS_OVER, () => close('failed'));
    };
    recorder.start();
    stopLevel = parts.level(stream, onHeard);
    stopWaiting = parts.later(most, () => finish());
  };
  begin().catch((cause: unknown) => close(whyNone(cause)));
  return {
    over,
    stop: () => void (isOver || finish()),
    cancel: () => void (isOver || close('stopped')),
  };
}
