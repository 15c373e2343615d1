import type { Pictures } from '../../../machines/ports.ts';
import { makePictureStore } from './picture-store.ts';
import { shrink } from './shrink.ts';

/** @param writes false in a rehearsal: its pictures last as long as the page */
export function openPictures(writes: boolean): Pictures {
  const { load, write } = makePictureStore();
  return { load, write: writes ? write : () => Promise.resolve(), shrink: (file) => shrink(file) };
}
