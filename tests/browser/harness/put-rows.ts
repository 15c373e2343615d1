import type { LogRecord } from '../../../src/core/records/record.ts';

const PUT_ROWS = `async (rows) => {
  const asked = indexedDB.open('loafward', 1);
  asked.onupgradeneeded = () => {
    asked.result.createObjectStore('log');
    asked.result.createObjectStore('settings');
  };
  const database = await new Promise((then, no) => {
    asked.onsuccess = () => then(asked.result);
    asked.onerror = no;
  });
  const writing = database.transaction('log', 'readwrite');
  for (const row of rows) writing.objectStore('log').add(row, row.seq);
  await new Promise((then, no) => { writing.oncomplete = then; writing.onabort = no; });
  database.close();
}`;

/** What a page evaluates to have this log, which it did not have; an app that is open there does not see it. */
export const putRows = (records: readonly LogRecord[]): string =>
  `(${PUT_ROWS})(${JSON.stringify(records)})`;

const PUT_SETTING = `async (name, value) => {
  const asked = indexedDB.open('loafward', 1);
  const database = await new Promise((then, no) => {
    asked.onsuccess = () => then(asked.result);
    asked.onerror = no;
  });
  const writing = database.transaction('settings', 'readwrite');
  writing.objectStore('settings').put(value, name);
  await new Promise((then, no) => { writing.oncomplete = then; writing.onabort = no; });
  database.close();
}`;

/** The same for a setting of the tablet, in a database that is there already. */
export const putSetting = (name: string, value: unknown): string =>
  `(${PUT_SETTING})(${JSON.stringify(name)}, ${JSON.stringify(value)})`;

const EMPTY_ROWS = `async () => {
  const asked = indexedDB.open('loafward', 1);
  const database = await new Promise((then, no) => {
    asked.onsuccess = () => then(asked.result);
    asked.onerror = no;
  });
  const writing = database.transaction('log', 'readwrite');
  writing.objectStore('log').clear();
  await new Promise((then, no) => { writing.oncomplete = then; writing.onabort = no; });
  database.close();
}`;

/** The same to have an empty log: another may be put there then. */
export const emptyRows = (): string => `(${EMPTY_ROWS})()`;
