import type { Circle } from '../../../src/core/circle/circle.ts';
import { rowOf, WAYS_ROW } from '../../../src/core/circle/read-circle.ts';
import { LISTS } from '../../../src/core/circle/row.ts';

const PUT = `async (rows) => {
  const asked = indexedDB.open('loafward-circle', 1);
  asked.onupgradeneeded = () => asked.result.createObjectStore('circle');
  const database = await new Promise((then, no) => {
    asked.onsuccess = () => then(asked.result);
    asked.onerror = no;
  });
  const writing = database.transaction('circle', 'readwrite');
  for (const [key, row] of rows) writing.objectStore('circle').put(row, key);
  await new Promise((then, no) => { writing.oncomplete = then; writing.onabort = no; });
  database.close();
}`;

/** What a page evaluates to have this circle on its disk; one that was opened there before does not see it. */
export function putCircle({ ways, ...lists }: Partial<Circle>): string {
  const rows: (readonly [string, unknown])[] = LISTS.flatMap((list) =>
    (lists[list] ?? []).map((thing) => [rowOf(list, thing.id), thing] as const),
  );
  if (ways) rows.push([WAYS_ROW, ways]);
  return `(${PUT})(${JSON.stringify(rows)})`;
}
