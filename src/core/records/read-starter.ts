import { LAST_INSTANT } from './checks.ts';
import { STARTER_PLACES, TOPS, type StarterDeed } from './starter.ts';

interface Span {
  readonly least: number;
  readonly most: number;
}

/**
 * What each deed carries: a number within these ends, both included, one of these words, or a word.
 * Judgement: what a jar in a kitchen can be.
 */
const SHAPES: Readonly<
  Record<StarterDeed['did'], Readonly<Record<string, Span | readonly string[] | 'word'>>>
> = {
  fed: { flour: { least: 0.2, most: 50 }, celsius: { least: -5, most: 55 } },
  put: { where: STARTER_PLACES },
  kept: { grams: { least: 0, most: 5000 } },
  named: { name: 'word' },
  renewed: {},
  rose: { percent: { least: 0, most: 300 } },
  topped: { top: TOPS },
  later: { until: { least: 0, most: LAST_INSTANT } },
};

/** Why it is no deed of the starter's: which field, what was expected, what came; null where it is one. */
export function starterFault(
  fields: Readonly<Record<string, unknown>>,
): { readonly path: string; readonly expected: string; readonly got: unknown } | null {
  const { did } = fields;
  const shape =
    typeof did === 'string' && Object.hasOwn(SHAPES, did)
      ? SHAPES[did as StarterDeed['did']]
      : null;
  if (shape === null) return { path: 'did', expected: Object.keys(SHAPES).join(', '), got: did };
  for (const [path, wanted] of Object.entries(shape)) {
    const got = fields[path];
    const fault = (expected: string) => ({ path, expected, got });
    if (wanted === 'word') {
      if (typeof got !== 'string' || got === '') return fault('a word');
    } else if ('least' in wanted) {
      const fits = typeof got === 'number' && got >= wanted.least && got <= wanted.most;
      if (!fits) return fault(`${wanted.least} to ${wanted.most}`);
    } else if (!wanted.includes(got as string)) return fault(wanted.join(', '));
  }
  return null;
}
