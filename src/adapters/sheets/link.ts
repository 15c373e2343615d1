import { deflateSync } from 'fflate';
import type { Formula } from '../../core/formula/formula.ts';
import { describe } from '../../core/formula/read-fields.ts';
import type { ReadFormula } from '../../core/formula/read-formula.ts';
import { fromBase64Url, toBase64Url } from '../../core/sheets/base64url.ts';
import { readFormulas } from '../../core/sheets/formula-file.ts';
import { LINK_DICTIONARY } from '../../core/sheets/link-dictionary.ts';
import { LINK_LIMITS, LINK_MARK, LINK_VERSION } from '../../core/sheets/link-form.ts';
import { inflateWithin } from './inflate-within.ts';

const dictionary = new TextEncoder().encode(LINK_DICTIONARY);

const refuse = (path: string, expected: string, got: string): ReadFormula => ({
  formula: null,
  reason: { path, expected, got },
});

/**
 * A formula as the part of an address behind #. The baker's notes stay out of it: they may name people.
 * Null: it is too long to be a link.
 */
export function writeLink({ notes: _, ...formula }: Formula): string | null {
  const bytes = new TextEncoder().encode(JSON.stringify(formula));
  const packed = toBase64Url(deflateSync(bytes, { level: 9, dictionary }));
  const link = `${LINK_MARK}${LINK_VERSION}.${packed}`;
  return bytes.length > LINK_LIMITS.bytes || link.length > LINK_LIMITS.letters ? null : link;
}

/**
 * The formula in a link, or in what stands behind its #. Null with where it could not be read any
 * further, what was expected there and what came. Nothing is kept. Never throws.
 */
export function readLink(link: string): ReadFormula {
  if (link.length > LINK_LIMITS.letters + 500) {
    return refuse('the link', `at most ${LINK_LIMITS.letters} letters`, String(link.length));
  }
  const at = link.indexOf(LINK_MARK);
  if (at < 0) return refuse('the link', `${LINK_MARK} in it`, describe(link));
  const held = link.slice(at + LINK_MARK.length);
  const [, version, packed] = /^(\d{1,6})\.(.*)$/s.exec(held) ?? [];
  if (version === undefined || packed === undefined) {
    return refuse('the link', 'a version, a point and letters', describe(held));
  }
  if (Number(version) !== LINK_VERSION) {
    return refuse('the version of the link', String(LINK_VERSION), version);
  }
  const bytes = fromBase64Url(packed);
  if (bytes === null) return refuse('the link', 'letters, digits, - and _', describe(packed));
  const text = inflateWithin(Uint8Array.from(bytes), LINK_LIMITS.bytes, dictionary);
  if (text === null || text.length === 0) {
    return refuse('the link', 'a whole one', 'one that was cut or changed');
  }
  const { formulas, reason } = { reason: null, ...readFormulas(decoded(text)) };
  if (formulas === null) return { formula: null, reason: reason! };
  const [formula, another] = formulas;
  return formula && !another
    ? { formula }
    : refuse('the link', 'one formula', `${formulas.length}`);
}

const decoded = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);
