/** How long a moment is, s: what the gate is told of, one after the other. */
export const MOMENT = 0.01;

/** Over the room's quietest by so much somebody begins, and goes on, to speak, dB. Judgement, tried on made voices. */
const BEGINS_DB = 7;
const GOES_ON_DB = 4;
/** Shorter is a knock, moments. */
const LEAST = 10;
/** So long a pause ends what is said: inside a phrase they are shorter, moments. */
export const PAUSE = 35;
/** So long a pause may be the end of it, moments: between words most are shorter. */
export const SHORT_PAUSE = 12;
/** Longer is a talk, not a phrase, moments. */
export const MOST = 260;
/** Quieter than this no room is, dB of full. */
const NOBODY_DB = -70;
/** The room is as quiet as its quietest moment of the last so many blocks, of so many moments each. */
const BLOCK = 40;
const BLOCKS = 5;
/** So many moments are listened to before anything is taken for speech. */
const SETTLES = 20;
/** A moment counts with those before it, so that one drop of water is no word; for the room with more of them. */
const SMOOTH = 0.4;
const SLOW = 0.1;
/** Quieter than this no moment is taken for, dB of full: a muted microphone hands on nothing at all. */
const SILENCE_DB = -120;

/** What stands between the moments: plain data. */
export interface Gate {
  /** How many moments were heard. */
  readonly at: number;
  readonly level: number;
  /** The same among more moments. */
  readonly slow: number;
  /** The quietest of each block, the one that runs last, dB of full. */
  readonly quietest: readonly number[];
  /** How loud the room is without who speaks, dB of full. */
  readonly room: number;
  /** Since when somebody speaks, and the last moment that was over the room. */
  readonly since: number | null;
  readonly last: number;
  /** Moments of it that were well over the room. */
  readonly loud: number;
  /** It is no knock any more. */
  readonly speaks: boolean;
  /** It was told that it is a talk. */
  readonly told: boolean;
}

/** Somebody said something between two moments, while the room was so loud. `long`: it is a talk. */
export interface Said {
  readonly from: number;
  readonly to: number;
  readonly room: number;
  readonly long: boolean;
}

const NOBODY = { since: null, last: 0, loud: 0, speaks: false, told: false } as const;
export const newGate: Gate = {
  at: 0,
  level: -90,
  slow: -90,
  quietest: [],
  room: NOBODY_DB,
  ...NOBODY,
};

const follow = ({ at, quietest }: Gate, level: number): readonly number[] => {
  if (at % BLOCK === 0) return [...quietest.slice(1 - BLOCKS), level];
  return [...quietest.slice(0, -1), Math.min(quietest.at(-1) ?? level, level)];
};

/** One moment more, so loud, dB of full: the gate after it, and what was said where that is known now. */
export function hearMoment(
  gate: Gate,
  loud: number,
): { readonly gate: Gate; readonly said: Said | null } {
  const db = Math.max(SILENCE_DB, loud);
  const level = gate.at === 0 ? db : gate.level + SMOOTH * (db - gate.level);
  const slow = gate.at === 0 ? db : gate.slow + SLOW * (db - gate.slow);
  const quietest = follow(gate, slow);
  const at = gate.at + 1;
  const room = Math.max(NOBODY_DB, Math.min(...quietest));
  const over = level - room;
  const heard = { at, level, slow, quietest, room };
  const nobody: Gate = { ...heard, ...NOBODY };
  if (gate.since === null) {
    if (at < SETTLES || over < BEGINS_DB) return { gate: nobody, said: null };
    return { gate: { ...nobody, since: at, last: at, loud: 1 }, said: null };
  }
  const last = over > GOES_ON_DB ? at : gate.last;
  const spoken = gate.loud + (over > BEGINS_DB ? 1 : 0);
  const long = last - gate.since > MOST;
  const goesOn = at - last < PAUSE;
  const isSpeech = spoken >= LEAST && !gate.told && (long || !goesOn);
  return {
    gate: goesOn
      ? {
          ...heard,
          since: gate.since,
          last,
          loud: spoken,
          speaks: spoken >= LEAST,
          told: gate.told || long,
        }
      : nobody,
    said: isSpeech ? { from: gate.since, to: last, room, long } : null,
  };
}

/** Just now who speaks may have ended: true at one moment of each pause. */
export const isPausing = (gate: Gate): gate is Gate & { readonly since: number } =>
  gate.since !== null && gate.speaks && !gate.told && gate.at - gate.last === SHORT_PAUSE;
