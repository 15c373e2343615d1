import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayLikely, type LoafDay } from '../../../src/core/log/loaf-day.ts';
import {
  LOAF_CAUSES,
  LOAF_SIGNS,
  SIGN_NAMES,
  type LoafAnswers,
  type LoafCause,
  type LoafSign,
} from '../../../src/core/log/loaf-names.ts';
import { BEFORE, likelyTo, SHOWS } from '../../../src/core/log/loaf-signs.ts';
import { readLoaf, type LoafRead } from '../../../src/core/log/read-loaf.ts';
import { REMEDIES } from '../../../src/core/log/remedies.ts';
import { causes as causeWords } from '../../../src/core/speech/words/causes.ts';
import { cutLoaf, dayFacts, loafChanges } from '../../../src/core/speech/words/cut-loaf.ts';

const named = ({ causes }: LoafRead): readonly string[] => causes.map(({ cause }) => cause);

const FAULTS = LOAF_CAUSES.filter((cause) => cause !== 'well');

const SURE = ['hard', 'mayBe', 'likely'];

/** Any loaf, a sign left out or not sure among them. */
const answers: fc.Arbitrary<LoafAnswers> = fc.record(
  Object.fromEntries(
    SIGN_NAMES.map((sign) => [sign, fc.constantFrom(...LOAF_SIGNS[sign], 'unsure')]),
  ),
  { requiredKeys: [] },
);
const day: fc.Arbitrary<LoafDay> = fc.record(
  {
    rise: fc.record({ percent: fc.integer({ min: 0, max: 250 }), doubt: fc.nat(60) }),
    q: fc.double({ min: 0, max: 3, noNaN: true }),
    coldHours: fc.nat(60),
    doughCelsius: fc.double({ min: 10, max: 35, noNaN: true }),
    poke: fc.record({
      dent: fc.constantFrom('springs', 'slow', 'stays'),
      cold: fc.boolean(),
    }),
    core: fc.double({ min: 60, max: 101, noNaN: true }),
    crust: fc.constantFrom('golden', 'pale', 'dark'),
    baked: fc.record({ minutes: fc.nat(90), least: fc.constant(40) }),
    cooledMinutes: fc.nat(300),
    filled: fc.boolean(),
  },
  { requiredKeys: [] },
);

describe('the table', () => {
  test.each(SIGN_NAMES)(
    '%s: every cause has a hundred loaves, and no fault is impossible',
    (sign) => {
      for (const cause of LOAF_CAUSES) {
        const row = SHOWS[sign][cause];
        expect(row).toHaveLength(LOAF_SIGNS[sign].length);
        expect(row.reduce((a, b) => a + b)).toBe(100);
        if (cause !== 'well') expect(Math.min(...row)).toBeGreaterThan(0);
      }
    },
  );

  test('shares before anything is seen are shares of one', () => {
    expect(LOAF_CAUSES.reduce((sum, cause) => sum + BEFORE[cause], 0)).toBeCloseTo(1, 9);
  });
});

describe('a cut loaf', () => {
  test.each<[LoafAnswers, LoafDay, string, string, string]>([
    [{ holes: 'underCrust', spread: 'spread', sour: 'sour' }, {}, 'over', 'likely', 'shorterBulk'],
    [{ holes: 'underCrust', base: 'tight', spread: 'burst' }, {}, 'under', 'likely', 'longerBulk'],
    [{ crumb: 'tight', spread: 'burst', base: 'tight' }, {}, 'under', 'likely', 'longerBulk'],
    [{ crumb: 'streaks', spread: 'tall', sour: 'no' }, {}, 'benchFlour', 'hard', ''],
    [{ holes: 'byFilling', crumb: 'gummy' }, {}, 'wetFilling', 'likely', 'drierFilling'],
    [{ crust: 'dark', base: 'dark', crumb: 'even' }, {}, 'ovenHot', 'likely', 'trayBelow'],
    [{ crust: 'dark', spread: 'tall' }, { core: 99 }, 'ovenHot', 'mayBe', 'coolerOven'],
    [{ crust: 'pale', holes: 'none' }, { core: 88 }, 'ovenLow', 'mayBe', 'hotterOven'],
  ])('%j, %j: %s, %s', (seen, that, cause, sure, change) => {
    const read = readLoaf(seen, that);
    expect(read.causes[0]).toEqual({ cause, sure });
    expect(read.change).toBe(change === '' ? null : change);
  });

  test('gummy alone: two causes, hard to say, no change, and the next sign', () => {
    const read = readLoaf({ crumb: 'gummy' }, {});
    expect(read.causes).toHaveLength(2);
    expect(read.causes.map(({ sure }) => sure)).toEqual(['hard', 'hard']);
    expect(read.change).toBeNull();
    expect(read.next).not.toBeNull();
    expect(read.next).not.toBe('crumb');
  });

  test('tall and even: nothing to change', () => {
    const read = readLoaf({ crumb: 'even', spread: 'tall', base: 'even' }, {});
    expect(read).toMatchObject({ says: 'well', causes: [], change: null, next: null });
  });

  test('nothing seen: nothing said, whatever the day was', () => {
    const that = { rise: { percent: 20, doubt: 5 }, cooledMinutes: 5 };
    expect(readLoaf({}, that)).toMatchObject({ says: 'look', causes: [], change: null });
    expect(readLoaf({ crumb: 'unsure' }, that)).toMatchObject({ says: 'look', causes: [] });
  });

  test('a value that is none of a sign is as if it was not answered', () => {
    const odd = { crumb: 'purple', holes: 'none' } as unknown as LoafAnswers;
    expect(readLoaf(odd, {}).shares).toEqual(readLoaf({ holes: 'none' }, {}).shares);
  });
});

describe('the day', () => {
  const gummy: LoafAnswers = { crumb: 'gummy', spread: 'tall' };

  test.each<[LoafDay, string, string]>([
    [{ cooledMinutes: 15, core: 97, baked: { minutes: 48, least: 40 } }, 'cutHot', 'coolLonger'],
    [{ cooledMinutes: 150, core: 88, baked: { minutes: 30, least: 40 } }, 'notBaked', 'bakeLonger'],
  ])('turns a gummy loaf: %j', (that, cause, change) => {
    const read = readLoaf(gummy, that);
    expect(read.causes[0]).toEqual({ cause, sure: 'likely' });
    expect(read.change).toBe(change);
    expect(read.because.length).toBeGreaterThan(0);
  });

  test('turns a hole under the crust: what rose little and what stood long', () => {
    const hole: LoafAnswers = { holes: 'underCrust', crumb: 'even' };
    const little = readLoaf(hole, { rise: { percent: 35, doubt: 8 }, q: 0.6, coldHours: 8 });
    const long = readLoaf(hole, { rise: { percent: 130, doubt: 8 }, q: 1.6, coldHours: 8 });
    expect(little.shares.under + little.shares.short).toBeGreaterThan(0.5);
    expect(named(long)[0]).toBe('over');
    expect(little.shares.over).toBeLessThan(readLoaf(hole, {}).shares.over / 2);
  });

  test('does not outshout a loaf: rise, index and dough are one story', () => {
    const over: LoafAnswers = { holes: 'underCrust', spread: 'spread', sour: 'sour' };
    const rise = { percent: 35, doubt: 8 };
    const read = readLoaf(over, { rise, q: 0.6, doughCelsius: 21 });
    expect(named(read)[0]).toBe('over');
    const shares = (that: LoafDay) => readLoaf(over, that).shares.over;
    expect(shares({ rise })).toBeLessThan(shares({}));
    expect(Math.abs(shares({ rise }) - shares({ rise, q: 0.6 }))).toBeLessThan(0.1);
  });

  test('a wide belief says less than a narrow one, and a long cold less than a short one', () => {
    const apart = (that: LoafDay, a: LoafCause, b: LoafCause): number => {
      const { says } = dayLikely(that)[0]!;
      return says[a] / says[b];
    };
    const rise = (doubt: number) => apart({ rise: { percent: 40, doubt } }, 'under', 'over');
    expect(rise(5)).toBeGreaterThan(2 * rise(60));
    const proof = (coldHours: number) => apart({ q: 0.6, coldHours }, 'under', 'well');
    expect(proof(0)).toBeGreaterThan(1.5 * proof(12));
    const dent = (cold: boolean) => apart({ poke: { dent: 'stays', cold } }, 'over', 'under');
    expect(dent(false)).toBeGreaterThan(3 * dent(true));
    expect(dent(true)).toBeGreaterThan(1);
  });

  test('up high a core that is low down here is none', () => {
    const core = (height: number) => dayLikely({ core: 90, height })[0]!.says.notBaked;
    expect(core(0)).toBeGreaterThan(0.5);
    expect(core(1500)).toBeLessThan(0.5);
  });

  test('a crust that is answered stands above the one at the oven', () => {
    const told: LoafAnswers = { crust: 'pale', crumb: 'even' };
    expect(readLoaf(told, { crust: 'dark' }).shares).toEqual(readLoaf(told, {}).shares);
  });

  test('a plain loaf has no wet filling', () => {
    const read = readLoaf({ holes: 'byFilling', crumb: 'gummy' }, { filled: false });
    expect(read.shares.wetFilling).toBe(0);
    expect(named(read)).not.toContain('wetFilling');
  });

  test('numbers that are none say nothing', () => {
    const none = { q: NaN, core: Infinity, rise: { percent: 50, doubt: 5, wanted: 0 } };
    expect(dayLikely(none)).toEqual([]);
  });

  test('picks the one change by where it came about', () => {
    const under: LoafAnswers = { holes: 'underCrust', base: 'tight', spread: 'burst' };
    const over: LoafAnswers = { holes: 'underCrust', spread: 'spread', sour: 'sour' };
    const full = { rise: { percent: 75, doubt: 10 } };
    expect(readLoaf(under, { doughCelsius: 20 }).change).toBe('warmerDough');
    expect(readLoaf(under, full).change).toBe('longerProof');
    expect(readLoaf(over, { doughCelsius: 29 }).change).toBe('coolerDough');
    expect(readLoaf(over, { ...full, coldHours: 20 }).change).toBe('shorterCold');
  });
});

describe('any loaf on any day', () => {
  test('has two causes at most, and a change only with a ground for it', () => {
    fc.assert(
      fc.property(answers, day, (seen, that) => {
        const { causes, change, says, shares } = readLoaf(seen, that);
        expect(causes.length).toBeLessThanOrEqual(2);
        expect(change !== null).toBe(says === 'causes' && causes[0]!.sure !== 'hard');
        expect(causes.length > 0).toBe(says === 'causes');
        if (causes[0]?.sure === 'hard') expect(causes).toHaveLength(2);
        const sum = LOAF_CAUSES.reduce((all, cause) => all + shares[cause], 0);
        expect(sum).toBeCloseTo(1, 9);
      }),
      { numRuns: 2000 },
    );
  });

  const ALONE = SIGN_NAMES.flatMap((sign) => LOAF_SIGNS[sign].map((shown) => [sign, shown]));

  test.each(ALONE)(
    '%s %s alone: never likely, never one cause, and what to look at next',
    (...one) => {
      const [sign, shown] = one as [LoafSign, string];
      const alone = readLoaf({ [sign]: shown }, {});
      expect([0, 2]).toContain(alone.causes.length);
      expect(alone.change).toBeNull();
      expect(alone.next).not.toBeNull();
      expect(alone.says).not.toBe('well');
      fc.assert(
        fc.property(day, (that) => {
          const { causes, says } = readLoaf({ [sign]: shown }, that);
          for (const { sure } of causes) expect(sure).not.toBe('likely');
          expect([0, 2]).toContain(causes.length);
          expect(says).not.toBe('well');
        }),
      );
    },
  );

  test('a sign that speaks for a cause never lowers it, nor how sure it is', () => {
    const speaking = FAULTS.flatMap((cause) =>
      SIGN_NAMES.flatMap((sign) =>
        LOAF_SIGNS[sign]
          .filter((shown) => {
            const says = likelyTo(sign, shown);
            return LOAF_CAUSES.every((other) => says[other] <= says[cause]);
          })
          .map((shown) => ({ cause, sign, shown })),
      ),
    );
    // Of these two no sign of the loaf tells most: the hours it stood and cooled do.
    const told = speaking.map(({ cause }) => cause);
    expect(FAULTS.filter((cause) => !told.includes(cause))).toEqual(['short', 'cutHot']);
    fc.assert(
      fc.property(answers, day, fc.constantFrom(...speaking), (all, on, { cause, sign, shown }) => {
        const { [sign]: _, ...seen } = all;
        const { crust: __, ...that } = on;
        const [before, after] = [readLoaf(seen, that), readLoaf({ ...seen, [sign]: shown }, that)];
        expect(after.shares[cause]).toBeGreaterThanOrEqual(before.shares[cause] - 1e-12);
        const sure = ({ causes }: LoafRead) =>
          SURE.indexOf(causes.find((was) => was.cause === cause)?.sure ?? 'hard');
        expect(sure(after)).toBeGreaterThanOrEqual(sure(before));
      }),
      { numRuns: 3000 },
    );
  });

  test('is never called well where a fault shows', () => {
    const FINE = ['even', 'none', 'throughout', 'tall', 'golden', 'no', 'sour', 'unsure'];
    fc.assert(
      fc.property(answers, (seen) => {
        fc.pre(Object.values(seen).some((shown) => !FINE.includes(shown)));
        expect(readLoaf(seen, {}).says).not.toBe('well');
      }),
      { numRuns: 2000 },
    );
  });

  test('is asked about three times at most, never twice of one sign', () => {
    fc.assert(
      fc.property(day, fc.infiniteStream(fc.nat(9)), (that, picks) => {
        const seen: Partial<Record<LoafSign, string>> = {};
        let asked = 0;
        let { next } = readLoaf({}, that);
        while (next !== null && asked < 4) {
          expect(seen).not.toHaveProperty(next);
          const values: readonly string[] = [...LOAF_SIGNS[next], 'unsure'];
          seen[next] = values[(picks.next().value as number) % values.length]!;
          asked++;
          ({ next } = readLoaf(seen as LoafAnswers, that));
        }
        expect([2, 3]).toContain(asked);
      }),
    );
  });
});

test('every row of the cut loaf is met by a sign of it', () => {
  const met = new Set(
    SIGN_NAMES.flatMap((sign) =>
      LOAF_SIGNS[sign].flatMap((shown) => readLoaf({ [sign]: shown }, {}).rows),
    ),
  );
  for (const row of REMEDIES.filter(({ stage }) => stage === 'cut')) expect(met).toContain(row);
});

test('every cause, sign, fact and change has its words', () => {
  for (const cause of LOAF_CAUSES)
    if (cause !== 'well') expect(causeWords[cause]).toMatch(/^[a-z]/);
  for (const sign of SIGN_NAMES)
    expect(Object.keys(cutLoaf[sign].shown).sort()).toEqual([...LOAF_SIGNS[sign]].sort());
  for (const words of Object.values(loafChanges))
    expect(words.split(' ').length, words).toBeLessThanOrEqual(12);
  expect(Object.keys(dayFacts)).toHaveLength(8);
});
