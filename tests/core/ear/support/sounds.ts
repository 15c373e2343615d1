import { HEARD_AT } from '../../../../src/core/ear/heard-at.ts';
import { seeded } from '../../day/support/seeded.ts';

type Sound = Float32Array<ArrayBuffer>;

/** A room in which nobody speaks, s: a soft hiss. */
export function quiet(seconds: number, loud = 0.001, seed = 5): Sound {
  const { next } = seeded(seed);
  return Float32Array.from({ length: seconds * HEARD_AT }, () => loud * (2 * next() - 1));
}

/** A tone with two overtones, s and Hz; `syllables` a second, where it is not even. */
export const tone = (seconds: number, hertz: number, syllables = 0): Sound =>
  Float32Array.from({ length: seconds * HEARD_AT }, (_, n) => {
    const turn = (2 * Math.PI * hertz * n) / HEARD_AT;
    const wave = Math.sin(turn) + 0.5 * Math.sin(2 * turn) + 0.3 * Math.sin(3 * turn);
    const swell =
      syllables === 0 ? 1 : 0.55 - 0.45 * Math.cos((2 * Math.PI * syllables * n) / HEARD_AT);
    return 0.2 * wave * swell;
  });

export function joined(...parts: readonly Float32Array[]): Sound {
  const made = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    made.set(part, at);
    at += part.length;
  }
  return made;
}
