import type { About } from '../../../core/log/about.ts';
import { bakeFileText, type FilePart } from '../../../core/log/bake-file.ts';
import { bakeChart } from '../../../core/log/chart/bake-chart.ts';
import { bakePanels, PANELS } from '../../../core/log/chart/bake-panels.ts';
import { roomOnPage, svgText } from '../../../core/log/chart/svg-text.ts';
import { logBake } from '../../../core/speech/words/log-bake.ts';
import { logShare as words } from '../../../core/speech/words/log-share.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { endShown, firstTable, isPlainNote } from './first-table.ts';
import { PAGES, pagesOf } from './tables.ts';
import type { Telling } from './telling.ts';

/** Drawn on an A4's width, mm; a panel so high, and so much for steps and hours. */
const SHEET = { width: 180, panel: 42, besides: 26, size: 4 } as const;

function chartPart(telling: Telling): FilePart[] {
  const chart = bakeChart(telling.charted, PANELS, telling);
  if (chart === null) return [];
  const found = bakePanels(telling.charted, telling.units);
  const count = PANELS.filter((name) => found[name]).length;
  const { width, panel, besides, size } = SHEET;
  const drawing = chart.draw(roomOnPage(width, count * panel + besides, size));
  return [
    {
      title: words.file.chart,
      svg: svgText(drawing, { size, alt: chart.says, id: 'hatch' }),
      lines: [
        words.file.marks,
        ...(found.speed ? [words.file.band] : []),
        ...(found.lived ? [words.file.lived] : []),
      ],
      table: chart.table,
    },
  ];
}

/** Whether a baker typed anything of a bake: a note of their own, at its end or after it, or a tag. */
export const isTyped = ({ page }: Telling, { note, tags }: Pick<About, 'note' | 'tags'>): boolean =>
  note !== '' || tags.length > 0 || (page.note !== null && !isPlainNote(page.note));

/**
 * One bake as a page file. Who had it and what was spoken of it are never in there; what was typed and photos
 * where they are wanted.
 */
export function sharedFile(
  telling: Telling,
  {
    about,
    photos,
  }: {
    /** null: nothing that was typed. */
    readonly about: Pick<About, 'note' | 'tags'> | null;
    readonly photos: readonly Uint8Array[];
  },
): string {
  const pages = pagesOf(telling);
  const { page } = telling;
  const first = firstTable(telling, about && { ...about, hidden: false });
  return bakeFileText({
    title: showBread(page.name),
    lines: [endShown(telling)],
    photos: photos.map((jpeg, n) => ({
      alt: fill(words.file.photo, { n: n + 1, count: photos.length }),
      jpeg,
    })),
    parts: [
      { title: words.file.first, table: first },
      ...chartPart(telling),
      ...PAGES.flatMap((name): FilePart[] => {
        const its = pages[name];
        if (its === undefined) return [];
        return [
          {
            title: logBake.pages[name],
            table: its.table,
            ...(its.detail === undefined ? {} : { lines: [its.detail] }),
          },
        ];
      }),
    ],
    foot: words.file.foot,
  });
}

/** A file's name out of words that may be anything. */
export const fileNameOf = (name: string, day: string, end: string): string => {
  const plain = fill(words.fileName, { name, day })
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${plain || 'bake'}.${end}`;
};
