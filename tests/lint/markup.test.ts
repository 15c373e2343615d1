import { fileURLToPath } from 'node:url';
import { ESLint } from 'eslint';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const eslint = new ESLint({ cwd: root });

/** What the rules say of markup in a file of such a name and text. */
async function said(filePath: string, text: string): Promise<readonly string[]> {
  const [result] = await eslint.lintText(text, { filePath: root + filePath });
  return result!.messages
    .filter(({ ruleId }) => ruleId === 'no-restricted-syntax')
    .map(({ message }) => message);
}

test.each([
  ['src/screens/a.tsx', 'export const a = (el: Element, b: string) => { el.innerHTML = b; };'],
  ['src/parts/a.ts', 'export const a = (el: Element) => el.outerHTML;'],
  ['src/app/a.ts', "export const a = (el: Element, b: string) => { el['innerHTML'] = b; };"],
  ['src/app/a.ts', 'export const a = (b: string) => Object.assign({}, { innerHTML: b });'],
  ['src/app/a.ts', "export const a = (b: string) => ({ 'innerHTML': b });"],
  [
    'src/adapters/a.ts',
    "export const a = (el: Element) => el.insertAdjacentHTML('beforeend', '');",
  ],
  ['src/adapters/a.ts', "export const a = () => document.write('');"],
  ['src/adapters/a.ts', "export const a = () => window.document.writeln('');"],
  ['src/screens/a.tsx', 'export const A = (props: { b: string }) => <p innerHTML={props.b} />;'],
  [
    'src/screens/a.tsx',
    'export const A = (props: { b: string }) => <p prop:innerHTML={props.b} />;',
  ],
  ['src/screens/a.tsx', 'export const A = (props: { b: string }) => <iframe srcdoc={props.b} />;'],
  ['src/core/a.ts', 'export const a = (el: { innerHTML: string }) => el.innerHTML;'],
])('%s: %s is refused', async (path, text) => {
  expect(await said(path, text)).toEqual(['A string is shown as text, never read as markup.']);
});

test('what is shown as text is not, nor is a core that knows no clock forgotten', async () => {
  const shown = 'export const A = (props: { b: string }) => <p textContent={props.b} />;';
  expect(await said('src/screens/a.tsx', shown)).toEqual([]);
  const [clock] = await said('src/core/a.ts', 'export const a = () => Date.now();');
  expect(clock).toBe('Time is passed in.');
});
