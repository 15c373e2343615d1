import { makeBand } from './band.ts';
import { hearMoment, isPausing, MOMENT, MOST, newGate, PAUSE, type Said } from './gate.ts';
import { HEARD_AT } from './heard-at.ts';

export { HEARD_AT } from './heard-at.ts';

/** A saying cut out of what was heard. */
export interface Cut {
  readonly sound: Float32Array<ArrayBuffer>;
  /** So much of `sound` is before it, samples; as much is behind, where there was as much. */
  readonly lead: number;
  /** How loud the room was, dB of full. */
  readonly room: number;
  /** It was a talk, not a phrase; it may go on. */
  readonly long: boolean;
}

const STEP = Math.round(HEARD_AT * MOMENT);
/** Kept about a saying, samples: a soft beginning is under the room, and what hears it wants to see round it. */
export const MARGIN = PAUSE * STEP;
/** What is kept of the past, samples: the longest phrase, its margins and the moment that runs. */
const KEPT = 2 * MARGIN + (MOST + 2) * STEP;

export interface Listener {
  /** HEARD_AT samples a second, as many as there are just now. */
  push(block: Float32Array): void;
}

/** Cuts what is said out of what is heard. Nothing older than the longest phrase is kept. */
export function makeListener(tell: {
  speaks(now: boolean): void;
  /** About once a second: how loud it is without those who speak, dB of full. */
  room(db: number): void;
  /** Who speaks is silent for a moment, and may have ended: this much it would be. */
  pauses?(sound: Float32Array<ArrayBuffer>): void;
  cut(cut: Cut): void;
}): Listener {
  const kept = new Float32Array(KEPT);
  const band = makeBand();
  let heard = 0;
  let power = 0;
  let gate = newGate;
  let speaks = false;

  const between = (from: number, to: number): Float32Array<ArrayBuffer> => {
    const made = new Float32Array(to - from);
    for (let n = from; n < to; n += 1) made[n - from] = kept[n % KEPT]!;
    return made;
  };
  /** The first sample of what began at this moment, its margin with it. */
  const first = (from: number): number => Math.max(0, from * STEP - MARGIN, heard - KEPT);
  const cut = ({ from, to, room, long }: Said): void => {
    const sound = between(first(from), Math.min(heard, to * STEP + MARGIN));
    tell.cut({ sound, lead: Math.max(0, from * STEP - first(from)), room, long });
  };
  const moment = (): void => {
    const after = hearMoment(gate, 10 * Math.log10(power / STEP + 1e-12));
    power = 0;
    gate = after.gate;
    if (gate.speaks !== speaks) tell.speaks((speaks = gate.speaks));
    if (after.said) cut(after.said);
    if (isPausing(gate)) tell.pauses?.(between(first(gate.since), heard));
    if (gate.at % Math.round(1 / MOMENT) === 0) tell.room(gate.room);
  };

  return {
    push(block) {
      for (const sample of block) {
        // A microphone that is just opened may hand on what is no number.
        const known = Number.isFinite(sample) ? sample : 0;
        kept[heard % KEPT] = known;
        const speech = band(known);
        power += speech * speech;
        heard += 1;
        if (heard % STEP === 0) moment();
      }
    },
  };
}
