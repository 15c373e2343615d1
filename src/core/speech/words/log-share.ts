import { inTongue } from '../tongue.ts';

/** Sharing one bake as a page that opens anywhere. */
export const logShare = inTongue('log-share', 'logShare', {
  title: 'Share this bake',
  detail: 'One page that opens on any device, with no network.',
  /** `sheet`: its readings alone. */
  in: 'In it: times, readings, calls, loads, weights and the chart.',
  out: 'Not in it: names, who ate it, voices.',
  note: 'Your words',
  noteNone: 'none',
  photos: 'Photos',
  photosNone: 'none',
  /** How many are in the page, or would be. */
  inPage: '{count} in it',
  outOfPage: 'left out',
  noteIn: 'in it',
  careNote: 'Look through what you typed: it may name somebody.',
  carePhotos: 'Look through the photos: they may show somebody.',
  slab: 'Hand it on',
  then: 'the page of this bake',
  back: 'Back',
  sheet: 'As a sheet',
  handed: {
    shared: 'Handed on.',
    saved: 'Saved in this device’s downloads.',
    left: 'Not handed on. It is still here.',
    failed: 'That did not work. Try again.',
  },
  fileName: '{name} {day}',
  file: {
    chart: 'Chart',
    first: 'At a glance',
    photo: 'Photo {n} of {count}',
    band: 'Hatched: four of five starters of that belief lie there. 1 is the usual speed.',
    lived:
      'Hours the dough lived: straight from reading to reading, by today’s dough clock. It forecast nothing.',
    marks: 'A cross is a reading kept as odd. A triangle is a call.',
    foot: 'Written by Loafward. It holds no script and asks no network.',
  },
} as const);
