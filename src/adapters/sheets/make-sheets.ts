import type { Sheets } from '../../../machines/ports.ts';
import { codeOf } from './code.ts';
import { readLink, writeLink } from './link.ts';
import { readFile } from './read-file.ts';
import { writeXlsx } from './write-xlsx.ts';

/** Files, links and codes; `address` is where this program is opened, with nothing behind its #. */
export const makeSheets = (address: string): Sheets => ({
  read: readFile,
  xlsx: writeXlsx,
  link(formula) {
    const held = writeLink(formula);
    return held === null ? null : `${address}${held}`;
  },
  readLink,
  code: codeOf,
  async copy(text) {
    try {
      await navigator.clipboard.writeText(text);
      return true;
    } catch {
      return false;
    }
  },
});
