import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goesOn, mergeLogs, type Log, type Logs } from '../../src/core/records/merge-logs.ts';
import { makeRow } from '../fakes/records.ts';

const EMPTY: Logs = { own: [], others: [] };

const merged = (here: Logs, file: Logs): Logs => {
  const { logs, clash } = mergeLogs(here, file);
  if (logs === null) throw new Error(`${clash.id} clashes.`);
  return logs;
};
/** Ids are given once in the world, whichever tablet they are given on. */
const log = (ids: string): Log =>
  [...ids].map((id, i) => {
    const row = makeRow(i + 1, id);
    return { ...row, fact: { ...row.fact, id } };
  });
const ids = (one: Log): string => one.map(({ fact }) => fact.id).join('');
const factsOf = ({ own, others }: Logs): ReadonlySet<string> =>
  new Set([own, ...others].flat().map(({ fact }) => fact.id));
const shape = ({ own, others }: Logs) => ({ own: ids(own), others: others.map(ids).sort() });

describe('the logs of two tablets', () => {
  it('stay apart, but where one goes on from the other', () => {
    const here = { own: log('ab'), others: [] };
    const after = (own: string, ...others: readonly string[]) =>
      shape(merged(here, { own: log(own), others: others.map(log) }));
    expect(after('abc')).toEqual({ own: 'abc', others: [] });
    expect(after('a')).toEqual({ own: 'ab', others: [] });
    expect(after('ab')).toEqual({ own: 'ab', others: [] });
    expect(after('xy')).toEqual({ own: 'ab', others: ['xy'] });
    // A branch: the beginning is the same.
    expect(after('ac')).toEqual({ own: 'ab', others: ['ac'] });
    expect(after('abc', 'xy', 'ab', 'x')).toEqual({ own: 'abc', others: ['xy'] });
    // Only a file's own log is gone on with: another's oven stands elsewhere.
    expect(after('', 'abc')).toEqual({ own: 'ab', others: ['abc'] });
    expect(shape(merged(EMPTY, { own: [], others: [log('xy')] }))).toEqual({
      own: '',
      others: ['xy'],
    });
  });

  it('tell what is new, each fact once', () => {
    const here = { own: log('ab'), others: [log('xy')] };
    const { fresh } = { fresh: [], ...mergeLogs(here, { own: log('xyz'), others: [log('abq')] }) };
    expect(ids(fresh)).toBe('zq');
    expect(mergeLogs(here, here)).toMatchObject({ fresh: [], goesOn: false });
  });

  it('are not joined where one id says two things', () => {
    const [first, second] = log('ab');
    const changed = { ...second!, fact: { ...second!.fact, at: 1 } };
    const forged = [first!, changed];
    const clash = { id: 'b', seq: 2 };
    expect(mergeLogs({ own: log('ab'), others: [] }, { own: forged, others: [] })).toEqual({
      logs: null,
      clash,
    });
    expect(mergeLogs(EMPTY, { own: log('ab'), others: [forged] }).clash).toEqual(clash);
  });
});

/** What three tablets do: each goes on with its log, is saved, is wiped, or takes in what was saved. */
const who = fc.nat(2);
const deeds = fc.array(
  fc.oneof(
    { weight: 4, arbitrary: fc.record({ what: fc.constant('press'), who }) },
    { weight: 3, arbitrary: fc.record({ what: fc.constant('save'), who }) },
    { weight: 1, arbitrary: fc.record({ what: fc.constant('wipe'), who }) },
    { weight: 3, arbitrary: fc.record({ what: fc.constant('take'), who, file: fc.nat(20) }) },
  ),
  { minLength: 5, maxLength: 40 },
);

/** All that was saved meanwhile, branches among it. */
function savedBy(told: readonly { what: string; who: number; file?: number }[]): readonly Logs[] {
  const tablets: Logs[] = [EMPTY, EMPTY, EMPTY];
  const files: Logs[] = [];
  let given = 0x4e00;
  for (const { what, who: at, file } of told) {
    const { own, others } = tablets[at]!;
    if (what === 'press')
      tablets[at] = { own: log(ids(own) + String.fromCharCode((given += 1))), others };
    else if (what === 'save') files.push({ own, others });
    else if (what === 'wipe') tablets[at] = EMPTY;
    else if (files.length > 0) tablets[at] = merged({ own, others }, files[file! % files.length]!);
  }
  return files;
}

const all = (start: Logs, files: readonly Logs[]): Logs => files.reduce(merged, start);

describe('any set of files, in any order', () => {
  const shuffled = deeds
    .map(savedBy)
    .filter((files) => files.length > 1)
    .chain((files) => {
      const inAnyOrder = fc.shuffledSubarray([...files], { minLength: files.length });
      return fc.record({ files: fc.constant(files), one: inAnyOrder, two: inAnyOrder });
    });

  it('ends with every fact of all of them, none lost on the way', () => {
    fc.assert(
      fc.property(shuffled, ({ files, one }) => {
        const want = new Set(files.flatMap((file) => [...factsOf(file)]));
        let here = EMPTY;
        for (const file of one) {
          const before = factsOf(here);
          here = merged(here, file);
          expect(factsOf(here)).toEqual(new Set([...before, ...factsOf(file)]));
        }
        expect(factsOf(here)).toEqual(want);
      }),
    );
  });

  it('ends with the same logs as a set, whichever is gone on with', () => {
    // An own log that another one goes on from is told by that one.
    const asSet = ({ own, others }: Logs): readonly string[] =>
      (others.some((one) => goesOn(own, one)) ? others : [own, ...others]).map(ids).sort();
    fc.assert(
      fc.property(shuffled, ({ one, two }) => {
        expect(asSet(all(EMPTY, one))).toEqual(asSet(all(EMPTY, two)));
      }),
    );
  });

  it('changes nothing when it is brought in again, and no log stands in another', () => {
    fc.assert(
      fc.property(shuffled, ({ one, two }) => {
        const here = all(EMPTY, one);
        expect(shape(all(here, two))).toEqual(shape(here));
        here.others.forEach((log, i) => {
          expect(goesOn(log, here.own)).toBe(false);
          here.others.forEach((other, j) => expect(i !== j && goesOn(log, other)).toBe(false));
        });
      }),
    );
  });

  it('leaves a log that nothing of it goes on from as it is', () => {
    fc.assert(
      fc.property(shuffled, ({ files, one }) => {
        const here = all({ own: log('ab'), others: [] }, one);
        expect(ids(here.own)).toBe('ab');
        expect(factsOf(here)).toEqual(
          new Set(['a', 'b', ...files.flatMap((file) => [...factsOf(file)])]),
        );
      }),
    );
  });
});
