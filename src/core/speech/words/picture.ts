import { inTongue } from '../tongue.ts';

/** A formula's picture. Shown, never said. */
export const picture = inTongue('picture', 'picture', {
  title: 'Its picture',
  none: 'No picture yet',
  /** What becomes of it, before it is taken. */
  detail: 'Kept small, without place or time. In the saved file; never shared.',
  alt: 'The picture of {name}',
  camera: 'Use the camera',
  choose: 'Choose one',
  drop: 'Take it away',
  busy: 'Making it small',
} as const);

/** Why a picture was not taken. Nothing has changed then, and each says so. */
export const pictureTold = inTongue('picture', 'pictureTold', {
  none: 'That file is not a picture. Nothing was changed: choose another.',
  large:
    'That picture is too large: at most 20 megabytes and 60 million pixels. Nothing was changed.',
  broken: 'That picture cannot be read here. Nothing was changed: choose another.',
  full: 'The tablet is full. Nothing was changed: make room, then try again.',
  closed: 'This browser will not let pictures be kept. Nothing was changed.',
  /** Of the file that is saved. */
  leftOut: 'The pictures could not be read. The saved file holds all but them.',
} as const);
