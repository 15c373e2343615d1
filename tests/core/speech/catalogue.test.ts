import { expect, test } from 'vitest';
import { closes, LISTS } from '../../../src/core/records/lists.ts';
import { heed } from '../../../src/core/speech/words/heed.ts';
import { questions } from '../../../src/core/speech/words/questions.ts';
import { bakeWords } from '../../../src/core/speech/words/bake-words.ts';
import { ovenWords } from '../../../src/core/speech/words/oven.ts';
import { showHeats } from '../../../src/core/speech/heats.ts';
import { fill, wants } from '../../../src/core/speech/fill.ts';
import { allTexts, sentencesOf, textsOf, wordsOf } from './support/catalogue.ts';
import { grade } from './support/grade.ts';

/** What a stage may name. */
const OF_STAGES = [
  ...Object.keys(showHeats({ heat: 'C', weight: 'g' })),
  ...'grams time minutes pot load loads loaf loaves celsius crumbHeat touch touches keepBack until'.split(
    ' ',
  ),
];
/** What other screens and troubles may name besides. */
const OF_OTHERS =
  'bake place word means title by words step steps done of file name stage part date note count seconds rate likely version seq path expected got last least most range unit percent days ratio filling short salt hydration pff share flour water dough rise fridge rye lines waits dial line percent goal length other baked counted grams how kinds loaves n piece value address flours pff fillings letter sum bring was allergens pct bowl bowls shares is head bread begun cause colour day ended late left next number one out sign sure times what heat until from'.split(
    ' ',
  );

/** Who says so is written as they write themselves. */
const isSource = (where: string): boolean => /^care-page\..*\.by$/.test(where);

test('the whole catalogue is looked at', () => {
  const files = new Set(allTexts.map(({ where }) => where.split('.')[0]));
  for (const file of ['oven', 'bulk', 'signs', 'before', 'verdicts', 'trouble', 'gate', 'kitchen'])
    expect(files).toContain(file);
  expect(allTexts.length).toBeGreaterThan(500);
});

test('stages use the known names only, and so do the other texts', () => {
  for (const w of [...Object.values(bakeWords), ...Object.values(ovenWords)])
    for (const name of wants(Object.values(w).join(' '))) expect(OF_STAGES).toContain(name);
  for (const { where, text } of allTexts)
    for (const name of wants(text)) expect([...OF_STAGES, ...OF_OTHERS], where).toContain(name);
});

test('every text can be filled, and none has a stray brace', () => {
  const values = Object.fromEntries([...OF_STAGES, ...OF_OTHERS].map((name) => [name, 'x']));
  for (const { where, text } of allTexts) expect(fill(text, values), where).not.toMatch(/[{}]/);
});

test('no text writes a unit of heat or weight: it comes with the value', () => {
  for (const { where, text } of allTexts)
    expect(text.replace(/\{\w+\}/g, ''), where).not.toMatch(
      /°|\b(g|kg|oz|lbs?|grams?|ounces?|pounds?|degrees?|celsius|fahrenheit)\b/i,
    );
});

test('no word is shouted, and no text is empty or badly spaced', () => {
  for (const { where, text } of allTexts) {
    if (!isSource(where))
      expect(text.replace(/\{\w+\}/g, ''), where).not.toMatch(/\b\p{Lu}{2,}\b/u);
    expect(text, where).toBe(text.trim());
    expect(text, where).not.toBe('');
    expect(text, where).not.toMatch(/ {2}| [,.?:;]|['"]|!/);
  }
});

test('nothing is promised, tasted or declared lawful', () => {
  for (const { where, text } of allTexts) {
    if (isSource(where)) continue;
    expect(text.replace(/no tasting/gi, ''), where).not.toMatch(
      /\b(tast\w*|safe\w*|unsafe|validat\w*|legal\w*|guarantee\w*|proven|certain\w*|perfect\w*)\b/i,
    );
    expect(text, where).not.toMatch(/\b(streak|points|hurry|clever|well done|failed)\b/i);
    expect(text, where).not.toMatch(/\b(half past|quarter to|o.clock)\b/i);
  }
});

test('sentences stay short everywhere: 14 words, reasons and troubles 20', () => {
  const long = ['notices', 'trouble', 'kitchen', 'care-page'];
  for (const { where, text } of allTexts) {
    const most = long.includes(where.split('.')[0] ?? '') ? 20 : 14;
    for (const s of sentencesOf(text)) expect(wordsOf(s).length, s).toBeLessThanOrEqual(most);
  }
});

test('labels that are pressed are short', () => {
  for (const [list, lines] of Object.entries(questions))
    for (const q of lines) {
      expect(wordsOf(q.ask).length, `${list} ${q.ask}`).toBeLessThanOrEqual(8);
      for (const s of sentencesOf(q.detail ?? ''))
        expect(wordsOf(s).length, s).toBeLessThanOrEqual(12);
      for (const o of [q.slab, ...q.tiles]) expect(wordsOf(o.label).length).toBeLessThanOrEqual(4);
      expect(wordsOf(q.slab.label).length, q.slab.label).toBeLessThanOrEqual(3);
    }
});

test('the lists ask what the machines wait for', () => {
  expect(Object.keys(questions).sort()).toEqual(Object.keys(LISTS).sort());
  for (const [list, items] of Object.entries(LISTS))
    expect(questions[list as keyof typeof questions].map((q) => q.item).sort()).toEqual(
      [...items].sort(),
    );
});

test('every answer that leaves its item open says what to do, and the big press never does', () => {
  let open = 0;
  for (const list of ['beforeStart', 'beforeOven'] as const)
    for (const q of questions[list]) {
      expect(closes(list, q.item, q.slab.value), q.item).toBe(true);
      for (const { value } of q.tiles)
        if (!closes(list, q.item, value)) {
          open++;
          expect(heed[list][q.item]?.[value], `${list} ${q.item} ${value}`).toMatch(/\.$/);
        }
    }
  expect(open).toBeGreaterThan(5);
});

test('what is to be heeded belongs to an answer that exists', () => {
  for (const [list, items] of Object.entries(heed))
    for (const [item, values] of Object.entries(items)) {
      const q = questions[list as keyof typeof heed].find((one) => one.item === item);
      const known = q === undefined ? [] : [q.slab, ...q.tiles].map((o) => o.value);
      for (const value of Object.keys(values)) expect(known, `${list} ${item}`).toContain(value);
    }
});

const prose = (...files: string[]) => textsOf(...files).filter((t) => /\w.*[.?]$/.test(t));

test('grown-up text reads at grade 6 or below, pooled and file by file', () => {
  const pooled = new Set(allTexts.map((f) => f.text).filter((t) => /\w.*[.?]$/.test(t)));
  expect(grade([...pooled])).toBeLessThanOrEqual(6);
  for (const text of pooled) expect(grade([text]), text).toBeLessThanOrEqual(10);
  for (const file of new Set(allTexts.map(({ where }) => where.split('.')[0] ?? ''))) {
    const texts = prose(file);
    if (texts.length > 0) expect(grade(texts), file).toBeLessThanOrEqual(6);
  }
});

test('tasks for a child read at grade 3 or below', () => {
  const tasks = allTexts.filter(({ where }) => where.includes('childTasks')).map((f) => f.text);
  expect(tasks.length).toBeGreaterThan(9);
  for (const task of tasks) expect(grade([task]), task).toBeLessThanOrEqual(3);
});
