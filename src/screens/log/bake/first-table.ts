import type { About } from '../../../core/log/about.ts';
import type { BakePage } from '../../../core/log/bake-page.ts';
import type { ChartTable } from '../../../core/log/drawing.ts';
import { tagName } from '../../../core/log/tags.ts';
import type { CutRead } from '../../../core/records/cut-read.ts';
import { causes } from '../../../core/speech/words/causes.ts';
import { cutLoafSays, howSure, loafChanges } from '../../../core/speech/words/cut-loaf.ts';
import { logBake as words } from '../../../core/speech/words/log-bake.ts';
import { notes } from '../../../core/speech/words/note.ts';
import { said, shown } from '../../../core/speech/facts.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showHeat } from '../../../core/speech/heats.ts';
import { showLength } from '../../../core/speech/lengths.ts';
import { showNumber } from '../../../core/speech/numbers.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { MINUTE } from '../../../core/units.ts';
import type { Telling } from './telling.ts';

/** A note as it is read: the catalogue's, or the baker's own words. */
export const noteShown = (note: string): string =>
  notes.find(({ value }) => value === note)?.label ?? note;

/** Whether a note is one that a press leaves: it names nobody. */
export const isPlainNote = (note: string): boolean => notes.some(({ value }) => value === note);

/** How a bake ended, in a sentence. */
export function endShown({ page, when, nameOf }: Telling): string {
  const { end, from, to } = page;
  return fill(words.end[end.how], {
    begun: when(from),
    ended: to === null ? '' : when(to),
    step: end.how === 'early' ? nameOf(page.bake, end.stage) : '',
  });
}

const callsShown = ({ calls }: BakePage): string | null => {
  if (calls.length === 0) return null;
  const left = calls.filter(({ late }) => late === null).length;
  const slowest = Math.max(0, ...calls.map(({ late }) => late ?? 0));
  const count = calls.length;
  if (left > 0) return fill(words.callsLeft, { count, left });
  return slowest < 1
    ? fill(words.callsQuick, { count })
    : fill(words.callsOf, { count, late: showLength(slowest) });
};

const doughShown = ({ page, units }: Telling): string | null => {
  const all = [...page.readings, ...page.looks.map((one) => ({ ...one, odd: false }))];
  const heat = page.readings.find(
    ({ reading, odd }) => reading.what === 'doughTemperature' && !odd,
  );
  const rise = all
    .toSorted((a, b) => a.at - b.at)
    .findLast(({ reading, odd }) => reading.what === 'rise' && reading.of === 'dough' && !odd);
  const shownHeat =
    heat && 'celsius' in heat.reading ? showHeat(heat.reading.celsius, units) : null;
  const percent =
    rise && 'percent' in rise.reading ? `${showNumber(rise.reading.percent)} %` : null;
  if (shownHeat !== null && percent !== null)
    return fill(words.doughRose, { heat: shownHeat, percent });
  return shownHeat ?? percent;
};

/** What was read of a cut loaf, and the one thing to change. */
export function cutShown({ says, causes: found, change }: CutRead): string {
  const named = found.map(({ cause, sure }) =>
    fill(words.cutLikely, { sure: howSure[sure], cause: causes[cause] }),
  );
  const then = change === null ? cutLoafSays[says] : loafChanges[change];
  return says === 'well' || named.length === 0 ? cutLoafSays[says] : [...named, then].join(' ');
}

/** A bake in one look: what it was, how it went, what was said of it. `about`: null leaves out what a baker typed. */
export function firstTable(
  telling: Telling,
  about: Pick<About, 'tags' | 'note' | 'hidden'> | null,
): ChartTable {
  const { page, cut, clock } = telling;
  const { first } = words;
  const own = [page.note === null ? null : noteShown(page.note), about?.note || null];
  const typed = page.note !== null && !isPlainNote(page.note);
  const notesShown = (about === null && typed ? [] : own).filter((one) => one !== null);
  const began = `${clock.date(page.from)}, ${clock.hour(page.from)}`;
  const took = page.to === null ? null : showLength((page.to - page.from) / MINUTE);
  const rows: (readonly [string, string | null])[] = [
    [first.begun, took === null ? began : fill(words.tookOf, { begun: began, length: took })],
    [first.loaves, fill(words.loavesOut, { begun: page.begun, out: page.out })],
    [first.read, cut === null ? null : cutShown(cut.read)],
    [first.note, notesShown.length > 0 ? notesShown.join('; ') : null],
    [first.tags, about?.tags.map(tagName).join(', ') || null],
    [first.dough, doughShown(telling)],
    [first.calls, callsShown(page)],
    [first.hidden, about?.hidden ? words.hiddenNow : null],
    [first.version, fill(words.versionOf, { version: page.version })],
  ];
  return {
    heads: words.heads.first,
    rows: rows.flatMap(([what, was]) => (was === null ? [] : [[what, was]])),
  };
}

/** The bake in a sentence or two, in words that the voice has. */
export function firstSays({ page, clock }: Telling): string {
  const { says } = words;
  const begun = fill(says.bake, { name: showBread(page.name), ...said({ loaves: page.begun }) });
  if (page.to === null) return begun;
  const time = said({ time: clock.hour(page.to) });
  if (page.end.how === 'early') return `${begun} ${fill(says.early, time)}`;
  return page.end.how === 'handedOver' ? `${begun} ${fill(says.handedOver, time)}` : begun;
}

export const loavesShown = (loaves: number): string => String(shown({ loaves })['loaves']);
