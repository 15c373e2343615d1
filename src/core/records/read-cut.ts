import {
  DAY_FACTS,
  HOW_SURE,
  LOAF_CAUSES,
  LOAF_CHANGES,
  LOAF_SAYS,
  LOAF_SIGNS,
  SIGN_NAMES,
  type LoafSign,
} from '../log/loaf-names.ts';

/** Why it is no reading of a cut loaf: which field, what was expected there, what came. */
export interface CutFault {
  readonly path: string;
  readonly expected: string;
  readonly got: unknown;
}

type Data = Readonly<Record<string, unknown>>;

const isData = (value: unknown): value is Data =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Causes that are named: two at most. */
const MOST = 2;

const oneOf = (words: readonly string[], got: unknown, path: string): CutFault | null =>
  words.includes(got as string) ? null : { path, expected: words.join(', '), got };

/** A list of at most so many, each once, each checked. */
function listFault(
  got: unknown,
  path: string,
  most: number,
  fault: (entry: unknown, path: string) => CutFault | null,
  name: (entry: unknown) => unknown = (entry) => entry,
): CutFault | null {
  if (!Array.isArray(got) || got.length > most)
    return { path, expected: `a list of at most ${most}`, got };
  const entries = got as readonly unknown[];
  for (const [i, entry] of entries.entries()) {
    const found = fault(entry, `${path}[${i}]`);
    if (found) return found;
    if (entries.slice(0, i).some((one) => name(one) === name(entry)))
      return { path: `${path}[${i}]`, expected: 'each once', got: entry };
  }
  return null;
}

function answersFault(answers: unknown): CutFault | null {
  const path = 'answers';
  if (!isData(answers)) return { path, expected: 'an object', got: answers };
  for (const [sign, got] of Object.entries(answers)) {
    const known = SIGN_NAMES.includes(sign as LoafSign);
    if (!known)
      return { path: `${path}.${sign.slice(0, 40)}`, expected: SIGN_NAMES.join(', '), got: sign };
    const fault = oneOf([...LOAF_SIGNS[sign as LoafSign], 'unsure'], got, `${path}.${sign}`);
    if (fault) return fault;
  }
  return null;
}

const FAULTS = LOAF_CAUSES.filter((cause) => cause !== 'well');

const causeFault = (cause: unknown, path: string): CutFault | null =>
  isData(cause)
    ? (oneOf(FAULTS, cause['cause'], `${path}.cause`) ??
      oneOf(HOW_SURE, cause['sure'], `${path}.sure`))
    : { path, expected: 'an object', got: cause };

function readFault(read: unknown): CutFault | null {
  if (!isData(read)) return { path: 'read', expected: 'an object', got: read };
  const { says, causes, change, because, model } = read;
  return (
    oneOf(LOAF_SAYS, says, 'read.says') ??
    listFault(causes, 'read.causes', MOST, causeFault, (one) => (one as Data)['cause']) ??
    (change === null ? null : oneOf(LOAF_CHANGES, change, 'read.change')) ??
    listFault(because, 'read.because', DAY_FACTS.length, (one, path) =>
      oneOf(DAY_FACTS, one, path),
    ) ??
    (typeof model === 'string' && model !== ''
      ? null
      : { path: 'read.model', expected: 'a word', got: model })
  );
}

/** Why a `cut` fact is none; null where it is one. What a newer tool wrote beside these fields is let be. */
export function cutFault(fact: {
  readonly target?: unknown;
  readonly answers?: unknown;
  readonly read?: unknown;
}): CutFault | null {
  const { target, answers, read } = fact;
  if (typeof target !== 'string' || target === '' || target in {})
    return { path: 'target', expected: 'the id of a start', got: target };
  return answersFault(answers) ?? readFault(read);
}
