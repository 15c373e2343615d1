import { joiners } from './words/several.ts';

/** As long as a name may be beside other bakes, in letters; a longer first word stays whole. */
const MOST = 10;

/**
 * The first words of a bread's name, as many as fit: 'Cherry' of 'Cherry and hazelnut'.
 */
export function shortName(name: string): string {
  const words = name.trim().split(/\s+/);
  let kept = words.slice(0, 1);
  for (let n = 2; n <= words.length; n += 1) {
    const more = words.slice(0, n);
    if (more.join(' ').length > MOST) break;
    kept = more;
  }
  const open = joiners.all.split(' ');
  while (kept.length > 1 && open.includes(kept.at(-1)!.toLowerCase())) kept = kept.slice(0, -1);
  return kept.join(' ');
}
