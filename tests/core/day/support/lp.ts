/** A linear model in the making, written out in the LP format that solvers read. */
export interface Lp {
  /** A variable; `whole` for integers. */
  variable(least: number, most: number, kind?: 'whole' | 'real'): string;
  /** Σ factor·variable between two numbers, either of which may be infinite. */
  row(terms: readonly (readonly [number, string])[], least: number, most: number): void;
  /** Points for each unit of a variable. */
  price(points: number, variable: string): void;
  /** Points paid in any case. */
  constant(points: number): void;
  text(): string;
  readonly fixedCost: number;
}

const number = (value: number): string => (Object.is(value, -0) ? '0' : String(value));
const sum = (terms: readonly (readonly [number, string])[]): string =>
  terms
    .map(([factor, name]) => `${factor < 0 ? '-' : '+'} ${number(Math.abs(factor))} ${name}`)
    .join(' ');

export function makeLp(): Lp {
  const rows: string[] = [];
  const bounds: string[] = [];
  const wholes: string[] = [];
  const prices: [number, string][] = [];
  let count = 0;
  let constant = 0;
  return {
    variable: (least, most, kind = 'whole') => {
      const name = `x${count++}`;
      bounds.push(` ${number(least)} <= ${name} <= ${most === Infinity ? '+inf' : number(most)}`);
      if (kind === 'whole') wholes.push(name);
      return name;
    },
    row: (terms, least, most) => {
      if (least === most) rows.push(` c${rows.length}: ${sum(terms)} = ${number(least)}`);
      else {
        if (least > -Infinity) rows.push(` c${rows.length}: ${sum(terms)} >= ${number(least)}`);
        if (most < Infinity) rows.push(` c${rows.length}: ${sum(terms)} <= ${number(most)}`);
      }
    },
    price: (points, variable) => prices.push([points, variable]),
    constant: (points) => (constant += points),
    text: () =>
      [
        'Minimize',
        ` cost: ${sum(prices.filter(([points]) => points !== 0)) || '0 x0'}`,
        'Subject To',
        ...rows,
        'Bounds',
        ...bounds,
        'General',
        ` ${wholes.join('\n ')}`,
        'End',
        '',
      ].join('\n'),
    get fixedCost() {
      return constant;
    },
  };
}
