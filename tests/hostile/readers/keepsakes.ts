import type { Keepsake } from '../../../src/core/log/about.ts';
import { readUntold } from '../../../src/core/formula/read-untold.ts';
import { readKeepsakeKey } from '../../../src/core/log/keepsake-key.ts';
import { readAbout, readId, readSaid } from '../../../src/core/log/read-about.ts';
import { isVoiceType, readKeepsake, readKept } from '../../../src/core/log/read-keepsake.ts';
import {
  isKeepsakeLine,
  readSavedKeepsakes,
  savedKeepsakes,
} from '../../../src/core/log/saved-keepsakes.ts';
import { readPictureHead } from '../../../src/core/pictures/picture-head.ts';
import { isPictureLine, readSavedPicture } from '../../../src/core/pictures/saved-picture.ts';
import { either, leftOut, ofBytes, ofData, ofText, orNothing, type Reader } from '../reader.ts';

const SAID = {
  ...{ tags: ['best', 'for the mill'], hidden: false, note: 'Sour,\nbut good', ate: ['n1'] },
  ...{ home: true, at: 1_935_000_000_000, erased: 5 },
};
const PHOTO = {
  ...{ id: 'a', start: 'f-1', kind: 'photo' as const, at: 5, type: 'image/jpeg' },
  bytes: Uint8Array.from([0xff, 0xd8, 0xff, 1]),
} satisfies Keepsake;
const VOICE = {
  ...{ id: 'b', start: 'f-1', kind: 'voice' as const, at: 5, type: 'audio/webm;codecs=opus' },
  bytes: Uint8Array.of(1, 2),
} satisfies Keepsake;
const asSaved = ({ bytes: _, ...head }: Keepsake, data: string) => ({ ...head, data });
/** What is said and kept of bakes, as lines of a saved file. */
export const KEEPSAKE_LINES = savedKeepsakes(
  {
    said: new Map([['f-1', readAbout(SAID).said!]]),
    kept: [asSaved(PHOTO, '/9j/AQ=='), asSaved(VOICE, 'AQID')],
    gone: new Set(['f-1/q']),
  },
  { notes: true, photos: true, voices: true },
);

/** A picture of each kind, by its first bytes. */
const ascii = (text: string): number[] => [...text].map((letter) => letter.charCodeAt(0));
const PICTURES = [
  [0xff, 0xd8, 0xff, 0xe1, 0, 6, 1, 2, 3, 4, 0xff, 0xc2, 0, 17, 8, 1, 0xe0, 2, 0x80, 3],
  [0x89, ...ascii('PNG'), 13, 10, 26, 10, 0, 0, 0, 13, ...ascii('IHDR'), 0, 0, 4, 0, 0, 0, 3, 0],
  [...ascii('GIF89a'), 0x40, 1, 0xf0, 0],
  [...ascii('RIFF'), 0, 0, 0, 0, ...ascii('WEBPVP8L'), 0, 0, 0, 0, 0x2f, 0x7f, 0xc2, 0x77, 0],
  [0, 0, 0, 24, ...ascii('ftypheic'), 0, 0, 0, 0],
].map((bytes) => Uint8Array.from(bytes));

const asMap = (value: unknown): ReadonlyMap<unknown, unknown> =>
  value instanceof Map ? value : new Map();

/** Readers of what is said and kept of bakes, and of pictures. */
export const KEEPSAKE_READERS: readonly Reader[] = [
  {
    of: 'core/log/read-about.ts readAbout',
    make: ofData(SAID),
    read: (value: unknown) => {
      const { said, reason } = readAbout(value);
      return either(said, reason);
    },
  },
  {
    of: 'core/log/read-about.ts readSaid',
    make: ofData(new Map([['f-1', SAID]])),
    read: (value: unknown) => {
      const { said, misread } = readSaid(asMap(value));
      return leftOut(said, misread);
    },
    share: 0.5,
  },
  {
    of: 'core/log/read-about.ts readId',
    make: ofText('f-1', '0abc-17'),
    read: (value: unknown) => {
      const { read, reason } = readUntold('id', () => readId(value, ''));
      return either(read, reason);
    },
    again: true,
    share: 0.5,
  },
  {
    of: 'core/log/read-keepsake.ts readKeepsake',
    make: ofData(PHOTO, VOICE),
    read: (value: unknown) => {
      const id = typeof value === 'object' && value !== null && 'id' in value ? value.id : 'a';
      const key = id === 'b' ? 'f-1/b' : 'f-1/a';
      const { kept, reason } = readKeepsake(key, value);
      return either(kept, reason);
    },
  },
  {
    of: 'core/log/read-keepsake.ts readKept',
    make: ofData(
      new Map<unknown, unknown>([
        ['f-1/a', PHOTO],
        ['f-1/b', VOICE],
        ['f-1/c', { gone: true }],
      ]),
    ),
    read: (value: unknown) => {
      const { kept, misread } = readKept(asMap(value));
      return leftOut(kept, misread);
    },
    share: 0.5,
  },
  {
    of: 'core/log/keepsake-key.ts readKeepsakeKey',
    make: ofText('f-1/a'),
    read: (value: unknown) => orNothing(readKeepsakeKey(value)),
    share: 0.5,
  },
  {
    of: 'core/log/read-keepsake.ts isVoiceType',
    make: ofText('audio/webm;codecs=opus', 'audio/mp4', 'audio/ogg; codecs="opus"'),
    read: (type: string) => orNothing(isVoiceType(type)),
    share: 0.5,
  },
  {
    of: 'core/log/saved-keepsakes.ts readSavedKeepsakes',
    make: ofData(KEEPSAKE_LINES),
    read: (value: unknown) => {
      const lines = Array.isArray(value) ? (value as unknown[]) : [value];
      lines.forEach(isKeepsakeLine);
      const { saved, reason } = readSavedKeepsakes(lines);
      return either(saved, reason);
    },
  },
  {
    of: 'core/pictures/saved-picture.ts readSavedPicture',
    make: ofData({ picture: 'lane-wheat', jpeg: '/9j/Bw==' }),
    read: (value: unknown) => {
      if (!isPictureLine(value)) return { refused: null };
      const { saved, reason } = { reason: null, ...readSavedPicture(value) };
      return either(saved, reason);
    },
    again: true,
  },
  {
    of: 'core/pictures/picture-head.ts readPictureHead',
    make: ofBytes(...PICTURES),
    read: (bytes: Uint8Array) => orNothing(readPictureHead(bytes)),
  },
];
