import type { NoTake, Stop, Take } from '../../../machines/ports.ts';
import { makeClip, waveOf, type Sound } from '../../core/speech/recording.ts';

export interface RecorderParts {
  readonly media: Pick<MediaDevices, 'getUserMedia'> | undefined;
  readonly open: (stream: MediaStream) => MediaRecorder;
  readonly decode: (file: Blob) => Promise<Sound>;
  /** Tells again and again whether anything is heard just now. */
  readonly level: (stream: MediaStream, then: (heard: boolean) => void) => Stop;
  /** The microphone is wanted, or no more: some tablets have to be told. */
  readonly session: (open: boolean) => void;
  /** Real milliseconds. */
  readonly later: (ms: number, then: () => void) => Stop;
}

/** Nothing that is said takes longer, ms. */
const MOST = 15_000;
/** A recorder that was stopped hands over what it has within this, ms. Judgement. */
const HANDS_OVER = 3_000;

const whyOf = (cause: unknown): NoTake => {
  const { name } = cause as Error;
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'denied';
  return name === 'NotFoundError' ? 'none' : 'failed';
};

/** Listens from now until it is stopped. The microphone is let go at once, whatever comes of it. */
export function recordTake(
  parts: RecorderParts,
  onHeard: (heard: boolean) => void,
): Take<ArrayBuffer> {
  let isOver = false;
  let end: (ended: ArrayBuffer | NoTake) => void = () => {};
  const over = new Promise<ArrayBuffer | NoTake>((resolve) => (end = resolve));
  let letGo: Stop = () => {};
  let stopWaiting: Stop = () => {};
  const close = (ended: ArrayBuffer | NoTake): void => {
    isOver = true;
    stopWaiting();
    letGo();
    end(ended);
  };
  let finish: Stop = () => close('stopped');

  const take = async (blobs: readonly Blob[]): Promise<void> => {
    const clip = makeClip(await parts.decode(new Blob([...blobs], { type: blobs[0]?.type ?? '' })));
    close(clip === null ? 'silent' : waveOf(clip));
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
    const recorder = parts.open(stream);
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
    stopWaiting = parts.later(MOST, () => finish());
  };
  begin().catch((cause: unknown) => close(whyOf(cause)));
  return {
    over,
    stop: () => void (isOver || finish()),
    cancel: () => void (isOver || close('stopped')),
  };
}
