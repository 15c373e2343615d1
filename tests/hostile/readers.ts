import type { Reader } from './reader.ts';
import { FILE_READERS } from './readers/files.ts';
import { FORMULA_READERS } from './readers/formulas.ts';
import { HAND_READERS } from './readers/settings.ts';
import { KEEPSAKE_READERS } from './readers/keepsakes.ts';
import { KITCHEN_READERS } from './readers/kitchen.ts';
import { RECORD_READERS } from './readers/records.ts';

/** Every reader of what comes from outside: off the disk, out of a file or a link, from hands and voices. */
export const READERS: readonly Reader[] = [
  ...RECORD_READERS,
  ...KEEPSAKE_READERS,
  ...FILE_READERS,
  ...FORMULA_READERS,
  ...KITCHEN_READERS,
  ...HAND_READERS,
];
