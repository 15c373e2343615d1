import { describe, expect, it } from 'vitest';
import {
  beginsSentence,
  BELOW,
  faceOf,
  PAGES,
  pageAfter,
  writeKey,
  type Writing,
} from '../../../src/parts/letter-keys.ts';

const end = (text: string): Writing => ({ text, from: text.length, to: text.length });
const after = (text: string, key: string, most = 80): string => writeKey(end(text), key, most).text;

describe('the keys', () => {
  it('stand from a to z, and each once', () => {
    expect(PAGES.letters.join('')).toBe('abcdefghijklmnopqrstuvwxyz');
    const all = Object.values(PAGES).flat();
    expect(new Set(all).size).toBe(all.length - 1);
    expect(all.filter((key) => key === 'more')).toHaveLength(2);
  });
  it('are as many on each page, so that those below never move', () => {
    for (const page of Object.values(PAGES)) expect(page).toHaveLength(26);
    expect(BELOW).toEqual(['page', 'blank', 'erase', 'eraseWord']);
  });
  it('have every letter of French and German, and what stands in a note', () => {
    const all = new Set(Object.values(PAGES).flat());
    for (const sign of 'àâæçéèêëîïôœùûäöüß0123456789,.-?!:;()%') expect(all, sign).toContain(sign);
  });
  it('have capitals where there are any', () => {
    expect(faceOf('é', true)).toBe('É');
    expect(faceOf('é', false)).toBe('é');
    expect(faceOf('ß', true)).toBe('ß');
    expect(faceOf('more', true)).toBe('more');
  });
});

describe('pages', () => {
  it('are turned by one key, and once more for what is rare', () => {
    expect(pageAfter('letters', 'page')).toBe('signs');
    expect(pageAfter('signs', 'page')).toBe('letters');
    expect(pageAfter('signs', 'more')).toBe('more');
    expect(pageAfter('more', 'more')).toBe('signs');
    expect(pageAfter('more', 'page')).toBe('letters');
  });
  it('turn back by themselves where a word goes on, and stay for a number', () => {
    for (const key of ['é', 'ß', "'", '-', 'blank', 'capital']) {
      expect(pageAfter('signs', key), key).toBe('letters');
    }
    for (const key of ['7', '.', ',', '?', 'erase', 'eraseWord']) {
      expect(pageAfter('signs', key), key).toBe('signs');
    }
    expect(pageAfter('more', 'line')).toBe('letters');
  });
});

describe('a sentence', () => {
  it.each(['', ' ', 'It sang. ', 'Why? ', 'More!  ', 'It rose (well). ', 'First\n', '“Rye.” '])(
    'begins after “%s”',
    (before) => expect(beginsSentence(before)).toBe(true),
  );
  it.each(['It', 'It ', 'It sang.', '2.', 'rye, '])('goes on after “%s”', (before) =>
    expect(beginsSentence(before)).toBe(false),
  );
});

describe('writing', () => {
  it('puts a letter where the next one goes, and over what is marked', () => {
    expect(writeKey({ text: 'rye', from: 1, to: 1 }, 'e', 80)).toEqual({
      text: 'reye',
      from: 2,
      to: 2,
    });
    expect(writeKey({ text: 'rye and oats', from: 4, to: 7 }, '&', 80)).toEqual({
      text: 'rye & oats',
      from: 5,
      to: 5,
    });
    expect(after('rye', 'blank')).toBe('rye ');
    expect(after('rye', 'line')).toBe('rye\n');
  });
  it('stops at the most letters, but erases there', () => {
    expect(after('rye', 's', 3)).toBe('rye');
    expect(writeKey({ text: 'rye', from: 0, to: 1 }, 'd', 3).text).toBe('dye');
    expect(after('rye', 'erase', 3)).toBe('ry');
  });
  it('erases one letter, with its accent, or a drawn face whole', () => {
    expect(after('', 'erase')).toBe('');
    expect(after('blé', 'erase')).toBe('bl');
    expect(after('ble\u0301', 'erase')).toBe('bl');
    expect(after('good \u{1F35E}', 'erase')).toBe('good ');
    expect(writeKey({ text: 'rye', from: 1, to: 1 }, 'erase', 80)).toEqual({
      text: 'ye',
      from: 0,
      to: 0,
    });
  });
  it('erases a word with the blanks behind it, and what is marked first', () => {
    expect(after('Rye and ', 'eraseWord')).toBe('Rye ');
    expect(after('Rye and', 'eraseWord')).toBe('Rye ');
    expect(after('  ', 'eraseWord')).toBe('');
    expect(after('', 'eraseWord')).toBe('');
    expect(writeKey({ text: 'rye and oats', from: 3, to: 7 }, 'eraseWord', 80).text).toBe(
      'rye oats',
    );
  });
  it('leaves the text where a key only turns a page', () => {
    for (const key of ['page', 'more', 'capital']) expect(after('rye', key)).toBe('rye');
  });
});
