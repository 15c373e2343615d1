import { judgeFact } from '../../../machines/kitchen/judge-fact.ts';
import { MACHINES, type Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { starterWait } from '../../core/day/starter-wait.ts';
import { waitFor } from '../../core/day/waits.ts';
import { verdicts, verdictsLines } from '../../core/speech/words/verdicts.ts';
import { said, shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { MINUTE, type Instant } from '../../core/units.ts';
import type { BenchView } from './view.ts';

/** It is told in steps of this: nobody stands a loaf out to the minute. Judgement. */
const STEP = 5;

/** What a verdict says of loaves that are to stand out, and the same with how long. */
const forHowLong = (detail: string): string | undefined => {
  if (detail === verdictsLines.standOutBecause) return verdictsLines.standOutFor;
  return detail === verdicts.poke.because.notYet ? verdictsLines.standOnFor : undefined;
};

/** Where loaves are told to stand out: for how long, as that press would have it. */
export function standView(view: BenchView, kitchen: Kitchen, now: Instant): BenchView {
  const { deed } = view.slab;
  const template = forHowLong(view.detail);
  if (template === undefined || deed?.kind !== 'press') return view;
  const at = Math.max(now, kitchen.now);
  const press = { ...deed, id: 'if-pressed', device: 'none', at, raw: at };
  const judged = judgeFact(kitchen, MACHINES, press, waitFor, starterWait);
  const marks = judged?.fact.results?.find(({ who }) => who === deed.who)?.marks ?? {};
  const look = marks['look'] ?? marks['poke'];
  if (look === undefined) return view;
  const minutes = STEP * Math.max(1, Math.round((look - at) / MINUTE / STEP));
  return {
    ...view,
    detail: fill(template, shown({ minutes })),
    slab: { ...view.slab, then: fill(verdictsLines.standThen, shown({ minutes })) },
    spoken: fill(template, said({ minutes })),
  };
}
