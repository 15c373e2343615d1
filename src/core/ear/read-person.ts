import { Fields, Refused } from '../formula/read-fields.ts';
import { HAND_MARKS } from '../small/marks.ts';
import { TONGUES, type Tongue } from '../speech/tongue.ts';
import type { Frames } from './frames.ts';
import type { EarPerson, Saying } from './person.ts';
import { EAR_PHRASES, type EarPhrase } from './phrases.ts';

/** More than anybody says, of each phrase. */
const MOST_SAYINGS = 12;
/** A phrase is no longer than this, frames; and a frame no wider. */
const MOST_FRAMES = 400;
const MOST_SIZE = 128;

const readFrames = (value: unknown, path: string): Frames => {
  const fields = Fields.read(value, path);
  const count = fields.number('count', 0, MOST_FRAMES, true);
  const size = fields.number('size', 1, MOST_SIZE, true);
  const { data } = value as { data?: unknown };
  const fits =
    data instanceof Float32Array && data.length === count * size && data.every(Number.isFinite);
  if (!fits) throw new Refused({ path: `${path}.data`, expected: 'numbers', got: typeof data });
  return { count, size, data: Float32Array.from(data) };
};

const readSaying = (value: unknown, path: string): Saying => {
  const { plain, learned } = value as { plain?: unknown; learned?: unknown };
  return {
    plain: readFrames(plain, `${path}.plain`),
    learned:
      learned === null || learned === undefined ? null : readFrames(learned, `${path}.learned`),
  };
};

/**
 * Phrases are other words in another tongue: who has spoken in one is nobody in the next, and is there again
 * with it.
 */
export interface PersonRow extends EarPerson {
  readonly tongue: Tongue;
}

/** Where somebody's row lies: one in each tongue. */
export const keyOfPerson = (id: string, tongue: Tongue): string => `${tongue}/${id}`;

const readPerson = (key: unknown, value: unknown): PersonRow => {
  const fields = Fields.read(value, '');
  const id = fields.text('id');
  const tongue = fields.oneOf('tongue', TONGUES);
  const lies = keyOfPerson(id, tongue);
  if (lies !== key) throw new Refused({ path: 'id', expected: String(key), got: lies });
  const sayings = fields.inner('sayings');
  const read = (phrase: EarPhrase): readonly (readonly [EarPhrase, readonly Saying[]])[] =>
    sayings.has(phrase) ? [[phrase, sayings.list(phrase, 1, MOST_SAYINGS, readSaying)]] : [];
  return {
    id,
    tongue,
    mark: fields.oneOf('mark', HAND_MARKS),
    child: fields.flag('child'),
    sayings: Object.fromEntries(EAR_PHRASES.flatMap(read)),
  };
};

/**
 * Everybody whose row can be read and who has spoken in this tongue, in the order of their keys; the others are
 * nobody. Never throws.
 */
export function readPeople(
  rows: ReadonlyMap<unknown, unknown>,
  tongue: Tongue,
): readonly EarPerson[] {
  return [...rows].flatMap(([key, value]) => {
    try {
      const { tongue: spoke, ...person } = readPerson(key, value);
      return spoke === tongue ? [person] : [];
    } catch (error) {
      if (error instanceof Refused || error instanceof TypeError) return [];
      throw error;
    }
  });
}
