import { describe, expect, it } from 'vitest';
import { namesNone, packetState, withList } from '../../../src/core/formula/allergens.ts';
import { partAt, withAnswer, type Part } from '../../../src/screens/circle/labels/answer-packet.ts';
import { shippedFormula } from '../../core/formula/shipped.ts';

const cherry = shippedFormula('cherry-hazelnut');
const olive = shippedFormula('olive-seed');
const wheat = partAt(cherry, { kind: 'flour', id: 'wheat' })!;
const read = { ...wheat, of: withList(wheat.of, ['soya']) } as Part;

describe('what a packet says', () => {
  it('goes to the part that was asked about, and to the same flour of other breads', () => {
    const [flour] = withAnswer(cherry, read, true)!.flours;
    expect(flour).toMatchObject({ id: 'wheat', pct: 85, allergens: ['soya'], packet: 'read' });
    const [same, rye] = withAnswer(olive, read, false)!.flours;
    expect(same).toMatchObject({ allergens: ['soya'], packet: 'read' });
    expect(packetState(rye!)).toBe('open');
  });

  it('changes no answer that another bread has', () => {
    const answered = { ...olive, flours: olive.flours.map(namesNone) };
    expect(withAnswer(answered, read, false)).toBeNull();
    expect(
      packetState(
        withAnswer(cherry, { ...wheat, of: namesNone(wheat.of) } as Part, true)!.flours[0]!,
      ),
    ).toBe('none');
  });

  it('is no answer for another grain or for a filling of that name', () => {
    const spelt = { ...olive, flours: [{ ...olive.flours[0]!, grain: 'spelt' as const }] };
    expect(withAnswer(spelt, read, false)).toBeNull();
    const named = {
      ...olive,
      flours: [],
      fillings: [{ ...olive.fillings[1]!, name: wheat.of.name }],
    };
    expect(withAnswer(named, read, false)).toBeNull();
  });

  it('is nothing where nothing was said', () => {
    expect(withAnswer(cherry, wheat, true)).toBeNull();
    expect(partAt(cherry, { kind: 'filling', id: 'gone' })).toBeNull();
  });
});
