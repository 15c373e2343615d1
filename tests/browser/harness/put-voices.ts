import type { EarPhrase } from '../../../src/core/ear/phrases.ts';
import type { HandMark } from '../../../src/core/small/marks.ts';

const PUT = `async (people) => {
  const asked = indexedDB.open('loafward-voices', 1);
  asked.onupgradeneeded = () => asked.result.createObjectStore('voices');
  const database = await new Promise((then, no) => {
    asked.onsuccess = () => then(asked.result);
    asked.onerror = no;
  });
  const saying = () => ({
    plain: { count: 1, size: 2, data: Float32Array.of(1, 2) },
    learned: null,
  });
  const writing = database.transaction('voices', 'readwrite');
  for (const { mark, child, tongue, phrases } of people) {
    const sayings = Object.fromEntries(phrases.map((one) => [one, [saying(), saying(), saying()]]));
    const row = { id: mark, mark, child, tongue, sayings };
    writing.objectStore('voices').put(row, tongue + '/' + mark);
  }
  await new Promise((then, no) => { writing.oncomplete = then; writing.onabort = no; });
  database.close();
}`;

/** Somebody who is known by what he has said; how it sounded is nobody's. */
export interface PutVoice {
  readonly mark: HandMark;
  readonly child: boolean;
  readonly tongue: string;
  readonly phrases: readonly EarPhrase[];
}

/** What a page evaluates to know these voices; an ear that is open does not see them. */
export const putVoices = (people: readonly PutVoice[]): string =>
  `(${PUT})(${JSON.stringify(people)})`;
