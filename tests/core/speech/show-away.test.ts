import { afterEach, expect, it } from 'vitest';
import { de } from '../../../src/core/speech/de.ts';
import { awayPage } from '../../../src/core/speech/de/day.ts';
import { awayWhats, showAway } from '../../../src/core/speech/show-away.ts';
import { tellBecause } from '../../../src/core/speech/tell-plan.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';

afterEach(() => speakIn('en'));

it('keeps hours away by their English words and shows them in the tongue that stands', () => {
  speakIn('de', de);
  expect(awayWhats().map(({ value }) => value)).toEqual(['asleep', 'at work', 'out']);
  expect(showAway('asleep')).toBe(awayPage.asleep);
  expect(tellBecause(['asleep']).join()).toContain(awayPage.asleep);
});

it('leaves a kitchen’s own words as they are', () => {
  speakIn('de', de);
  expect(showAway('at the mill')).toBe('at the mill');
});
