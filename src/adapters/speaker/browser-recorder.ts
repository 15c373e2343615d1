import type { Stop } from '../../../machines/ports.ts';
import { tellSession } from '../microphone.ts';
import type { RecorderParts } from './recorder.ts';

/** The level is looked at so often, ms. */
const LOOK_EVERY = 100;
/** Louder than a quiet room, of full. Judgement. */
const HEARD = 0.02;

/** What is recorded is decoded to this, samples a second. */
const RATE = 48_000;

/** A moment of what is heard, and whether it is more than the room. */
function levelOf(stream: MediaStream, then: (heard: boolean) => void): Stop {
  const context = new AudioContext();
  const look = context.createAnalyser();
  context.createMediaStreamSource(stream).connect(look);
  const moment = new Float32Array(look.fftSize);
  const beat = setInterval(() => {
    look.getFloatTimeDomainData(moment);
    then(Math.sqrt(moment.reduce((sum, s) => sum + s * s, 0) / moment.length) > HEARD);
  }, LOOK_EVERY);
  return () => {
    clearInterval(beat);
    void context.close();
  };
}

/** This browser's microphone. */
export const browserRecorder = (later: RecorderParts['later']): RecorderParts => ({
  media: navigator.mediaDevices,
  open: (stream, bits) =>
    new MediaRecorder(stream, bits === undefined ? {} : { audioBitsPerSecond: bits }),
  async decode(file) {
    const sound = await new OfflineAudioContext(1, 1, RATE).decodeAudioData(
      await file.arrayBuffer(),
    );
    return { rate: sound.sampleRate, samples: sound.getChannelData(0) };
  },
  level: levelOf,
  session: tellSession,
  later,
});
