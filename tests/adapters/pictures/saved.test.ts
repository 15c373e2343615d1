import { expect, it } from 'vitest';
import { jpegOf, toSaved } from '../../../src/adapters/pictures/saved.ts';
import { readSavedPicture } from '../../../src/core/pictures/saved-picture.ts';
import { jpeg } from '../../fakes/memory-pictures.ts';

it('is written as letters that its reader takes, and comes back byte by byte', () => {
  const large = Uint8Array.from({ length: 150_001 }, (_, i) => (i * 37) % 256);
  large.set(jpeg());
  const saved = toSaved(
    new Map([
      ['lane-wheat', { now: large, before: jpeg(9) }],
      ['olive-seed', { now: null, before: jpeg(9) }],
      ['harbour-rye', { now: jpeg(1, 2) }],
    ]),
  );
  expect(saved.map(({ picture }) => picture)).toEqual(['lane-wheat', 'harbour-rye']);
  for (const one of saved) expect(readSavedPicture({ ...one }).saved).toEqual(one);
  expect(saved.map(jpegOf)).toEqual([large, jpeg(1, 2)]);
});

it.each([
  ['picture', { picture: '../etc', jpeg: '/9j/AAAA' }],
  ['picture', { picture: 7, jpeg: '/9j/AAAA' }],
  ['jpeg', { picture: 'lane-wheat' }],
  ['jpeg', { picture: 'lane-wheat', jpeg: 'iVBORw0KGgo=' }],
  ['jpeg', { picture: 'lane-wheat', jpeg: '/9j/AAA' }],
  ['jpeg', { picture: 'lane-wheat', jpeg: '/9j/<b>=' }],
  ['jpeg', { picture: 'lane-wheat', jpeg: `/9j/${'A'.repeat(266_668)}` }],
])('a line is refused by %s (case %#)', (path, line) => {
  expect(readSavedPicture(line)).toMatchObject({ saved: null, reason: { path } });
});
