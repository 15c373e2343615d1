import { HEARD_AT } from './heard-at.ts';

/** Where speech is and a kitchen's hum is not, Hz: a telephone's band (ITU-T G.712 has 300 to 3,400). */
const LOW = 300;
const HIGH = 3_500;

interface Sums {
  readonly b: readonly [number, number, number];
  readonly a: readonly [number, number];
}

/** A Butterworth filter of two poles by the bilinear transform (Audio EQ Cookbook, Bristow-Johnson). */
function sums(kind: 'low' | 'high', hertz: number): Sums {
  const w = (2 * Math.PI * hertz) / HEARD_AT;
  const cos = Math.cos(w);
  const alpha = Math.sin(w) / Math.SQRT2;
  const side = (kind === 'low' ? 1 - cos : 1 + cos) / 2 / (1 + alpha);
  return {
    b: [side, kind === 'low' ? 2 * side : -2 * side, side],
    a: [(-2 * cos) / (1 + alpha), (1 - alpha) / (1 + alpha)],
  };
}

function filter({ b, a }: Sums): (sample: number) => number {
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  return (x) => {
    const y = b[0] * x + b[1] * x1 + b[2] * x2 - a[0] * y1 - a[1] * y2;
    x2 = x1;
    x1 = x;
    y2 = y1;
    y1 = y;
    return y;
  };
}

/** What of a sound is in the band of speech, sample by sample. */
export function makeBand(): (sample: number) => number {
  const high = filter(sums('high', LOW));
  const low = filter(sums('low', HIGH));
  return (sample) => low(high(sample));
}
