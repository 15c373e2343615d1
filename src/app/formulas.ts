import { readFormula } from '../core/formula/read-formula.ts';
import type { FormulaFound } from '../screens/house.ts';

/** The formulas that come with the program. */
const FILES = [
  'cherry-hazelnut.json',
  'lane-wheat.json',
  'lane-today.json',
  'olive-seed.json',
  'barley-tin.json',
  'harbour-rye.json',
  'seed-oat.json',
  'wholemeal.json',
  'cheese-seed.json',
] as const;

const readFile = async (file: string, fetchFile: typeof fetch): Promise<FormulaFound> => {
  const broken = (path: string, expected: string, got: string): FormulaFound => ({
    formula: null,
    file,
    reason: { key: 'formulaUnreadable', values: { path, expected, got } },
  });
  let text: string;
  try {
    const response = await fetchFile(`/formulas/${file}`);
    if (!response.ok) return broken(file, 'a file', `nothing (${response.status})`);
    text = await response.text();
  } catch {
    return broken(file, 'a file', 'nothing');
  }
  try {
    const read = readFormula(JSON.parse(text));
    if (read.formula !== null) return { formula: read.formula, file };
    const { path, expected, got } = read.reason;
    return broken(path || file, expected, got);
  } catch {
    return broken(file, 'JSON', text.slice(0, 20));
  }
};

/** Every formula file, readable or with the reason why not; a broken one hides no other. */
export const loadFormulas = (fetchFile: typeof fetch = fetch): Promise<readonly FormulaFound[]> =>
  Promise.all(FILES.map((file) => readFile(file, fetchFile)));
