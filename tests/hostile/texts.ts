/** Texts that would be more than text, were anything to run, reckon, turn or look them up. */

/** What a spreadsheet reckons, or runs, when a cell begins with it. */
export const RECKONED = [
  '=1+1',
  '+cmd',
  '-2',
  '@SUM(A1:A9)',
  '\t=1+1',
  '\r=1+1',
  "'=1+1",
  "''-2",
  "'",
  '=HYPERLINK("https://neighbour.example","rye")',
  "=cmd|' /C calc'!A0",
  '-2+3+cmd',
  ' =1+1',
  '\n=1+1',
  '＝1+1',
  '＋1',
  '－1',
  '＠SUM',
] as const;

/** What HTML, SVG and style are made of. */
export const MARKED = [
  '<script>alert(1)</script>',
  '<img src=x onerror=alert(1)>',
  '"><svg onload=alert(1)>',
  "' onfocus='alert(1)",
  '</title></style></textarea>',
  '<!--',
  ']]>',
  '&lt;b&gt; &#60;i&#62; &nbsp;',
  '<b>rye</b>',
  'javascript:alert(1)',
  '<speak><break time="9s"/></speak>',
] as const;

/** What turns the direction of writing, cannot be seen, or is half a letter. */
export const TURNED = [
  '\u202egnitfarc\u202c',
  '\u2067left\u2069',
  'walnut\u200b\u200d\ufeff',
  '\u061c\u200f\u200e',
  'שלום rye עולם',
  'خبز 850 g',
  '\ud83d',
  'rye \udc4d',
  '\udc4d\ud83d',
  '🥖👨‍👩‍👧‍👦🇫🇷',
  'e\u0301'.repeat(40),
  'Z\u0351\u036b\u0343\u0327\u0489'.repeat(20),
  '\u2028\u2029\u0085',
  '\u0000\u0001\u0007\u0008\u001b[31m\u007f',
  '\u009b31m',
  '\r\nBEGIN:VEVENT\r\nSUMMARY:none',
  'a\r\nb\tc\u000bd\u000ce',
  '\ufffe\uffff',
] as const;

/** What every object answers to, and what templates and patterns are made of. */
export const LOOKED_UP = [
  '__proto__',
  'constructor',
  'toString',
  'valueOf',
  'hasOwnProperty',
  '__defineGetter__',
  'prototype',
  'length',
  '$&',
  "$`$'$1$$",
  '{name}',
  '{count} {{x}}',
  '%s%n%00',
  '../../etc/passwd',
  'con',
  '(a+)+$',
  '[',
  '\\',
  '.*',
  '%E0%A4%A',
  '_x0041_ _x005F_',
  'null',
  'undefined',
  'NaN',
  '1e999',
  '',
  ' ',
] as const;

export const HOSTILE_TEXTS: readonly string[] = [...RECKONED, ...MARKED, ...TURNED, ...LOOKED_UP];

/** Those of them that a name may be: not blank, and short enough for any. */
export const HOSTILE_NAMES: readonly string[] = HOSTILE_TEXTS.filter(
  (text) => text.trim() !== '' && text.length <= 80,
);

/** What every object answers to: no field of a file may be found there. */
export const INHERITED = ['__proto__', 'constructor', 'toString', 'valueOf', 'length'] as const;
