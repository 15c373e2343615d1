import { expect, it } from 'vitest';
import { keyOfPerson, readPeople } from '../../../src/core/ear/read-person.ts';
import { aPerson } from '../../fakes/said-phrases.ts';

const person = aPerson(['done', 'seven'], { mark: 'boat', child: true }, 'learned');
const row = { ...person, tongue: 'en' };
const read = (value: unknown, key: unknown = 'en/boat') =>
  readPeople(new Map([[key, value]]), 'en');
const [saying] = person.sayings.done!;
const said = (value: unknown) => ({ ...row, sayings: { done: [value] } });
const plain = (frames: unknown) => said({ plain: frames, learned: null });

it('reads whoever has spoken here, by phrase, the learned numbers where there are some', () => {
  expect(read(row)).toEqual([person]);
  const heard = said({ plain: saying!.plain });
  expect(read(heard)).toEqual([
    { ...person, sayings: { done: [{ plain: saying!.plain, learned: null }] } },
  ]);
  expect(read({ ...row, sayings: {} })).toEqual([{ ...person, sayings: {} }]);
});

it('hands out numbers of its own, and drops phrases that nobody is asked for', () => {
  const [one] = read({ ...row, sayings: { ...person.sayings, whistle: 'no' } });
  expect(one).toEqual(person);
  expect(one!.sayings.done![0]!.plain.data).not.toBe(saying!.plain.data);
});

it('knows nobody of another tongue, who is there again with it', () => {
  const rows = new Map<unknown, unknown>([
    ['en/boat', row],
    ['de/sun', { ...aPerson(['done'], { mark: 'sun' }), tongue: 'de' }],
  ]);
  const ids = (tongue: 'en' | 'fr' | 'de') => readPeople(rows, tongue).map(({ id }) => id);
  expect([ids('en'), ids('fr'), ids('de')]).toEqual([['boat'], [], ['sun']]);
  expect(keyOfPerson('sun', 'de')).toBe('de/sun');
});

it.each([
  ['no row at all', null],
  ['a text', 'boat'],
  ['an id that is not its key’s', { ...row, id: 'sun' }],
  ['a tongue that is not its key’s', { ...row, tongue: 'fr' }],
  ['no tongue', person],
  ['a mark that is none', { ...row, mark: 'crown' }],
  ['neither child nor grown-up', { ...row, child: 'yes' }],
  ['no phrases', { ...row, sayings: null }],
  ['a phrase never said', { ...row, sayings: { done: [] } }],
  ['a phrase said too often', { ...row, sayings: { done: Array(13).fill(saying) } }],
  ['a saying that is none', said(null)],
  ['a saying of sound alone', said({ learned: saying!.learned })],
  ['numbers in a plain list', plain({ count: 1, size: 2, data: [1, 2] })],
  ['fewer numbers than it says', plain({ count: 2, size: 2, data: Float32Array.of(1, 2) })],
  ['a number that is none', plain({ count: 1, size: 2, data: Float32Array.of(1, NaN) })],
  ['a phrase without an end', plain({ count: 401, size: 1, data: new Float32Array(401) })],
  ['a frame too wide', plain({ count: 1, size: 129, data: new Float32Array(129) })],
])('holds %s for nobody, and reads the others', (_, bad) => {
  const sun = { ...aPerson(['yes'], { mark: 'sun' }), tongue: 'en' };
  const rows = new Map<unknown, unknown>([
    ['en/boat', bad],
    ['en/sun', sun],
  ]);
  expect(readPeople(rows, 'en').map(({ id }) => id)).toEqual(['sun']);
});

it('holds a row under a strange key for nobody', () => {
  for (const key of [1, 'boat', 'fr/boat', ['en/boat']]) expect(read(row, key)).toEqual([]);
});
