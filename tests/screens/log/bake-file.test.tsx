import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { base64, bakeFileText, type BakeFile } from '../../../src/core/log/bake-file.ts';
import { escaped, svgText } from '../../../src/core/log/chart/svg-text.ts';

/** Signs that would break out of a text, were they not escaped, among any others. */
const nasty = fc
  .array(
    fc.oneof(
      fc.constantFrom(
        '<script>alert(1)</script>',
        '</title>',
        '</style>',
        '"><img src=x onerror=alert(1)>',
        "' onload='alert(1)",
        '<!--',
        '-->',
        ']]>',
        '&lt;',
        '&#60;',
        '\u202e',
        '\u0000',
        '</svg>',
        '<iframe src="https://neighbour.example">',
      ),
      fc.string(),
      fc.string({ unit: 'grapheme' }),
    ),
    { maxLength: 5 },
  )
  .map((parts) => parts.join(''));

/** Parsed so, nothing of a page runs. */
const read = (text: string): Document => new DOMParser().parseFromString(text, 'text/html');

const fileOf = (text: string): BakeFile => ({
  title: text,
  lines: [text],
  parts: [
    {
      title: text,
      lines: [text],
      table: { heads: [text, text], rows: [[text, text]] },
      svg: svgText(
        {
          width: 10,
          height: 10,
          parts: [{ kind: 'text', at: [1, 1], text, anchor: 'start' }],
        },
        { size: 3, alt: text, id: 'hatch' },
      ),
    },
  ],
  photos: [{ alt: text, jpeg: new Uint8Array([255, 216, 255]) }],
  foot: text,
});

/** The tags of a page, in their order, and the names of their attributes. */
const tagsOf = (text: string): string[] =>
  [...read(text).querySelectorAll('*')].map(
    (el) => `${el.tagName} ${[...el.attributes].map(({ name }) => name).join(' ')}`,
  );

/** What a page shows of a text: signs that no page holds, or that turn its writing, are left out. */
const shownOf = (text: string): string =>
  text
    .replace(
      // eslint-disable-next-line no-control-regex
      /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g,
      '',
    )
    .replace(/\r\n?/g, '\n');

describe('a page file', () => {
  it('has the same tags whatever is written in it, and every text as it was', () => {
    const plain = tagsOf(bakeFileText(fileOf('x')));
    fc.assert(
      fc.property(nasty, (text) => {
        const page = bakeFileText(fileOf(text));
        expect(tagsOf(page)).toEqual(plain);
        const document = read(page);
        for (const where of ['h1', 'h2', 'p', 'th', 'td', 'svg text', 'footer p'])
          expect(document.querySelector(where)!.textContent).toBe(shownOf(text));
        expect(document.querySelector('img')!.getAttribute('alt')).toBe(shownOf(text));
        expect(document.querySelector('svg')!.getAttribute('aria-label')).toBe(shownOf(text));
      }),
      { numRuns: 150 },
    );
  }, 30_000);

  it('holds no script and nothing that is fetched', () => {
    const document = read(bakeFileText(fileOf('<script src="//a.example">')));
    expect(document.querySelectorAll('script, link, iframe, object, embed, form')).toHaveLength(0);
    for (const el of document.querySelectorAll('[src], [href]'))
      expect(el.getAttribute('src')).toMatch(/^data:image\/jpeg;base64,/);
    const policy = document.querySelector('meta[http-equiv]')!.getAttribute('content')!;
    expect(policy.split('; ')).toContain("default-src 'none'");
    expect(policy).not.toContain('script-src');
    expect(document.documentElement.lang).toBe('en');
  });

  it('escapes the five signs that HTML is made of', () => {
    expect(escaped(`<a href="x" title='y'>&</a>`)).toBe(
      '&lt;a href=&quot;x&quot; title=&#39;y&#39;&gt;&amp;&lt;/a&gt;',
    );
  });

  it('writes bytes as Base64 that reads back', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 40 }), (bytes) => {
        expect(base64(bytes)).toBe(Buffer.from(bytes).toString('base64'));
      }),
    );
  });
});
