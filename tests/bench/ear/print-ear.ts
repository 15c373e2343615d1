import { earRows } from './ear-rows.ts';

/** `npx tsx tests/bench/ear/print-ear.ts`: the ear's rows of `npm run bench` alone. */
console.log(await earRows((name, figure) => console.log(`${name.padEnd(92)}  ${figure}`)));
