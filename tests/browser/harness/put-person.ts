import type { Page } from 'playwright-core';
import type { Frames } from '../../../src/core/ear/frames.ts';
import type { EarPerson } from '../../../src/core/ear/person.ts';

const PUT = `async (person) => {
  const asked = indexedDB.open('loafward-voices', 1);
  asked.onupgradeneeded = () => asked.result.createObjectStore('voices');
  const database = await new Promise((then, no) => {
    asked.onsuccess = () => then(asked.result);
    asked.onerror = no;
  });
  const frames = (its) => its && { ...its, data: Float32Array.from(its.data) };
  const saying = ({ plain, learned }) => ({ plain: frames(plain), learned: frames(learned) });
  const sayings = Object.fromEntries(
    Object.entries(person.sayings).map(([phrase, all]) => [phrase, all.map(saying)]),
  );
  const writing = database.transaction('voices', 'readwrite');
  writing.objectStore('voices').put({ ...person, sayings, tongue: 'en' }, 'en/' + person.id);
  await new Promise((then, no) => { writing.oncomplete = then; writing.onabort = no; });
  database.close();
}`;

/** Somebody whose voice is known by what an engine made of it; an ear that is open does not see them. */
export async function putPerson(page: Page, person: EarPerson): Promise<void> {
  const plainly = (frames: Frames | null) => frames && { ...frames, data: [...frames.data] };
  const sayings = Object.entries(person.sayings).map(([phrase, all]) => [
    phrase,
    all.map(({ plain, learned }) => ({ plain: plainly(plain), learned: plainly(learned) })),
  ]);
  const row = { ...person, sayings: Object.fromEntries(sayings) as unknown };
  await page.evaluate(`(${PUT})(${JSON.stringify(row)})`);
}
