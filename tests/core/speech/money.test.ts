import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  currencySign,
  isCurrency,
  moneyDigits,
  showMoney,
  showPart,
  showProduct,
  showTimes,
  showUnitCost,
} from '../../../src/core/speech/money.ts';

/** The number in a shown sum of English money. */
const numberIn = (shown: string): number => Number(shown.replace(/[^\d.-]/g, ''));

describe('money as it is shown', () => {
  it('has its currency’s own digits, and the locale’s way to write it', () => {
    expect(showMoney(1234.5, 'EUR', 'en')).toBe('€1,234.50');
    expect(showMoney(1234.5, 'EUR', 'de').replace(/\s/g, ' ')).toBe('1.234,50 €');
    expect(['EUR', 'CAD', 'CHF'].map((code) => currencySign(code, 'en'))).toEqual([
      '€',
      'CA$',
      'CHF',
    ]);
    expect(showMoney(120.4, 'JPY', 'en')).toBe('¥120');
    expect([moneyDigits('EUR'), moneyDigits('JPY'), moneyDigits('KWD')]).toEqual([2, 0, 3]);
    expect([isCurrency('EUR'), isCurrency('eur'), isCurrency('EURO')]).toEqual([
      true,
      false,
      false,
    ]);
  });

  it('shows of a unit’s cost what tells', () => {
    expect(showUnitCost(0.106 / 0.75, 'USD', 'en')).toBe('$0.1413');
    expect(showUnitCost(0.00141333, 'USD', 'en')).toBe('$0.001413');
    expect(showUnitCost(2, 'USD', 'en')).toBe('$2.00');
    expect(showUnitCost(12.3456, 'USD', 'en')).toBe('$12.35');
    expect(showUnitCost(0, 'USD', 'en')).toBe('$0.00');
    expect(showTimes(2.5, 'en')).toBe('2.5');
    expect([showPart(0.03136, 'EUR', 'en'), showPart(12.34, 'JPY', 'en')]).toEqual([
      '€0.031',
      '¥12.3',
    ]);
  });

  it('shows a sum that comes out by what is shown', () => {
    expect(showProduct(3, 1.12, 'EUR', 'en')).toEqual({
      times: '3',
      cost: '€1.12',
      result: '€3.36',
    });
    expect(showProduct(3, 1.1167, 'EUR', 'en')).toMatchObject({ cost: '€1.117', result: '€3.35' });
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.integer({ min: 1, max: 100 }),
        fc.constantFrom('EUR', 'JPY', 'KWD'),
        (cost, tenths, currency) => {
          const times = tenths / 10;
          const shown = showProduct(times, cost, currency, 'en');
          const half = 0.5 * 10 ** -moneyDigits(currency);
          const again = numberIn(shown.times) * numberIn(shown.cost);
          expect(Math.abs(again - numberIn(shown.result))).toBeLessThanOrEqual(half + 1e-9);
          expect(Math.abs(times * cost - numberIn(shown.result))).toBeLessThanOrEqual(half + 1e-9);
        },
      ),
    );
  });
});
