import { plainName } from './plain-name.ts';

/** Why something could not be read: where, what was wanted there, what came. */
export interface Misread {
  readonly path: string;
  readonly expected: string;
  readonly got: string;
}

/** Thrown inside a reader only, and caught by it. */
export class Refused extends Error {
  constructor(readonly misread: Misread) {
    super(`${misread.path}: expected ${misread.expected}, got ${misread.got}.`);
  }
}

/** What came, in a few words; long texts are cut. */
export function describe(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') {
    return JSON.stringify(value.length > 40 ? `${value.slice(0, 40)}…` : value);
  }
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object') return value === null ? 'null' : 'an object';
  return typeof value === 'function' ? 'a function' : String(value);
}

function refuse(path: string, expected: string, value: unknown): never {
  throw new Refused({ path: path === '' ? 'the file' : path, expected, got: describe(value) });
}

/** A text of 1 to `most` characters that is not all blank. */
export function readText(value: unknown, path: string, most = 80): string {
  const good = typeof value === 'string' && value.trim() !== '' && value.length <= most;
  return good ? value : refuse(path, `a text of 1 to ${most} characters`, value);
}

/** What somebody calls something, of 1 to `most` characters: in one line, without what cannot be seen. */
export function readName(value: unknown, path: string, most = 80): string {
  const name = plainName(readText(value, path, most));
  return name.trim() === '' ? refuse(path, 'a text that can be seen', value) : name;
}

/** One of a few words. */
export function readOneOf<T extends string | number>(
  value: unknown,
  path: string,
  values: readonly T[],
): T {
  const found = values.find((one) => one === value);
  return found ?? refuse(path, `one of ${values.join(', ')}`, value);
}

/** A field of an object as it came; only its own fields count. */
export class Fields {
  private constructor(
    private readonly of: object,
    readonly path: string,
  ) {}

  static read(value: unknown, path: string): Fields {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) {
      return refuse(path, 'an object', value);
    }
    return new Fields(value, path);
  }

  private at(name: string): string {
    return this.path === '' ? name : `${this.path}.${name}`;
  }

  private field(name: string): unknown {
    return Object.hasOwn(this.of, name) ? (this.of as Record<string, unknown>)[name] : undefined;
  }

  /** Whether the field is there at all. */
  has(name: string): boolean {
    return this.field(name) !== undefined;
  }

  isNull(name: string): boolean {
    return this.field(name) === null;
  }

  /** A field as `one` reads it, handed its path. */
  by<T>(name: string, one: (value: unknown, path: string) => T): T {
    return one(this.field(name), this.at(name));
  }

  flag(name: string): boolean {
    const value = this.field(name);
    return typeof value === 'boolean' ? value : refuse(this.at(name), 'true or false', value);
  }

  /** A finite number from `least` to `most`, both included; whole if so asked. */
  number(name: string, least: number, most: number, whole = false): number {
    const value = this.field(name);
    const good = typeof value === 'number' && value >= least && value <= most;
    if (good && (!whole || Number.isInteger(value))) return value;
    return refuse(this.at(name), `a ${whole ? 'whole ' : ''}number ${least} to ${most}`, value);
  }

  /** A text of 1 to `most` characters that is not all blank. */
  text(name: string, most = 80): string {
    return readText(this.field(name), this.at(name), most);
  }

  /** What somebody calls something, in one line, without what cannot be seen. */
  name(name: string, most = 80): string {
    return readName(this.field(name), this.at(name), most);
  }

  /** A short name for the program's use: letters, digits, hyphens. */
  id(name: string): string {
    const value = this.field(name);
    const good = typeof value === 'string' && /^[A-Za-z0-9][A-Za-z0-9-]{0,39}$/.test(value);
    if (!good) return refuse(this.at(name), 'letters, digits and hyphens, up to 40', value);
    // Things are found by it: what every object has would be found where nobody put it.
    return value in {} ? refuse(this.at(name), 'a name of its own', value) : value;
  }

  oneOf<T extends string | number>(name: string, values: readonly T[]): T {
    return readOneOf(this.field(name), this.at(name), values);
  }

  inner(name: string): Fields {
    return Fields.read(this.field(name), this.at(name));
  }

  /** A list of `least` to `most` entries, each read by `entry` with its own path. */
  list<T>(name: string, least: number, most: number, entry: (v: unknown, path: string) => T): T[] {
    const value = this.field(name);
    const path = this.at(name);
    if (!Array.isArray(value) || value.length < least || value.length > most) {
      return refuse(path, `a list of ${least} to ${most}`, value);
    }
    return Array.from(value as unknown[], (one, i) => entry(one, `${path}[${i}]`));
  }

  /** Refuse a field that is right in itself but not beside the others. */
  refuse(name: string, expected: string, got: string): never {
    throw new Refused({ path: this.at(name), expected, got });
  }
}
