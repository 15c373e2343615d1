import { afterEach, expect, it, vi } from 'vitest';
import { bandsIn } from '../../../src/parts/whole-lines.ts';

afterEach(() => vi.restoreAllMocks());

it('asks where lines stand that are seen, and of none that are there for ears alone', () => {
  // A DOM without a layout: each word's line is where its own box says.
  Range.prototype.getClientRects = function (this: Range) {
    const top = Number((this.startContainer as Element).parentElement?.dataset['top']);
    return [{ top, bottom: top + 10, height: 10 }] as unknown as DOMRectList;
  };
  document.body.innerHTML = '<div><h1 data-top="0">ears</h1><p data-top="20">eyes</p></div>';
  const tops = () => bandsIn(document.body).map(({ top }) => Math.floor(top));
  expect(tops()).toEqual([1, 21]);
  Object.defineProperty(document.querySelector('h1'), 'offsetWidth', { value: 1 });
  expect(tops()).toEqual([21]);
});
