import { collect, type Found } from '../../../../assets/make/voice/collect.ts';

/** Every text of every file in the catalogue; a new file is found by itself. */
export const allTexts: readonly Found[] = Object.entries(
  import.meta.glob<Record<string, unknown>>('../../../../src/core/speech/words/*.ts', {
    eager: true,
  }),
).flatMap(([path, exports]) =>
  collect(exports, path.replace(/^.*\/words\//, '').replace('.ts', '')),
);

/** Texts of some files only. */
export const textsOf = (...files: readonly string[]): readonly string[] =>
  allTexts.filter(({ where }) => files.includes(where.split('.')[0] ?? '')).map((f) => f.text);

/** One word for anything between blanks that holds a letter, a digit or a placeholder. */
export const wordsOf = (text: string): readonly string[] =>
  text.split(/\s+/).filter((w) => /[\p{L}\p{N}{]/u.test(w));

/** Sentences end at a full stop, question or exclamation mark before a blank or the end. */
export const sentencesOf = (text: string): readonly string[] =>
  text.split(/(?<=[.?!])[”]?(?:\s+|$)/).filter((s) => wordsOf(s).length > 0);
