import { cleanup, screen } from '@solidjs/testing-library';
import { describe, expect, it, vi } from 'vitest';
import type { EarTold } from '../../../machines/ear-port.ts';
import type { Heard } from '../../../src/core/ear/heard.ts';
import { EAR_PHRASES, type EarPhrase } from '../../../src/core/ear/phrases.ts';
import { ROUNDS } from '../../../src/core/ear/known.ts';
import { earPhrases } from '../../../src/core/speech/words/ear-kitchen.ts';
import { aPerson } from '../../fakes/said-phrases.ts';
import {
  CALL,
  earTests,
  headline,
  maybeButton,
  openEar,
  press,
  settle,
  slab,
  type EarStand,
} from './ear-pages.tsx';

earTests();

const star = aPerson(ROUNDS.phrases);
const toTry = async (people = [star], ear: 'off' | 'plain' = 'plain'): Promise<EarStand> => {
  const stand = await openEar(people, ear);
  await press(/^Whose voices/, /^Star/, /^How well it hears here/);
  return stand;
};
const begun = async (): Promise<EarStand> => {
  const stand = await toTry();
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  await press(/^Begin/);
  return stand;
};
const asked = (): EarPhrase =>
  EAR_PHRASES.find((phrase) => headline() === `“${earPhrases[phrase]}”`)!;
const said = (heard: Heard): EarTold => ({ kind: 'said', heard });
const right = (): EarTold => said({ phrase: asked(), person: 'star' });
const none = (why: 'unclear' | 'other' | 'long' | 'loud'): EarTold => said({ phrase: null, why });
const progress = (): string => slab()!.replace(/^Stop here/, '');

describe('how well it hears here', () => {
  it('asks for one phrase after another with few listened for, and tells what came of it', async () => {
    const { ear } = await begun();
    expect([progress(), ear.opened, ear.asked!.active.length]).toEqual(['1 of 8', 1, 4]);
    expect(ear.asked).toMatchObject({ engine: 'plain', people: [star] });
    ear.tell({ kind: 'room', db: -40 });
    const seen = new Set<EarPhrase>();
    for (let n = 0; n < 8; n += 1) {
      expect(ear.asked!.active).toContain(asked());
      seen.add(asked());
      ear.tell(right());
    }
    expect([seen.size, ear.opened, ear.asked]).toEqual([8, 2, null]);
    expect(headline()).toBe('8 of 8 heard right');
    expect(screen.getByText('It hears you well here.')).toBeTruthy();
    expect(screen.getByText('The room was lively.')).toBeTruthy();
    expect(screen.queryByText(/^Taken for another/)).toBeNull();
    expect(document.body.textContent).not.toContain('%');
  });

  it('counts what was taken for another apart, and says what to do', async () => {
    const { ear } = await begun();
    for (let n = 0; n < 4; n += 1) ear.tell(right());
    const other = ear.asked!.active.find((phrase) => phrase !== asked())!;
    ear.tell(said({ phrase: other, person: 'star' }));
    ear.tell(none('unclear'));
    ear.tell(none('other'));
    vi.advanceTimersByTime(6_000);
    expect(headline()).toBe('4 of 8 heard right');
    expect(screen.getByText(/^Often\. Come nearer/)).toBeTruthy();
    expect(screen.getByText('Taken for another: 1. Taking back undoes that.')).toBeTruthy();
  });

  it('sends to the tiles where little was heard, and says that the room was loud', async () => {
    const { ear } = await begun();
    ear.tell({ kind: 'room', db: -20 });
    for (let n = 0; n < 8; n += 1) ear.tell(none('loud'));
    expect(headline()).toBe('0 of 8 heard right');
    expect(screen.getByText(/keep to the tiles/)).toBeTruthy();
    expect(screen.getByText(/^The room was loud/)).toBeTruthy();
  });

  it('waits six seconds for a phrase, a little more for whoever is speaking, and not for ever', async () => {
    const { ear } = await begun();
    vi.advanceTimersByTime(5_900);
    expect(progress()).toBe('1 of 8');
    vi.advanceTimersByTime(100);
    expect(progress()).toBe('2 of 8');
    ear.tell({ kind: 'speaks', speaks: true });
    expect(screen.getByText('I hear you')).toBeTruthy();
    vi.advanceTimersByTime(9_900);
    expect(progress()).toBe('2 of 8');
    vi.advanceTimersByTime(100);
    expect(progress()).toBe('3 of 8');
    ear.tell({ kind: 'speaks', speaks: false });
    expect(screen.getByText('Say it now')).toBeTruthy();
    // Talk was not meant for it.
    ear.tell(none('long'));
    expect(progress()).toBe('3 of 8');
    vi.advanceTimersByTime(48_000);
    expect(headline()).toBe('0 of 8 heard right');
  });

  it('hears nothing more of what it listened for before', async () => {
    const { ear } = await toTry();
    const tells: ((told: EarTold) => void)[] = [];
    const shut = vi.fn();
    vi.spyOn(ear, 'listen').mockImplementation((_, tell) => {
      tells.push(tell);
      return shut;
    });
    await press(/^Begin/);
    for (let n = 0; n < 4; n += 1) tells[0]!(right());
    expect([tells.length, shut.mock.calls.length, progress()]).toEqual([2, 1, '5 of 8']);
    tells[0]!(right());
    expect(progress()).toBe('5 of 8');
  });

  it('ends by a press with what there is, and may be had again', async () => {
    const { ear } = await begun();
    ear.tell(right());
    ear.tell(right());
    await press(/^Stop here/);
    expect([headline(), ear.asked]).toEqual(['2 of 2 heard right', null]);
    await press(/^Try again/);
    expect(progress()).toBe('1 of 8');
    await press(/^Stop here/);
    expect(headline()).toBe('Nothing was said');
    await press(/^That’s it/);
    expect(headline()).toBe('Star');
  });

  it.each([
    ['denied', /^The microphone is not allowed/],
    ['none', /no microphone/],
    ['failed', /^That could not be heard/],
    ['gone', /^The microphone was taken away/],
  ] as const)('says why it ended: %s', async (why, text) => {
    const { ear } = await begun();
    ear.tell({ kind: 'over', why });
    expect(headline()).toBe('Nothing was said');
    expect(screen.getByText(text)).toBeTruthy();
  });

  it('lets go of the microphone as a call rings, and opens none while it does', async () => {
    const { ear, ring } = await begun();
    ear.tell(right());
    ring(CALL);
    expect([ear.asked, headline()]).toEqual([null, '1 of 1 heard right']);
    expect(screen.getByText(/a call comes first/)).toBeTruthy();
    await press(/^Try again/);
    expect(ear.opened).toBe(1);
    expect(screen.getByText(/^Not while it is hot or a call comes/)).toBeTruthy();
    ring(null);
    await press(/^Begin/);
    expect(ear.opened).toBe(2);
  });

  it('lets go of the microphone when the page is left', async () => {
    const { ear } = await begun();
    cleanup();
    await settle();
    expect(ear.asked).toBeNull();
  });

  it('is not begun while nothing listens, or too little is known', async () => {
    await toTry([star], 'off');
    expect(screen.getByText('Choose first whether it listens.')).toBeTruthy();
    expect(maybeButton(/^Begin/)).toBeNull();
    cleanup();
    await toTry([aPerson(['done'])]);
    expect(screen.getByText(/^It knows too few phrases/)).toBeTruthy();
    expect(maybeButton(/^Begin/)).toBeNull();
    await press(/^That’s it/);
    expect(headline()).toBe('Star');
  });
});
