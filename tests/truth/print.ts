import { allRows } from './all-rows.ts';
import { scores } from './measure.ts';
import { report } from './report.ts';
import { simulatedReport } from './simulated-report.ts';

/** `npm run truth`: the table, and an exit that says whether every model is within its tolerance. */
const rows = allRows();
console.log(report(rows));
console.log(`\n${simulatedReport()}`);
process.exitCode = scores(rows).every(({ ok }) => ok) ? 0 : 1;
