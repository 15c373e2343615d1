import { Refused, type Misread } from './read-fields.ts';

/** What a row says of somebody is told to nobody: of a text only that it is one. */
const untold = (misread: Misread, path: string): Misread => ({
  ...misread,
  path: misread.path === 'the file' ? path : `${path}.${misread.path}`,
  got: misread.got.startsWith('"') ? 'a text' : misread.got,
});

/** What `one` reads, or what was refused there, named from `path` on and without what stands in a text. */
export const readUntold = <T>(
  path: string,
  one: () => T,
):
  | { readonly read: T; readonly reason: null }
  | { readonly read: null; readonly reason: Misread } => {
  try {
    return { read: one(), reason: null };
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return { read: null, reason: untold(error.misread, path) };
  }
};
