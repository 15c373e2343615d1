import solid from 'eslint-plugin-solid/configs/typescript';
import tseslint from 'typescript-eslint';

/** `after` and delayed raises never fire after a restore; the core and the machines know no clock. */
const noClock = [
  {
    selector: "ObjectExpression > Property[key.name='after']",
    message: 'Deadlines are instants in context; `after` is banned.',
  },
  {
    selector: "MemberExpression[object.name='Date'][property.name='now']",
    message: 'Time is passed in.',
  },
  {
    selector: "NewExpression[callee.name='Date'][arguments.length=0]",
    message: 'Time is passed in.',
  },
  {
    selector: "MemberExpression[object.name='Math'][property.name='random']",
    message: 'Chance is passed in.',
  },
];

/** What bakers, files and links say is text and stays text: nothing in the app makes a page out of a string. */
const noMarkup = [
  ...[
    'MemberExpression[property.name=NAMED]',
    'MemberExpression[property.value=NAMED]',
    'Property[key.name=NAMED]',
    'Property[key.value=NAMED]',
    'JSXAttribute[name.name=NAMED]',
    'JSXAttribute[name.name.name=NAMED]',
  ].map((selector) => ({
    selector: selector.replace('NAMED', '/^(innerHTML|outerHTML|insertAdjacentHTML|srcdoc)$/'),
    message: 'A string is shown as text, never read as markup.',
  })),
  ...['object.name', 'object.property.name'].map((holder) => ({
    selector: `MemberExpression[${holder}='document'][property.name=/^write(ln)?$/]`,
    message: 'A string is shown as text, never read as markup.',
  })),
];

export default tseslint.config(
  { ignores: ['dist/', 'node_modules/', 'tests/browser/out/'] },
  ...tseslint.configs.recommended,
  { files: ['src/**/*.tsx', 'tests/**/*.tsx'], ...solid },
  {
    rules: {
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_' },
      ],
      eqeqeq: 'error',
    },
  },
  {
    files: ['src/**'],
    rules: { 'no-restricted-syntax': ['error', ...noMarkup] },
  },
  {
    // The later one stands alone: what all of src is held to is told again.
    files: ['src/core/**/*.ts', 'machines/**/*.ts'],
    rules: { 'no-restricted-syntax': ['error', ...noClock, ...noMarkup] },
  },
  {
    files: ['src/**', 'machines/**'],
    rules: { 'max-lines': ['error', { max: 250, skipBlankLines: false, skipComments: false }] },
  },
);
