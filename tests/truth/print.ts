import { allRows } from './all-rows.ts';
import { liveSheets } from './live-sheet.ts';
import { scores } from './measure.ts';
import { report } from './report.ts';
import { simulatedReport } from './simulated-report.ts';
import { machineYearReport, yearReport } from './year-report.ts';

/** `npm run truth`: the table, the sheets that LibreOffice reckons, and an exit that says whether every model is within its tolerance. */
const rows = allRows();
console.log(report(rows));
console.log(`\n${simulatedReport()}`);
console.log(`\n${yearReport()}`);
console.log(`\n${machineYearReport()}`);
console.log('');
const live = await liveSheets();
process.exitCode = live && scores(rows).every(({ ok }) => ok) ? 0 : 1;
