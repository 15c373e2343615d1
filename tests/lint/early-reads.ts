import { posix } from 'node:path';
import { types } from 'node:util';
import ts from 'typescript';

/** The exports of each catalogue, by the path of its file. */
export type Read = Readonly<Record<string, Readonly<Record<string, unknown>>>>;

/** Functions handed to these are called at once. */
const AT_ONCE = /^(map|flatMap|filter|find|some|every|reduce|forEach|toSorted|sort|from|push)$/;
/** Hands its words on as they are: they are read of the view it makes. */
const KEEPS = /^(inTongue|keys|hasOwn)$/;

const isPart = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;
const hasWords = (value: unknown): boolean =>
  typeof value === 'string' ||
  (isPart(value) && Object.values(value).some((one) => typeof one === 'string'));

/**
 * Words of a catalogue that are read when their module is loaded, and so in English for ever: each as a
 * sentence that begins with where it stands.
 */
export function earlyReads(path: string, text: string, catalogues: Read): string[] {
  const kind = path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, kind);
  /** What stands under a name of this module: parts of a catalogue. */
  const roots = new Map<string, unknown>();
  const found: string[] = [];
  const offend = (node: ts.Node, why: string): void => {
    const { line } = file.getLineAndCharacterOfPosition(node.getStart());
    found.push(`${path}:${line + 1} ${node.getText().slice(0, 60)}: ${why}.`);
  };

  for (const node of file.statements) {
    if (!ts.isImportDeclaration(node) || !ts.isStringLiteral(node.moduleSpecifier)) continue;
    const from = posix.normalize(posix.join(posix.dirname(path), node.moduleSpecifier.text));
    const exports = catalogues[from];
    const named = node.importClause?.namedBindings;
    if (!exports || !named || !ts.isNamedImports(named)) continue;
    for (const one of named.elements) {
      const value = exports[(one.propertyName ?? one.name).text];
      // Lines that stand in several catalogues are plain, and come to be a view in each of them.
      if (path in catalogues && !types.isProxy(value)) continue;
      roots.set(one.name.text, value);
    }
  }
  /** The value that an expression reads of a catalogue; undefined where it reads none. */
  const valueOf = (node: ts.Expression): unknown => {
    if (ts.isIdentifier(node)) return roots.get(node.text);
    if (ts.isPropertyAccessExpression(node) || ts.isElementAccessExpression(node)) {
      const of = valueOf(node.expression);
      if (!isPart(of)) return undefined;
      const key = ts.isPropertyAccessExpression(node) ? node.name : node.argumentExpression;
      if (ts.isIdentifier(key) && ts.isPropertyAccessExpression(node))
        return typeof of[key.text] === 'function' ? undefined : of[key.text];
      if (ts.isStringLiteralLike(key)) return of[key.text];
      return Object.values(of).find((one) => hasWords(one)) ?? Object.values(of)[0];
    }
    if (
      ts.isAsExpression(node) ||
      ts.isSatisfiesExpression(node) ||
      ts.isNonNullExpression(node) ||
      ts.isParenthesizedExpression(node)
    )
      return valueOf(node.expression);
    return undefined;
  };

  const nameOf = (call: ts.CallExpression): string =>
    ts.isPropertyAccessExpression(call.expression)
      ? call.expression.name.text
      : call.expression.getText();

  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isTypeNode(node)) return;
    if (ts.isFunctionLike(node)) {
      const call = node.parent;
      const isAtOnce = ts.isCallExpression(call) && AT_ONCE.test(nameOf(call));
      if (!isAtOnce) return;
    }
    if (ts.isVariableDeclaration(node) && node.initializer) {
      const made = node.initializer;
      if (ts.isCallExpression(made) && nameOf(made) === 'inTongue' && ts.isIdentifier(node.name))
        roots.set(node.name.text, catalogues[path]?.[node.name.text]);
      const value = valueOf(node.initializer);
      if (value !== undefined && ts.isObjectBindingPattern(node.name)) {
        for (const one of node.name.elements) {
          const key = (one.propertyName ?? one.name).getText();
          const part = isPart(value) ? value[key] : undefined;
          if (one.dotDotDotToken ? hasWords(value) : typeof part === 'string')
            offend(node, `${key} is taken out of it`);
          else if (ts.isIdentifier(one.name)) roots.set(one.name.text, part);
        }
        return;
      }
      if (isPart(value) && ts.isIdentifier(node.name)) {
        roots.set(node.name.text, value);
        return;
      }
    }
    if (ts.isExpression(node)) {
      const value = valueOf(node);
      if (value !== undefined) {
        const { parent } = node;
        if (typeof value === 'string') return offend(node, 'it is read');
        if (ts.isSpreadAssignment(parent) || ts.isSpreadElement(parent)) {
          if (hasWords(value)) offend(node, 'it is spread');
        } else if (ts.isCallExpression(parent) && parent.expression !== node) {
          if (hasWords(value) && !KEEPS.test(nameOf(parent))) offend(node, 'it is handed on');
        } else if (
          ts.isPropertyAccessExpression(parent) &&
          ts.isCallExpression(parent.parent) &&
          hasWords(value)
        )
          offend(node, 'it is gone through');
        return;
      }
    }
    ts.forEachChild(node, visit);
  };
  ts.forEachChild(file, visit);
  return found;
}
