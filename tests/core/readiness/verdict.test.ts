import { describe, expect, it } from 'vitest';
import {
  bulkVerdict,
  levainVerdict,
  loafVerdict,
  mustDiscard,
  pokeVerdict,
} from '../../../src/core/readiness/verdict.ts';
import { questions } from '../../../src/core/speech/words/questions.ts';

const LOOKS = {
  levainSigns: levainVerdict,
  bulkSigns: bulkVerdict,
  loafSigns: loafVerdict,
  pokeSigns: pokeVerdict,
} as const;

describe('verdicts', () => {
  it.each([
    [levainVerdict, { rise: 'doubled', top: 'domed', bubbles: 'many', smell: 'fresh' }, 'ready'],
    [levainVerdict, { rise: 'little', top: 'flat', bubbles: 'few', smell: 'flour' }, 'notYet'],
    [levainVerdict, { rise: 'notSure', top: 'dipped', bubbles: 'notSure', smell: 'sharp' }, 'over'],
    [levainVerdict, { rise: 'doubled', top: 'dipped', bubbles: 'many', smell: 'sharp' }, 'over'],
    [levainVerdict, { rise: 'doubled', top: 'dipped', bubbles: 'many', smell: 'fresh' }, 'ready'],
    [levainVerdict, { rise: 'some', top: 'domed', bubbles: 'many', smell: 'flour' }, 'unsure'],
    [bulkVerdict, { rise: '50', edge: 'domed', bubbles: 'many', wobble: 'firm' }, 'unsure'],
    [bulkVerdict, { rise: '75', edge: 'domed', bubbles: 'many', wobble: 'jiggles' }, 'ready'],
    [bulkVerdict, { rise: '25', edge: 'flat', bubbles: 'none', wobble: 'firm' }, 'notYet'],
    [bulkVerdict, { rise: '100', edge: 'fallen', bubbles: 'many', wobble: 'strings' }, 'over'],
    [loafVerdict, { grown: 'grown', rim: 'level', wobble: 'jiggles', dent: 'springs' }, 'ready'],
    [loafVerdict, { grown: 'none', rim: 'below', wobble: 'firm', dent: 'stays' }, 'notYet'],
    [loafVerdict, { grown: 'grown', rim: 'above', wobble: 'jiggles', dent: 'stays' }, 'over'],
    [loafVerdict, { grown: 'grown', rim: 'below', dent: 'slowly' }, 'ready'],
    [loafVerdict, { grown: 'grown', rim: 'below', dent: 'springs' }, 'notYet'],
    [loafVerdict, { grown: 'none', rim: 'above', wobble: 'firm', dent: 'stays' }, 'notYet'],
    [loafVerdict, { grown: 'little', rim: 'above', wobble: 'jiggles', dent: 'stays' }, 'over'],
    [loafVerdict, { grown: 'grown', rim: 'notSure', wobble: 'jiggles', dent: 'stays' }, 'ready'],
    [pokeVerdict, { dent: 'slowly', grown: 'grown' }, 'ready'],
    [pokeVerdict, { dent: 'springs', grown: 'little' }, 'notYet'],
    [pokeVerdict, { dent: 'stays', grown: 'grown' }, 'over'],
    [pokeVerdict, { dent: 'springs', grown: 'grown' }, 'unsure'],
  ] as const)('%o of %o is %s', (judge, answers, say) => {
    expect(judge(answers)).toEqual({ say });
  });

  it('never decides by one sign alone', () => {
    for (const [list, judge] of Object.entries(LOOKS)) {
      for (const { item, slab, tiles } of questions[list as keyof typeof LOOKS]) {
        for (const { value } of [slab, ...tiles]) {
          expect(judge({ [item]: value }), `${list} ${item} ${value}`).toEqual({ say: 'unsure' });
        }
      }
    }
  });

  it('never reads a cold loaf by the dent alone', () => {
    for (const dent of ['springs', 'slowly', 'stays']) {
      expect(loafVerdict({ dent, grown: 'notSure', rim: 'notSure', wobble: 'notSure' })).toEqual({
        say: 'unsure',
      });
    }
  });

  it('takes a missing answer, one it does not know and "not sure" for the same', () => {
    for (const [list, judge] of Object.entries(LOOKS)) {
      const signs = questions[list as keyof typeof LOOKS];
      const sure = Object.fromEntries(signs.map(({ item, slab }) => [item, slab.value]));
      for (const { item } of signs) {
        const { [item]: _, ...missing } = sure;
        const said = judge(missing);
        expect(judge({ ...missing, [item]: 'notSure' }), `${list} ${item}`).toEqual(said);
        expect(judge({ ...missing, [item]: 'purple' }), `${list} ${item}`).toEqual(said);
      }
      expect(judge(sure), list).toEqual({ say: 'ready' });
    }
  });

  it('is unsure where nothing is known', () => {
    for (const judge of Object.values(LOOKS)) expect(judge({})).toEqual({ say: 'unsure' });
  });

  it('throws away a levain that is pink or mouldy', () => {
    expect(mustDiscard({ colour: 'pinkOrMould', rise: 'doubled', top: 'domed' })).toBe(true);
    expect(mustDiscard({ colour: 'creamy' })).toBe(false);
  });
});
