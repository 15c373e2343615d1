import { expect, it } from 'vitest';
import { formulasBeside } from '../../src/core/records/formulas-beside.ts';
import type { Log } from '../../src/core/records/merge-logs.ts';
import { shippedFormula } from './formula/shipped.ts';
import { makeRow } from '../fakes/records.ts';

const WHEAT = shippedFormula('lane-wheat');
const SHIPPED = new Set([WHEAT.id]);

/** "a1" writes version 1 of formula a, "-a" takes it off, anything else is a press; each fact has its own id. */
const log = (device: string, ...facts: readonly string[]): Log =>
  facts.map((what, i) => {
    const row = makeRow(i + 1);
    const { device: _device, kind: _kind, ...base } = { ...row.fact, device, id: `${device}${i}` };
    const [, off, id, version] = /^(-?)([a-z-]+)(\d*)$/.exec(what)!;
    const formula = { ...WHEAT, id: id!, version: Number(version) };
    const said = { id: base.id, at: base.at, raw: base.raw, device };
    if (off) return { ...row, fact: { ...said, kind: 'formulaOff', formula: id! } };
    return version ? { ...row, fact: { ...said, kind: 'formula', formula } } : row;
  });
const told = (others: readonly Log[], own: Log = []): string =>
  formulasBeside(others, own, SHIPPED)
    .map(({ fact }) => fact.id)
    .join(' ');

it('has what others wrote of their own formulas, in their order', () => {
  const harbour = log('h', 'press', 'a1', 'lane-wheat2', 'b1', '-a', '-lane-wheat', 'a2');
  expect(told([harbour])).toBe('h1 h3 h4 h6');
});

it('leaves out what was begun here, not what only goes on here', () => {
  const harbour = log('h', 'a1', 'b1');
  expect(told([harbour], log('c', 'a1'))).toBe('h1');
  expect(told([harbour], log('c', 'a2', '-b'))).toBe('h0 h1');
});

it('has each fact once where two logs begin alike, and one tablet’s where they do not', () => {
  const harbour = log('h', 'a1', 'b1');
  const branch = [...harbour.slice(0, 1), ...log('j', 'press', 'a2', 'b1').slice(1)];
  expect(told([harbour, branch])).toBe('h0 h1 j1');
  expect(told([harbour, log('k', 'a1', 'c1')])).toBe('h0 h1 k1');
});
