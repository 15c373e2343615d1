import { tongue } from '../../../core/speech/tongue.ts';
import { createMemo, type Accessor } from 'solid-js';
import type { ListedBake } from '../../../core/log/bake-list.ts';
import {
  choicesOf,
  findBakes,
  type BakeQuery,
  type Choice,
  type FindBeside,
} from '../../../core/log/find-bakes.ts';
import { tagName, TAGS } from '../../../core/log/tags.ts';
import { TURNED_OUT } from '../../../core/log/turned-out.ts';
import { turnedChoices } from '../../../core/speech/words/log-list.ts';
import { showMonth } from '../../../core/speech/show-month.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { makeAllBakes } from '../all-bakes.ts';
import type { FaceProps } from '../face.ts';
import type { Finding, FoundBy } from './finding.ts';

export interface Found {
  /** Those that are looked for. */
  readonly bakes: Accessor<readonly ListedBake[]>;
  /** How many there are when nothing is looked for; those that are hidden only while they are shown. */
  readonly of: Accessor<number>;
  readonly hidden: Accessor<number>;
  /** What may be chosen of one kind, among the bakes that all else leaves in. */
  choices(by: FoundBy): readonly Choice[];
  /** What a choice is called. */
  nameOf(by: FoundBy, value: string): string;
}

/** The tablet's own month, as the date beside it. */
const monthAt = (wall: number): string => {
  const at = new Date(wall);
  return `${at.getFullYear()}-${String(at.getMonth() + 1).padStart(2, '0')}`;
};

const orderIn = (all: readonly string[], value: string): number => {
  const at = all.indexOf(value);
  return at < 0 ? all.length : at;
};

/** The bakes of the Log as they are looked for. */
export function makeFound(
  { house, log }: Pick<FaceProps, 'house' | 'log'>,
  finding: Finding,
): Found {
  const all = makeAllBakes(house, log);
  const beside = (): FindBeside => ({
    abouts: log.abouts(),
    tagName,
    monthOf: ({ at }) => monthAt(house.wall(at)),
  });
  const found = (query: BakeQuery): readonly ListedBake[] => findBakes(all(), query, beside());
  const bakes = createMemo(() => found(finding.query()));
  const hidden = createMemo(() => {
    const abouts = log.abouts();
    const away = new Set(Object.keys(abouts).filter((start) => abouts[start]?.hidden));
    return away.size === 0 ? 0 : all().filter(({ start }) => away.has(start)).length;
  });
  const of = (): number => all().length - (finding.query().hidden ? 0 : hidden());
  /** As each is called now: the latest bake is the first. */
  const breads = createMemo(
    () =>
      new Map(
        all()
          .toReversed()
          .map(({ formula, name }) => [formula, name]),
      ),
  );
  const tagsOf = ({ start }: ListedBake): readonly string[] => log.abouts()[start]?.tags ?? [];
  const nameOf = (by: FoundBy, value: string): string => {
    if (by === 'month') return showMonth(value);
    if (by === 'turned') return turnedChoices[value as keyof typeof turnedChoices];
    if (by === 'tag') return tagName(value);
    return showBread(breads().get(value) ?? value);
  };
  const byName = (by: FoundBy) => (a: Choice, b: Choice) =>
    nameOf(by, a.value).localeCompare(nameOf(by, b.value), tongue());
  return {
    bakes,
    of,
    hidden,
    nameOf,
    choices(by) {
      const { [by]: _, ...rest } = finding.query();
      const left = found(rest);
      const { monthOf } = beside();
      if (by === 'month') return choicesOf(left, (bake) => [monthOf(bake)]);
      if (by === 'formula')
        return choicesOf(left, ({ formula }) => [formula]).toSorted(byName('formula'));
      const order: readonly string[] = by === 'turned' ? TURNED_OUT : TAGS;
      return choicesOf(left, by === 'turned' ? ({ turned }) => [turned] : tagsOf)
        .toSorted(byName(by))
        .toSorted((a, b) => orderIn(order, a.value) - orderIn(order, b.value));
    },
  };
}
