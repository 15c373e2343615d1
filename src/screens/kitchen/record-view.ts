import { nextCall } from '../../../machines/kitchen/next-call.ts';
import { MACHINES, type Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { openTasks } from '../../../machines/kitchen/open-tasks.ts';
import { metaOf, stageOf } from '../../../machines/kitchen/stage-of.ts';
import type { Studio } from '../../../machines/ports.ts';
import type { Task } from '../../core/records/task.ts';
import { record } from '../../core/speech/en/record.ts';
import type { Instant } from '../../core/units.ts';

/** What a gate stands before. */
const GATED: ReadonlySet<string> = new Set(['hot', 'blade', 'machine']);
/** Clips on one page: with two presses to turn it, six at most. */
const ON_PAGE = 4;
/** As many words of a clip as a small press shows. */
const WORDS = 6;
/** The microphone is let go this long before a call, ms: the kitchen's time moves on by the second. Judgement. */
const BEFORE_CALL = 3_000;

export type Clip = Studio['clips'][number];
export const STAGES = Object.keys(record.stages) as readonly (keyof typeof record.stages)[];
export type StageOfClips = (typeof STAGES)[number];

/** The clips of one stage, as they are read out. */
export const clipsOf = (clips: readonly Clip[], stage: StageOfClips): readonly Clip[] =>
  clips.filter(({ file }) => file === `${stage}.mp3`);

/** Pages of a list, each a few clips. */
export const pagesOf = (clips: readonly Clip[]): readonly (readonly Clip[])[] =>
  Array.from({ length: Math.ceil(clips.length / ON_PAGE) }, (_, i) =>
    clips.slice(i * ON_PAGE, (i + 1) * ON_PAGE),
  );

/** The words of a clip as a sentence begins. */
export const wordsOf = ({ id }: Clip): string => id.charAt(0).toUpperCase() + id.slice(1);

/** The first of them, where there are many. */
export function shortWords(clip: Clip): string {
  const words = wordsOf(clip).split(' ');
  return words.length > WORDS ? `${words.slice(0, WORDS).join(' ')}…` : words.join(' ');
}

/** The first that nobody has spoken anew, from the place `from` on and then from the top; null: none is left. */
export function nextToRecord(
  clips: readonly Clip[],
  recorded: ReadonlySet<string>,
  from = 0,
): Clip | null {
  const left = ({ id }: Clip): boolean => !recorded.has(id);
  return clips.slice(from).find(left) ?? clips.find(left) ?? null;
}

/** Tasks of free hands at a hot tray, a boiling pot or a blade. */
const HOT_TASKS: ReadonlySet<string> = new Set<Task>(['toast', 'kettle', 'cut']);

/** One of them was asked for and is not done: somebody may be at it. */
const isAtHotTask = (machine: Parameters<typeof openTasks>[0]): boolean =>
  openTasks(machine).some(({ task, called }) => called !== null && HOT_TASKS.has(task));

/** Nothing is hot, and nothing calls or is about to: the tablet may listen. */
export function mayRecord(kitchen: Kitchen, now: Instant): boolean {
  const isHot =
    stageOf(kitchen.oven) !== 'off' ||
    Object.values(kitchen.timers).some(({ call }) => call === 'hot') ||
    [kitchen.oven, ...Object.values(kitchen.bakes)].some(isAtHotTask) ||
    Object.values(kitchen.bakes).some((bake) => GATED.has(metaOf(bake).hazard ?? 'none'));
  if (isHot) return false;
  const call = nextCall(kitchen, MACHINES, () => null);
  return call === null || call.at - now > BEFORE_CALL;
}
