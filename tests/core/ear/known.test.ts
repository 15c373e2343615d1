import { expect, it } from 'vitest';
import { knownIn, knownOf, nextToSay, ROUNDS } from '../../../src/core/ear/known.ts';
import { EAR_PHRASES } from '../../../src/core/ear/phrases.ts';
import { aPerson } from '../../fakes/said-phrases.ts';

it('learns every phrase in one round or the other, commands first and digits apart', () => {
  expect([...ROUNDS.phrases, ...ROUNDS.digits]).toEqual([...EAR_PHRASES]);
  expect(ROUNDS.phrases[0]).toBe('done');
  expect(ROUNDS.digits).toHaveLength(11);
});

it('tells what was said from what was not, and from what the plain ear alone can tell', () => {
  const plain = aPerson(['done', 'seven']);
  expect(knownOf(plain, 'done', 'plain')).toBe('yes');
  expect(knownOf(plain, 'done', 'learned')).toBe('anew');
  expect(knownOf(plain, 'hush', 'learned')).toBe('no');
  expect(knownOf(aPerson(['done'], {}, 'learned'), 'done', 'learned')).toBe('yes');
  expect(knownOf(aPerson(['done'], {}, 'learned'), 'done', 'plain')).toBe('yes');
  expect(knownOf({ ...plain, sayings: { done: [] } }, 'done', 'plain')).toBe('no');
  expect(knownIn(plain, 'phrases', 'plain')).toEqual(['done']);
  expect(knownIn(plain, 'digits', 'plain')).toEqual(['seven']);
  expect(knownIn(plain, 'phrases', 'learned')).toEqual([]);
});

it('goes to the next that is left, behind a phrase and then from the top', () => {
  const some = aPerson(['done', 'sayAgain', 'yes']);
  expect(nextToSay(some, 'phrases', 'plain')).toBe('takeBack');
  expect(nextToSay(some, 'phrases', 'plain', 'takeBack')).toBe('longer');
  expect(nextToSay(some, 'phrases', 'plain', 'no')).toBe('takeBack');
  expect(nextToSay(some, 'phrases', 'learned')).toBe('done');
  const most = aPerson(ROUNDS.phrases.filter((phrase) => phrase !== 'ready'));
  expect(nextToSay(most, 'phrases', 'plain', 'done')).toBe('ready');
  expect(nextToSay(most, 'phrases', 'plain', 'ready')).toBeNull();
  expect(nextToSay(aPerson(ROUNDS.digits), 'digits', 'plain')).toBeNull();
});
