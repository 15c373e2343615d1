import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MACHINE_VERSION } from '../../machines/kitchen/kitchen.ts';
import {
  LOAF_CHANGES,
  LOAF_SIGNS,
  SIGN_NAMES,
  type LoafAnswers,
} from '../../src/core/log/loaf-names.ts';
import { cutFault } from '../../src/core/records/read-cut.ts';
import { readRecord } from '../../src/core/records/read-record.ts';
import { makeRow } from '../fakes/records.ts';
import { cutDeed } from '../machines/golden/cut.ts';

const FACT = {
  ...cutDeed('f1', { crumb: 'gummy', base: 'tight', spread: 'unsure' }),
  id: 'x',
  device: 'd',
  at: 5,
  raw: 5,
};
const CAUSE = { cause: 'under', sure: 'likely' };
const row = (fact: object) => ({
  seq: 1,
  machineVersion: MACHINE_VERSION,
  position: makeRow(1).position,
  fact,
});

describe('a fact of a cut loaf', () => {
  it('is read as it is', () => {
    expect(readRecord(row(FACT), MACHINE_VERSION).record).toEqual(row(FACT));
    const read = { says: 'look', causes: [], change: null, because: [], model: 'loaf-1' };
    expect(cutFault({ target: 'f1', answers: {}, read })).toBeNull();
  });

  it('is whatever may be read of any loaf', () => {
    const answers: fc.Arbitrary<LoafAnswers> = fc.record(
      Object.fromEntries(
        SIGN_NAMES.map((sign) => [sign, fc.constantFrom(...LOAF_SIGNS[sign], 'unsure')]),
      ),
      { requiredKeys: [] },
    );
    fc.assert(fc.property(answers, (said) => cutFault(cutDeed('f1', said)) === null));
  });

  it.each<[string, string, object]>([
    ['fact.target', 'the id of a start', { target: '' }],
    ['fact.answers', 'an object', { answers: ['gummy'] }],
    ['fact.answers.crust', 'golden, pale, dark, unsure', { answers: { crust: 'blue' } }],
    ['fact.answers.smell', SIGN_NAMES.join(', '), { answers: { smell: 'sour' } }],
    ['fact.answers.toString', SIGN_NAMES.join(', '), { answers: { toString: 'sour' } }],
    ['fact.read.says', 'well, causes, look', { read: { ...FACT.read, says: 'bad' } }],
    ['fact.read.causes', 'a list of at most 2', { read: { ...FACT.read, causes: 'under' } }],
    [
      'fact.read.causes',
      'a list of at most 2',
      { read: { ...FACT.read, causes: ['over', 'short', 'skin'].map((cause) => ({ cause })) } },
    ],
    ['fact.read.causes[0]', 'an object', { read: { ...FACT.read, causes: ['under'] } }],
    [
      'fact.read.causes[0].sure',
      'likely, mayBe, hard',
      { read: { ...FACT.read, causes: [{ ...CAUSE, sure: 'certain' }] } },
    ],
    ['fact.read.causes[1]', 'each once', { read: { ...FACT.read, causes: [CAUSE, CAUSE] } }],
    [
      'fact.read.change',
      LOAF_CHANGES.join(', '),
      { read: { ...FACT.read, change: 'moreOfEverything' } },
    ],
    [
      'fact.read.because[0]',
      'rise, proof, dough, poke, core, crust, baked, cooled',
      { read: { ...FACT.read, because: ['moon'] } },
    ],
    ['fact.read.because[1]', 'each once', { read: { ...FACT.read, because: ['core', 'core'] } }],
    ['fact.read.model', 'a word', { read: { ...FACT.read, model: 1 } }],
  ])('is refused by name where its %s is not %s', (path, expected, wrong) => {
    const found = readRecord(row({ ...FACT, ...wrong }), MACHINE_VERSION);
    expect(found.record).toBeNull();
    expect('reason' in found && found.reason).toMatchObject({ path, expected });
  });

  it('names no loaf that is well as a cause of anything', () => {
    const causes = [{ cause: 'well', sure: 'likely' }];
    expect(cutFault({ ...FACT, read: { ...FACT.read, causes } })?.path).toBe(
      'read.causes[0].cause',
    );
  });

  it('never throws, whatever comes, and says what it wanted', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('target', 'answers', 'read'),
        fc.constantFrom('says', 'causes', 'change', 'because', 'model', null),
        fc.anything(),
        (name, inner, value) => {
          const wrong =
            name === 'read' && inner !== null
              ? { ...FACT, read: { ...FACT.read, [inner]: value } }
              : { ...FACT, [name]: value };
          const fault = cutFault(wrong);
          if (fault) expect([fault.path === '', fault.expected === '']).toEqual([false, false]);
        },
      ),
      { numRuns: 400 },
    );
  });
});
