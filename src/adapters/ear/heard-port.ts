import type { Stop } from '../../../machines/ports.ts';
import { HEARD_AT, makeListener, type Cut } from '../../core/ear/listener.ts';
import { makeResampler } from '../../core/ear/resample.ts';
import type { Sound } from './line.ts';

/**
 * A microphone that is just opened hands over nothing at all, and then what wakes it: beside the one any room
 * would seem loud, and the other is none of the room. So long, s. Judgement.
 */
const WAKES = 0.1;

export interface HeardPort {
  /** As if nobody spoke for so long, s: what was said till now ends. */
  silence(seconds: number): void;
  readonly close: Stop;
}

/** Hears what comes out of a port, at whatever rate; `moment` is told how many seconds that was so far. */
export function hearPort(
  { port, rate }: Sound,
  tell: Parameters<typeof makeListener>[0] & {
    moment(seconds: number): void;
    cut(cut: Cut): void;
  },
): HeardPort {
  const listener = makeListener(tell);
  const resample = makeResampler(rate);
  let heard = 0;
  let asleep = Math.ceil(WAKES * rate);
  let isAwake = false;
  port.onmessage = ({ data }: MessageEvent<Float32Array>) => {
    heard += data.length;
    tell.moment(heard / rate);
    let from = 0;
    if (!isAwake) from = data.findIndex((sample) => sample !== 0);
    if (from < 0) return;
    isAwake = true;
    const wakes = Math.min(asleep, data.length - from);
    asleep -= wakes;
    listener.push(resample(data.subarray(from + wakes)));
  };
  return {
    silence: (seconds) => listener.push(new Float32Array(seconds * HEARD_AT)),
    close() {
      port.onmessage = null;
      port.close();
    },
  };
}
