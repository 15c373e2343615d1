import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { readCsv } from '../../src/adapters/sheets/read-csv.ts';
import { readXlsx } from '../../src/adapters/sheets/read-xlsx.ts';
import { partTexts, safeZip } from '../../src/adapters/sheets/safe-zip.ts';
import { writeXlsx } from '../../src/adapters/sheets/write-xlsx.ts';
import { amounts } from '../../src/core/formula/amounts.ts';
import { ownBase } from '../../src/core/sheets/own-base.ts';
import { firstAnswers, readSheet } from '../../src/core/sheets/read-sheet.ts';
import { SHIPPED, shippedFormula } from '../core/formula/shipped.ts';

/** The weight of all flour that is typed over the 1000 g that the sheet was written for. */
const FLOUR = 437.5;
/** How far a weight that LibreOffice reckons may be from the core's, g: floats alone. */
const WITHIN = 1e-6;
/** Semicolons, UTF-8, cells as they are held and not as they are shown. */
const AS_CSV = 'csv:Text - txt - csv (StarCalc):59,34,76,1,,0,false,false,false';

const run = (command: string, ...args: string[]): boolean =>
  spawnSync(command, args, {
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    stdio: 'ignore',
    timeout: 600_000,
  }).status === 0;

/** LibreOffice Calc, installed where it is not there and can be; null: neither. */
function findCalc(): string | null {
  const found = (): string | null =>
    ['/usr/bin/soffice', '/usr/lib/libreoffice/program/soffice', '/usr/local/bin/soffice'].find(
      existsSync,
    ) ?? null;
  const here = found();
  if (here !== null || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return here;
  console.log('LibreOffice Calc is not here: it is installed, for some 200 MB and a minute.');
  const apt = ['-o', 'DPkg::Lock::Timeout=300'];
  const install = [...apt, 'install', '-y', '--no-install-recommends', 'libreoffice-calc'];
  if (!run('apt-get', ...install)) {
    run('apt-get', ...apt, 'update');
    run('apt-get', ...install);
  }
  return found();
}

/** A profile that reckons every cell anew as a file is opened, as a hand that types into one would. */
const RECKON_ANEW = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>
`;

/** A file as a hand leaves it that typed over one cell: what else was reckoned is stale. */
function typedOver(file: Uint8Array): Uint8Array {
  const texts = { ...partTexts(safeZip(file).zip!) };
  const name = 'xl/worksheets/sheet1.xml';
  const before = texts[name]!;
  texts[name] = before.replace(/(<c r="D4"[^>]*><v>)1000(<\/v>)/, `$1${FLOUR}$2`);
  if (texts[name] === before) throw new Error('The cell of all flour is not where it was.');
  return zipSync(
    Object.fromEntries(Object.entries(texts).map(([part, text]) => [part, strToU8(text)])),
  );
}

/** The furthest a weight is from the core's, g; every weight of the sheet is looked for by its name. */
function furthest(csv: string, name: (typeof SHIPPED)[number]): number {
  const { rows } = readCsv(csv).tables![0]!;
  const formula = shippedFormula(name);
  const weights = (label: string): number[] =>
    rows.filter((row) => row[0] === label).map((row) => Number(row[3]));
  const [dough = NaN, again = NaN] = weights('Whole dough');
  const exact = amounts(formula, dough);
  const water = exact.levainWater + exact.finalWater;
  const whole = formula.flours.map(({ pct }) => (pct * FLOUR) / 100);
  const pairs: [number | undefined, number][] = [
    [exact.totalFlour, FLOUR],
    [again, dough],
    [weights('Water')[0], water],
    [weights('First water')[0], exact.firstWater],
    [weights('Second water')[0], exact.secondWater],
    [weights('Flour in the levain')[0], exact.levainFlour],
    [weights('Water in the levain')[0], exact.levainWater],
    ...weights('Salt').map((grams): [number, number] => [grams, exact.salt]),
    ...exact.flours.flatMap(({ name: flour, grams }, i): [number | undefined, number][] => [
      [weights(flour)[0], whole[i]!],
      [weights(flour)[1], grams],
    ]),
    ...exact.fillings.flatMap(({ name: filling, grams }) =>
      weights(filling).map((held): [number, number] => [held, grams]),
    ),
  ];
  const off = pairs.map(([held, wanted]) => Math.abs((held ?? NaN) - wanted));
  return off.some(Number.isNaN) ? Infinity : Math.max(...off);
}

/** Whether the file, opened and saved by LibreOffice, is still the formula that was written. */
async function readsBack(file: Uint8Array, name: (typeof SHIPPED)[number]): Promise<boolean> {
  const { tables } = await readXlsx(file);
  const formula = tables === null ? null : ownBase(tables).formula;
  if (!formula) return false;
  const own = { formula, own: true };
  const rows = tables![0]!.rows;
  const read = readSheet(rows, firstAnswers(rows, own), own, 'x').formula;
  return JSON.stringify(read) === JSON.stringify(shippedFormula(name));
}

/**
 * The sheets that are written, opened by LibreOffice Calc with another weight typed into the cell of
 * all flour: what it reckons is held against the core, and what it saves is read back. Prints a line
 * for each; false where any is off, or where there is no LibreOffice: a check that is not run is none.
 */
export async function liveSheets(): Promise<boolean> {
  const calc = findCalc();
  if (calc === null) {
    console.log('Live sheets: NOT CHECKED, no LibreOffice (soffice) is here or can be installed.');
    return false;
  }
  const dir = mkdtempSync(join(tmpdir(), 'loafward-sheets-'));
  mkdirSync(join(dir, 'profile', 'user'), { recursive: true });
  writeFileSync(join(dir, 'profile', 'user', 'registrymodifications.xcu'), RECKON_ANEW);
  const profile = `-env:UserInstallation=file://${join(dir, 'profile')}`;
  const convert = (to: string, ending: string): boolean =>
    run(
      calc,
      profile,
      '--headless',
      '--convert-to',
      to,
      '--outdir',
      join(dir, 'out'),
      ...SHIPPED.map((name) => join(dir, `${name}.${ending}`)),
    );
  try {
    for (const name of SHIPPED) {
      const file = await writeXlsx(shippedFormula(name), 1000);
      writeFileSync(join(dir, `${name}.xlsx`), typedOver(file));
      writeFileSync(join(dir, `${name}.saved.xlsx`), file);
    }
    const ran = convert(AS_CSV, 'xlsx') && convert('xlsx', 'saved.xlsx');
    let ok = ran;
    for (const name of ran ? SHIPPED : []) {
      const off = furthest(readFileSync(join(dir, 'out', `${name}.csv`), 'utf8'), name);
      const saved = readFileSync(join(dir, 'out', `${name}.saved.xlsx`));
      const isBack = await readsBack(new Uint8Array(saved), name);
      ok &&= off <= WITHIN && isBack;
      const back = isBack ? 'reads back as it was' : 'IS ANOTHER FORMULA';
      console.log(
        `Live sheet of ${name}: ${FLOUR} g typed in, weights off by ${off.toExponential(1)} g at most; saved there, it ${back}.`,
      );
    }
    if (!ran) console.log('Live sheets: NOT CHECKED, LibreOffice did not convert them.');
    return ok;
  } finally {
    rmSync(dir, { recursive: true, force: true });
  }
}
