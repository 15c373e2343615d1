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
    files: ['src/core/**/*.ts', 'machines/**/*.ts'],
    rules: { 'no-restricted-syntax': ['error', ...noClock] },
  },
  {
    files: ['src/**', 'machines/**'],
    rules: { 'max-lines': ['error', { max: 250, skipBlankLines: false, skipComments: false }] },
  },
);
