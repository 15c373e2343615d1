import type { About } from '../../../src/core/log/about.ts';

const PUT = `async (rows) => {
  const asked = indexedDB.open('loafward-keepsakes', 1);
  asked.onupgradeneeded = () => {
    asked.result.createObjectStore('said');
    asked.result.createObjectStore('kept');
  };
  const database = await new Promise((then, no) => {
    asked.onsuccess = () => then(asked.result);
    asked.onerror = no;
  });
  const writing = database.transaction('said', 'readwrite');
  for (const [key, row] of rows) writing.objectStore('said').put(row, key);
  await new Promise((then, no) => { writing.oncomplete = then; writing.onabort = no; });
  database.close();
}`;

/** What a page evaluates to have this said of bakes, by the ids of their starts; a Log that is open does not see it. */
export const putSaid = (said: Readonly<Record<string, About>>): string =>
  `(${PUT})(${JSON.stringify(Object.entries(said))})`;
