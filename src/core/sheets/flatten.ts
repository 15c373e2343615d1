import type { Cell, Table } from './table.ts';

/** Marks of lists and objects that hold nothing, which no row would tell of. */
const EMPTY_LIST = '[]';
/** A file of ours has no longer list by far. */
const LONGEST_LIST = 50;

/**
 * A value of plain data as rows of path and value: `process.touches[0].kind` and `fold`.
 *
 * @example
 * flatten({ a: { b: [1, 'x'] }, c: [] }) // → [['a.b[0]', 1], ['a.b[1]', 'x'], ['c', '[]']]
 */
export function flatten(value: unknown, path = ''): readonly (readonly [string, Cell])[] {
  if (Array.isArray(value)) {
    return value.length === 0
      ? [[path, EMPTY_LIST]]
      : value.flatMap((one, i) => flatten(one, `${path}[${i}]`));
  }
  if (typeof value === 'object' && value !== null) {
    return Object.entries(value).flatMap(([key, one]) =>
      flatten(one, path === '' ? key : `${path}.${key}`),
    );
  }
  return [[path, typeof value === 'number' || typeof value === 'string' ? value : null]];
}

type Node = Map<string | number, Node | Cell>;

const STEP = /^([A-Za-z]+)((?:\[\d{1,2}\])*)$/;

function stepsOf(path: string): (string | number)[] | null {
  const steps: (string | number)[] = [];
  for (const part of path.split('.')) {
    const [, key, indexes] = STEP.exec(part) ?? [];
    if (key === undefined) return null;
    steps.push(key, ...[...(indexes ?? '').matchAll(/\d+/g)].map(([digits]) => Number(digits)));
  }
  return steps.length > 8 ? null : steps;
}

function toValue(node: Node | Cell): unknown {
  if (!(node instanceof Map)) return node === EMPTY_LIST ? [] : node;
  const entries = [...node];
  if (entries.every(([key]) => typeof key === 'number')) {
    const list: unknown[] = [];
    for (const [key, one] of entries)
      if (Number(key) < LONGEST_LIST) list[Number(key)] = toValue(one);
    return Array.from(list);
  }
  return Object.fromEntries(entries.map(([key, one]) => [String(key), toValue(one)]));
}

/**
 * Rows of path and value as the data they tell of; rows whose path is none are passed over. Whether it
 * is a formula, its reader says.
 *
 * @example
 * unflatten([['a.b[0]', 1], ['a.b[1]', 'x'], ['c', '[]']]) // → { a: { b: [1, 'x'] }, c: [] }
 */
export function unflatten(rows: Table): unknown {
  const root: Node = new Map();
  for (const [path, value] of rows) {
    const steps = typeof path === 'string' ? stepsOf(path) : null;
    if (steps === null || value === undefined) continue;
    let node = root;
    for (const step of steps.slice(0, -1)) {
      let inner = node.get(step);
      if (!(inner instanceof Map)) node.set(step, (inner = new Map()));
      node = inner;
    }
    node.set(steps.at(-1)!, value);
  }
  return toValue(root);
}
