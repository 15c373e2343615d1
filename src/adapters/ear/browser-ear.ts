import type { Ear } from '../../../machines/ear-port.ts';
import type { Stop } from '../../../machines/ports.ts';
import { HEARD_AT } from '../../core/ear/heard-at.ts';
import { tellSession } from '../microphone.ts';
import handOverAt from './hand-over-worklet.ts?worker&url';
import type { Wire } from './line.ts';
import type { EarParts } from './make-ear.ts';

/**
 * Rendered in long stretches, to no output and at the rate that is heard where that can be: each spares a
 * slow tablet.
 */
const contextAt = (rate: Pick<AudioContextOptions, 'sampleRate'>): AudioContext => {
  const nowhere: object = { sinkId: { type: 'none' } };
  return new AudioContext({ latencyHint: 'playback', ...nowhere, ...rate });
};

/** This browser's audio, past the page: what the microphone hears goes from its worklet to the port. */
function openWire(): Wire {
  let context = contextAt({ sampleRate: HEARD_AT });
  let isClosed = false;
  const sourceOf = (stream: MediaStream): AudioNode => {
    try {
      return context.createMediaStreamSource(stream);
    } catch {
      // Some browsers hear a microphone at the rate of the tablet's output, and at no other.
      void context.close();
      context = contextAt({});
      return context.createMediaStreamSource(stream);
    }
  };
  return {
    async connect(stream, lost) {
      const source = sourceOf(stream);
      await Promise.all([context.resume(), context.audioWorklet.addModule(handOverAt)]);
      const { port1, port2 } = new MessageChannel();
      const handOver = new AudioWorkletNode(context, 'hand-over', {
        channelCount: 1,
        channelCountMode: 'explicit',
      });
      handOver.port.postMessage(port1, [port1]);
      // Some browsers run only what leads to the output; what comes out of it is silence.
      source.connect(handOver).connect(context.destination);
      // A telephone call, or the lock screen, takes the microphone of an iPad without ending its track.
      context.onstatechange = () => context.state !== 'running' && lost();
      return { port: port2, rate: context.sampleRate };
    },
    close() {
      if (isClosed) return;
      isClosed = true;
      context.onstatechange = null;
      void context.close();
    },
  };
}

/** This browser's microphone, and a thread that hears it. */
export const browserEar = (
  later: (ms: number, then: () => void) => Stop,
  tone: Ear['tone'],
): EarParts => ({
  media: navigator.mediaDevices,
  session: tellSession,
  wire: openWire,
  thread: () => new Worker(new URL('./hearing-thread.ts', import.meta.url), { type: 'module' }),
  failed: (error) => reportError(error),
  ...{ later, tone },
});
