import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));

const WORD = /\p{L}{2}/u;
/** What is seen or heard of an element. */
const SHOWN = /^(aria-label|alt|title|label|placeholder|headline|detail|care|then)$/;
/** Joins values into a sentence: another tongue has another word there. */
const JOINS = /\s(to|and|of|or|days?|loaves)\s/;
/** English is what these are about. */
const ENGLISH = ['src/core/speech/aloud.ts'];

/** Words of a file that a baker could see or hear and that stand in no catalogue, each with where it stands. */
function strays(path: string, text: string): string[] {
  const kind = path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, kind);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    // What is thrown is read by whoever mends it.
    if (ts.isNewExpression(node) || ts.isTypeNode(node)) return;
    const isStray =
      (ts.isJsxText(node) && WORD.test(node.text)) ||
      (ts.isJsxAttribute(node) &&
        SHOWN.test(node.name.getText()) &&
        node.initializer !== undefined &&
        ts.isStringLiteral(node.initializer) &&
        WORD.test(node.initializer.text)) ||
      (ts.isTemplateExpression(node) && JOINS.test(node.getText().replace(/\$\{[^}]*\}/g, 'x')));
    if (isStray) found.push(`${path}: ${node.getText().trim()}`);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

test('no word that a baker sees or hears stands outside of a catalogue', () => {
  const files = ['screens', 'parts', 'app', 'core/speech'].flatMap((folder) =>
    readdirSync(`${root}src/${folder}`, { recursive: true, encoding: 'utf8' })
      .map((file) => `src/${folder}/${file.replaceAll('\\', '/')}`)
      .filter((file) => /\.tsx?$/.test(file) && !/speech\/(words|fr|de)\//.test(file)),
  );
  expect(files.length).toBeGreaterThan(300);
  const found = files
    .filter((file) => !ENGLISH.includes(file))
    .flatMap((file) => strays(file, readFileSync(root + file, 'utf8')));
  expect(found).toEqual([]);
});

test('each way of writing one is found, and what is thrown or named is none', () => {
  for (const text of ['<p>Hello</p>', '<img alt="A bowl" />', '`${a} to ${b}`', '`${n} days left`'])
    expect(strays('a.tsx', `const x = ${text};`), text).toHaveLength(1);
  for (const text of [
    '<p>{w.a}</p>',
    '<p class="act-words" />',
    'new Error(`no ${a} of ${b}`)',
    '`${a} ${b}`',
  ])
    expect(strays('a.tsx', `const x = ${text};`), text).toEqual([]);
});
