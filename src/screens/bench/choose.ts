import type { Verdict } from '../../core/readiness/verdict.ts';
import type { BakeAct, OvenAct } from '../../core/records/fact.ts';
import {
  moreActs,
  verdicts,
  type MoreAct,
  type VerdictAct,
  type VerdictOn,
  verdictsLines,
} from '../../core/speech/words/verdicts.ts';
import { VERDICT_ACTS } from './acts.ts';
import type { Asked } from './view.ts';

type Choice = VerdictAct | MoreAct;

const MORE_ACTS: Readonly<Record<MoreAct, BakeAct>> = { standOut: 'standOut', flat: 'loafFlat' };

/** What a look's end is about, and what may be chosen besides the three answers. */
export interface Chosen {
  readonly on: VerdictOn;
  readonly say: Verdict['say'];
  readonly because: (typeof verdicts)[VerdictOn]['because'];
  readonly more: readonly MoreAct[];
  /** A loaf that has hardly grown and springs back: time in the room, not in the cold. */
  readonly tight: boolean;
}

/** In the order they stand on the screen; what is over is never told to wait. */
const choicesOf = ({ say, more }: Chosen): readonly Choice[] => {
  if (say === 'over') return ['over', ...more.filter((act) => act === 'flat'), 'ready'];
  return ['ready', 'notYet', ...more.filter((act) => act === 'standOut'), 'over'];
};

/** All signs are in: the likeliest act is the slab, the others are tiles. Hands beat the model. */
export function choose(who: string, chosen: Chosen): Asked {
  const { on, say, because, more, tight } = chosen;
  const words = verdicts[on];
  const out = tight && say === 'notYet' && more.includes('standOut');
  const first: Choice = out ? 'standOut' : say === 'unsure' ? 'notYet' : say;
  const wordsFor = (choice: Choice) =>
    choice === 'standOut' || choice === 'flat' ? moreActs[choice] : words.acts[choice];
  const deedFor = (choice: Choice) => {
    const act: BakeAct | OvenAct =
      choice === 'standOut' || choice === 'flat' ? MORE_ACTS[choice] : VERDICT_ACTS[on][choice];
    return { kind: 'press', who, act } as const;
  };
  const tileFor = (choice: Choice): string =>
    (choice === 'ready' && say === 'over' && words.despite) || wordsFor(choice).label;
  const why = out ? verdictsLines.standOutBecause : because[say];
  return {
    headline: words.headline,
    detail: why,
    spoken: why,
    slab: { ...wordsFor(first), deed: deedFor(first) },
    tiles: choicesOf(chosen)
      .filter((choice) => choice !== first)
      .map((choice) => ({ label: tileFor(choice), deed: deedFor(choice) })),
  };
}
