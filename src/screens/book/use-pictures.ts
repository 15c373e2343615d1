import { createSignal, type Accessor } from 'solid-js';
import type { BookPictures } from '../book-pictures.ts';
import type { House } from '../house.ts';

/** The Book's pictures once they have come; null: not yet, or they cannot be had. */
export function usePictures(house: House): Accessor<BookPictures | null> {
  const [pictures, setPictures] = createSignal<BookPictures | null>(null);
  house.pictures().then(
    (its) => setPictures(() => its),
    () => undefined,
  );
  return pictures;
}
