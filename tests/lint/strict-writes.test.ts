import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Each transaction that a file begins without a word of its own that it is to be flushed: 'file: the call'. */
function looseIn(path: string, text: string): string[] {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const strict = new Set<string>();
  const isStrict = (node: ts.Node | undefined): boolean =>
    node !== undefined &&
    (ts.isAsExpression(node)
      ? isStrict(node.expression)
      : ts.isIdentifier(node)
        ? strict.has(node.text)
        : ts.isObjectLiteralExpression(node) &&
          node.properties.some((one) => one.getText(file) === `durability: 'strict'`));
  const loose: string[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isVariableDeclaration(node) && ts.isIdentifier(node.name) && isStrict(node.initializer))
      strict.add(node.name.text);
    if (
      ts.isCallExpression(node) &&
      ts.isPropertyAccessExpression(node.expression) &&
      node.expression.name.text === 'transaction' &&
      !isStrict(node.arguments[2])
    )
      loose.push(`${path}: ${node.getText(file)}`);
    ts.forEachChild(node, look);
  };
  look(file);
  return loose;
}

const files = ['src', 'machines'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(folder, name)),
);
const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');

test('every transaction is begun in one place, and asks to be flushed before it is called done', () => {
  const begin = files.filter((path) => textOf(path).includes('.transaction('));
  expect(begin).toEqual(['src/adapters/database.ts']);
  expect(begin.flatMap((path) => looseIn(path, textOf(path)))).toEqual([]);
});

test('the settings’ library never opens a database of its own, which it could not have flushed', () => {
  const using = files.filter((path) => textOf(path).includes(`from 'idb-keyval'`));
  expect(using).toEqual(['src/adapters/settings.ts']);
  const text = textOf(using[0]!);
  expect(text).toContain(`import { get, set, type UseStore } from 'idb-keyval'`);
  const calls = text.match(/\b[gs]et(<\w+>)?\(key, .*\)/g) ?? [];
  expect(calls).toHaveLength(2);
  for (const call of calls) expect(call).toMatch(/, useStore\)$/);
});

test.each([
  `db.transaction('log', 'readwrite');`,
  `db.transaction('log', 'readwrite', { durability: 'relaxed' });`,
  `const how = { durability: 'default' }; db.transaction('log', 'readwrite', how);`,
])('would find one that does not: %s', (text) => {
  expect(looseIn('a.ts', text)).toHaveLength(1);
});

test('takes one that does', () => {
  expect(
    looseIn(
      'a.ts',
      `const how = { durability: 'strict' } as const; db.transaction('log', 'readwrite', how);`,
    ),
  ).toEqual([]);
});
