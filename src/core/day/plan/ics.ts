import { plainNotes } from '../../formula/plain-name.ts';
import { MINUTE, type Instant } from '../../units.ts';
import type { PlannedTouch } from './types.ts';

/** What a calendar is told besides the touches. */
export interface IcsOptions {
  /** When the file is written. */
  readonly stamp: Instant;
  /** By `batch/touch`: how often it has moved; 0 where it never did. */
  readonly sequence: Readonly<Record<string, number>>;
  /** A touch's own sentences: when it is fine until, the last that is possible. In any language. */
  readonly describe?: (touch: PlannedTouch) => string;
  /** A touch's name as it is read there; left out, the plan's own. */
  readonly name?: (touch: PlannedTouch) => string;
  /** Which plan they are of: next week's has the same touches. */
  readonly plan?: string;
  /** Touches that were in the calendar and are no more: they are cancelled. */
  readonly removed?: readonly PlannedTouch[];
}

const OCTETS = 75;

/** Octets of a character in UTF-8. */
function octetsOf(character: string): number {
  const point = character.codePointAt(0)!;
  return point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
}

/** Text as a value: backslash, comma, semicolon and line ends escaped; no control sign may stand in one. */
const text = (value: string): string =>
  plainNotes(value)
    .replace(/[\\,;]/g, '\\$&')
    .replace(/\n/g, '\\n');

/** An instant in UTC, for a zone without its own rules in the file is read as floating. */
const utc = (at: Instant): string =>
  new Date(Math.floor(at / 1000) * 1000).toISOString().replace(/[-:]|\.\d+/g, '');

/** A line folded at 75 octets, never within a character. */
function fold(line: string): string {
  const rows: string[] = [];
  let row = '';
  let octets = 0;
  for (const character of line) {
    const size = octetsOf(character);
    if (octets + size > OCTETS) {
      rows.push(row);
      [row, octets] = [' ', 1];
    }
    row += character;
    octets += size;
  }
  return [...rows, row].join('\r\n');
}

const alarm = (trigger: string, summary: string): string[] => [
  'BEGIN:VALARM',
  'ACTION:DISPLAY',
  `DESCRIPTION:${text(summary)}`,
  `TRIGGER:${trigger}`,
  'END:VALARM',
];

/** The key a touch keeps through every plan. */
export const touchKey = ({ batch, name }: Pick<PlannedTouch, 'batch' | 'name'>): string =>
  `${batch}/${name}`;

/** Half a letter has no octets. */
const whole = (name: string): string => name.replace(/\p{Cs}/gu, '\ufffd');

/** Stable and plain: letters, digits and their escapes. */
const uidOf = (touch: PlannedTouch, plan = ''): string =>
  `${encodeURIComponent(whole(`${plan}${touchKey(touch)}`)).replace(/%/g, '_')}@loafward`;

function event(touch: PlannedTouch, options: IcsOptions, isGone: boolean): string[] {
  const { stamp, sequence, describe, plan } = options;
  const name = options.name?.(touch) ?? touch.name;
  const told = describe?.(touch) ?? '';
  return [
    'BEGIN:VEVENT',
    `UID:${uidOf(touch, plan === undefined ? '' : `${plan}/`)}`,
    `DTSTAMP:${utc(stamp)}`,
    `LAST-MODIFIED:${utc(stamp)}`,
    `SEQUENCE:${(sequence[touchKey(touch)] ?? 0) + (isGone ? 1 : 0)}`,
    `DTSTART:${utc(touch.at)}`,
    `DTEND:${utc(touch.at + touch.hands * MINUTE)}`,
    `SUMMARY:${text(name)}`,
    ...(told === '' ? [] : [`DESCRIPTION:${text(told)}`]),
    `CATEGORIES:${text(touch.batch)}`,
    `STATUS:${isGone ? 'CANCELLED' : 'CONFIRMED'}`,
    'TRANSP:OPAQUE',
    ...(isGone ? [] : [...alarm('-PT10M', name), ...alarm('PT0M', name)]),
    'END:VEVENT',
  ];
}

/**
 * A plan as a calendar file (RFC 5545): an event a touch, two alarms each, in UTC. A copy: what rings at
 * the oven is no calendar's, some drop alarms and none reads the file again by itself.
 */
export function toIcs(touches: readonly PlannedTouch[], options: IcsOptions): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Loafward//Day//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    ...touches.flatMap((touch) => event(touch, options, false)),
    ...(options.removed ?? []).flatMap((touch) => event(touch, options, true)),
    'END:VCALENDAR',
  ];
  return `${lines.map(fold).join('\r\n')}\r\n`;
}
