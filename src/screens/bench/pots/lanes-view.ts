import type { LoadPlan, Turn } from '../../../core/oven/lanes.ts';
import { potsPage } from '../../../core/speech/words/pots-page.ts';
import { fill } from '../../../core/speech/fill.ts';
import { MINUTE, type Instant } from '../../../core/units.ts';
import type { LaneShown, LanesShown, MarkShown } from '../../../parts/lanes-shown.ts';

/** How the view reads hours and names. */
export interface Read {
  readonly hour: (at: Instant) => string;
  /** A pot's name by itself, by its lane. */
  readonly pot: (lane: string) => string;
  /** A loaf's number, as it stands in a block. */
  readonly number: (loaf: string) => string;
  /** Pots that no loaf goes into any more. */
  readonly dropped: readonly string[];
  /** When a pot that heats up again is hot. */
  readonly hotAt: (lane: string) => Instant | null;
  /** Whether a pot's lid has called and is still on. */
  readonly lidOn: (lane: string) => boolean;
}

/** The picture shows no less and no more than so many minutes. Judgement. */
const SPAN = { least: 40, most: 180 } as const;
/** Letters' widths beside a label: its mark and the room round it. */
const MARK = 1.8;
/** And beside a loaf's number: its frame. */
const FRAME = 1.6;

const lidOf = ({ loadAt, lidAt }: Turn): Instant => lidAt ?? loadAt;

/** So wide in minutes that each loaf's number and hours have room between its marks. */
const spanOf = (turns: readonly Turn[], letter: number, letters: Letters): number => {
  const perMinute = turns.map((turn) => {
    const lidded = (lidOf(turn) - turn.loadAt) / MINUTE;
    const open = (turn.outAt - lidOf(turn)) / MINUTE;
    const [lid, out] = [letters.first * letter, letters.hour * letter];
    return lidded > 0 ? Math.max(lid / lidded, out / open) : lid / open;
  });
  const most = Math.max(...perMinute.filter((one) => Number.isFinite(one) && one > 0));
  return Math.min(SPAN.most, Math.max(SPAN.least, Math.floor(1 / most))) * MINUTE;
};

/** Letters that the longest label of either kind takes. */
interface Letters {
  readonly first: number;
  readonly hour: number;
}
const lettersOf = (turns: readonly Turn[], read: Read): Letters => {
  const hour = Math.max(5, ...turns.map(({ outAt }) => read.hour(outAt).length)) + MARK;
  const number = Math.max(1, ...turns.map(({ loaf }) => read.number(loaf).length));
  return { hour, first: hour + number + FRAME };
};

interface Window {
  readonly from: Instant;
  readonly until: Instant;
  readonly letter: number;
}

/** A loaf's block, cut where the picture ends; each mark has its hour where there is room for it. */
function blockOf(turn: Turn, { from, until, letter }: Window, read: Read): LaneShown['blocks'][0] {
  const x = (at: Instant): number => (Math.min(until, Math.max(from, at)) - from) / (until - from);
  let number: string | null = read.number(turn.loaf);
  let edge = x(turn.stands ? from : turn.loadAt);
  const marks = [
    ...(turn.lidAt === null ? [] : [{ at: turn.lidAt, shape: 'lid' as const }]),
    { at: turn.outAt, shape: 'out' as const },
  ].flatMap(({ at, shape }): readonly MarkShown[] => {
    if (at < from || at > until) return [];
    const time = read.hour(at);
    const wants = (time.length + MARK + (number === null ? 0 : number.length + FRAME)) * letter;
    const room = x(at) - edge;
    edge = x(at);
    if (room < wants * 0.98) return [{ x: x(at), shape, number: null, time: null }];
    const mark = { x: x(at), shape, number, time };
    number = null;
    return [mark];
  });
  const [start, end] = [x(turn.loadAt), x(turn.outAt)];
  const free = (marks[0] ? marks[0].x - MARK * letter : end) - start;
  return {
    from: start,
    lid: x(lidOf(turn)),
    to: end,
    marks,
    // A block of which no hour is told has its number at its beginning, if it has room.
    number: number !== null && free > (number.length + FRAME) * letter ? number : null,
    stands: turn.stands,
    cutStart: turn.loadAt < from,
    cutEnd: turn.outAt > until,
  };
}

const noteOf = (
  lane: LoadPlan['lanes'][number],
  { until }: Window,
  now: Instant,
  read: Read,
): string | null => {
  const [there] = lane.turns.filter(({ stands }) => stands);
  const after = lane.turns.filter(({ outAt }) => outAt > until);
  const last = lane.turns.at(-1);
  const hot = read.hotAt(lane.pot);
  const notes = [
    there && read.lidOn(lane.pot) ? potsPage.due.lid : null,
    there && there.outAt <= now ? potsPage.due.out : null,
    !there && hot !== null ? fill(potsPage.reheats, { time: read.hour(hot) }) : null,
    read.dropped.includes(lane.pot) ? potsPage.dropped : null,
    last === undefined ? potsPage.noMore : null,
    last !== undefined && after.length > 0
      ? fill(after.length === 1 ? potsPage.more.one : potsPage.more.many, {
          count: after.length,
          time: read.hour(last.outAt),
        })
      : null,
  ];
  return notes.filter(Boolean).join(', ') || null;
};

/**
 * The lanes as they are drawn: pot under pot on one time, from a little before now, or so many pictures
 * later. `letter`: a letter's width as a share of a lane's.
 */
export function lanesView(
  plan: LoadPlan,
  now: Instant,
  read: Read,
  { letter, page }: { readonly letter: number; readonly page: number },
): LanesShown {
  const turns = plan.lanes.flatMap((lane) => lane.turns);
  const letters = lettersOf(turns, read);
  const span = spanOf(turns, letter, letters);
  // The next mark of a loaf that stands is never before now: so its label has room.
  const lead = Math.min(span / 2, letters.first * letter * span);
  const from = now - lead + page * (span - lead);
  const window = { from, until: from + span, letter };
  return {
    lanes: plan.lanes.map((lane) => ({
      pot: read.pot(lane.pot),
      note: noteOf(lane, window, now, read),
      blocks: lane.turns
        .filter(({ loadAt, outAt }) => outAt >= from && loadAt < window.until)
        .map((turn) => blockOf(turn, window, read)),
    })),
    now:
      page === 0 ? { x: lead / span, label: fill(potsPage.now, { time: read.hour(now) }) } : null,
    from: read.hour(from),
    until: read.hour(window.until),
    goesOn: turns.some(({ outAt }) => outAt > window.until),
  };
}
