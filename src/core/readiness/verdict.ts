/** What signs say together. `unsure`: they disagree or say too little. */
export type Verdict = { readonly say: 'ready' | 'notYet' | 'over' | 'unsure' };

type Answers = Readonly<Record<string, string>>;
type Says = 'ready' | 'notYet' | 'over';

/** What each value of each sign speaks for; a value not listed speaks for nothing. */
type Votes = Readonly<Record<string, Readonly<Record<string, Says>>>>;

const LEVAIN: Votes = {
  rise: { doubled: 'ready', some: 'notYet', little: 'notYet' },
  top: { domed: 'ready', flat: 'notYet', dipped: 'over' },
  bubbles: { many: 'ready', few: 'notYet', none: 'notYet' },
  smell: { fresh: 'ready', flour: 'notYet', sharp: 'over' },
};

const BULK: Votes = {
  rise: { 100: 'ready', 75: 'ready', 50: 'notYet', 25: 'notYet', 0: 'notYet' },
  edge: { domed: 'ready', flat: 'notYet', fallen: 'over' },
  bubbles: { many: 'ready', some: 'ready', none: 'notYet' },
  wobble: { jiggles: 'ready', firm: 'notYet', strings: 'over' },
  top: { smooth: 'ready', sticky: 'over' },
};

/** The dent is not among them: a cold loaf springs or stays whatever it is. It only breaks a tie. */
const LOAF: Votes = {
  grown: { grown: 'ready', little: 'notYet', none: 'notYet' },
  rim: { below: 'notYet', level: 'ready', above: 'over' },
  wobble: { jiggles: 'ready', firm: 'notYet' },
};

const DENT: Votes = { dent: { springs: 'notYet', slowly: 'ready', stays: 'over' } };

const POKE: Votes = { ...DENT, grown: { grown: 'ready', little: 'notYet' } };

const count = (votes: Votes, answers: Answers): Record<Says, number> => {
  const sum = { ready: 0, notYet: 0, over: 0 };
  for (const [sign, values] of Object.entries(votes)) {
    const says = values[answers[sign] ?? ''];
    if (says) sum[says] += 1;
  }
  return sum;
};

/** Two signs at least, and more of them than all others together; never one sign alone. */
const most = (sum: Record<Says, number>): Says | null => {
  const all = sum.ready + sum.notYet + sum.over;
  return (
    (['ready', 'notYet', 'over'] as const).find((s) => sum[s] >= 2 && sum[s] * 2 > all) ?? null
  );
};

/**
 * Dipped and sharp is over, even in a jar still full of bubbles; else the majority.
 * Source: common practice, no source.
 */
export const levainVerdict = (answers: Answers): Verdict => {
  const sum = count(LEVAIN, answers);
  return { say: sum.over >= 2 ? 'over' : (most(sum) ?? 'unsure') };
};

/** Pink, orange or mould: the levain is thrown away, whatever else it shows. */
export const mustDiscard = (answers: Answers): boolean => answers['colour'] === 'pinkOrMould';

/** Two signs of a dough gone over weigh more than those that stay "ready" while it falls. */
export const bulkVerdict = (answers: Answers): Verdict => {
  const sum = count(BULK, answers);
  return { say: sum.over >= 2 ? 'over' : (most(sum) ?? 'unsure') };
};

/**
 * A cold loaf by growth, rim and wobble; the dent counts only where those are even. Above the rim
 * with a dent that stays is over, unless something says that it has hardly grown.
 */
export const loafVerdict = (answers: Answers): Verdict => {
  const sum = count(LOAF, answers);
  const fallenBack = sum.over >= 1 && answers['dent'] === 'stays';
  if (fallenBack && sum.notYet === 0) return { say: 'over' };
  const signs = most(sum);
  if (signs) return { say: signs };
  const dent = DENT['dent']?.[answers['dent'] ?? ''];
  const spoken = sum.ready + sum.notYet + sum.over;
  return { say: dent && spoken > 0 && sum[dent] > 0 ? dent : 'unsure' };
};

/** Growth and dent must agree before a cold loaf is called by them. */
export const pokeVerdict = (answers: Answers): Verdict => {
  if (answers['dent'] === 'stays' && answers['grown'] === 'grown') return { say: 'over' };
  return { say: most(count(POKE, answers)) ?? 'unsure' };
};

/** A warm loaf's dent decides by itself. Source: common practice, no source. */
export const warmVerdict = (answers: Answers): Verdict => ({
  say: DENT['dent']?.[answers['dent'] ?? ''] ?? 'unsure',
});
