import { allRows } from './all-rows.ts';
import { scores } from './measure.ts';
import { report } from './report.ts';

/** `npm run truth`: the table, and an exit that says whether every model is within its tolerance. */
const rows = allRows();
console.log(report(rows));
process.exitCode = scores(rows).every(({ ok }) => ok) ? 0 : 1;
