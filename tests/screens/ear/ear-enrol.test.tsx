import { cleanup, screen } from '@solidjs/testing-library';
import { describe, expect, it, vi } from 'vitest';
import { ROUNDS } from '../../../src/core/ear/known.ts';
import { TAKES } from '../../../src/core/ear/person.ts';
import { readPeople } from '../../../src/core/ear/read-person.ts';
import { HAND_MARKS } from '../../../src/core/small/marks.ts';
import { earPhrases } from '../../../src/core/speech/words/ear-kitchen.ts';
import { TO_A_VOICE } from '../../bench/ear/to-a-voice.ts';
import { aPerson, aTake } from '../../fakes/said-phrases.ts';
import {
  button,
  CALL,
  earTests,
  headline,
  isOff,
  maybeButton,
  openEar,
  press,
  settle,
  slab,
  type EarStand,
} from './ear-pages.tsx';

earTests();

const ticks = (): string | null => document.querySelector('.ear-ticks')!.getAttribute('aria-label');
const panel = (): string | null => document.querySelector('.ear-words')!.textContent;
const keptIn = ({ voices }: EarStand) => readPeople(voices.rows, 'en');
/** One take after the other, each followed by the next by itself. */
const says = async ({ ear }: EarStand, times = TAKES, from = 0): Promise<void> => {
  for (let n = from; n < from + times; n += 1) {
    ear.said(aTake('plain', n));
    await settle();
  }
};
const toSay = async (stand: EarStand, mark = /^Star/): Promise<EarStand> => {
  await press(/^Whose voices/, mark, /^Go on speaking/);
  return stand;
};

describe('a new voice', () => {
  it('picks a mark that is free, is grown-up or child, and is kept before it has said a word', async () => {
    const stand = await openEar([aPerson(['done'], { mark: 'boat' })]);
    await press(/^Whose voices/, /^Add a voice/);
    expect(headline()).toBe('Pick your mark');
    expect(HAND_MARKS.filter((mark) => isOff(new RegExp(`^${mark}`, 'i')))).toEqual(['boat']);
    await press(/^Sun/);
    expect(headline()).toBe('Whose voice is it?');
    await press(/^Child/);
    expect(keptIn(stand).at(-1)).toEqual({ id: 'sun', mark: 'sun', child: true, sayings: {} });
    expect(headline()).toBe('“That’s done”');
    expect(stand.ear.opened).toBe(0);
    await press(/^All phrases/, /^That’s it/);
    expect(headline()).toBe('Sun');
    expect(screen.getByText('Child')).toBeTruthy();
  });

  it('may pick another mark, and says where it could not be kept', async () => {
    const stand = await openEar();
    await press(/^Whose voices/, /^Add a voice/, /^Fish/, /^Pick your mark/, /^Leaf/);
    stand.voices.full = true;
    await press(/^Grown.up/);
    expect(screen.getByText(/^The tablet is full/)).toBeTruthy();
    stand.voices.full = false;
    await press(/^Grown.up/);
    expect(keptIn(stand)).toEqual([{ id: 'leaf', mark: 'leaf', child: false, sayings: {} }]);
  });

  it('is one of as many as there are marks', async () => {
    await openEar(HAND_MARKS.map((mark) => aPerson(['done'], { mark })));
    await press(/^Whose voices/);
    expect(isOff(/^Add a voice/)).toBe(true);
    expect(screen.getByText(/as many as there are marks/)).toBeTruthy();
  });
});

describe('a phrase', () => {
  it('is said three times after one press, is kept at once and gives way to the next, which is listened to', async () => {
    const stand = await toSay(await openEar([aPerson([])]));
    expect([headline(), ticks(), panel()]).toEqual([
      '“That’s done”',
      '0 of 3 said',
      'The ear is shut',
    ]);
    expect(slab()).toBe('Beginthen say it 3 times');
    await press(/^Begin/);
    expect([stand.ear.opened, panel()]).toEqual([1, 'Say it now']);
    await says(stand, 1);
    expect([stand.ear.opened, ticks(), keptIn(stand)[0]!.sayings]).toEqual([2, '1 of 3 said', {}]);
    await says(stand, 1, 1);
    expect([stand.ear.opened, ticks()]).toEqual([3, '2 of 3 said']);
    await says(stand, 1, 2);
    expect(keptIn(stand)[0]!.sayings).toEqual(aPerson(['done']).sayings);
    expect([headline(), ticks(), stand.ear.opened]).toEqual(['“Take that back”', '0 of 3 said', 4]);
    expect(panel()).toBe('Say it now');
    await press(/^Skip this one/);
    expect([panel(), stand.ear.opened]).toEqual(['The ear is shut', 4]);
  });

  it('says by word whether somebody is heard, and tells the tablet to be quiet first', async () => {
    const stand = await toSay(await openEar([aPerson([])]));
    const say = vi.spyOn(stand.house, 'say');
    let hears: (speaks: boolean) => void = () => undefined;
    vi.spyOn(stand.ear, 'take').mockImplementation((_, onSpeaks) => {
      hears = onSpeaks;
      return { over: new Promise(() => undefined), stop: () => undefined, cancel: () => undefined };
    });
    await press(/^Begin/);
    expect(say.mock.calls).toEqual([['']]);
    hears(true);
    expect([panel(), slab()]).toEqual(['I hear you', 'I hear youit ends by itself']);
    hears(false);
    expect(panel()).toBe('Say it now');
  });

  it('takes the learned ear’s numbers where that one listens', async () => {
    const stand = await openEar([aPerson([])], 'learned');
    const take = vi.spyOn(stand.ear, 'take');
    await toSay(stand);
    await press(/^Begin/);
    expect(take.mock.calls[0]![0]).toBe('learned');
  });

  it.each([
    ['silent', /^Nobody was heard\. Say it once more/],
    ['denied', /^The microphone is not allowed/],
    ['none', /no microphone/],
    ['failed', /^That could not be heard/],
  ] as const)('is asked for again where a take came to nothing: %s', async (why, text) => {
    const stand = await toSay(await openEar([aPerson([])]));
    await press(/^Begin/);
    await says(stand, 2);
    stand.ear.said(why);
    await settle();
    expect(screen.getByText(text)).toBeTruthy();
    expect([ticks(), panel(), stand.ear.opened]).toEqual(['2 of 3 said', 'The ear is shut', 3]);
    expect(slab()).toBe('Go onthen say it once more');
    // What was said before is not lost.
    await press(/^Go on/);
    expect(screen.queryByText(text)).toBeNull();
    await says(stand, 1);
    expect(keptIn(stand)[0]!.sayings.done).toHaveLength(6);
  });

  it('is not kept of a take in which nothing was told apart', async () => {
    const stand = await toSay(await openEar([aPerson([])]));
    await press(/^Begin/);
    stand.ear.said([]);
    await settle();
    expect([ticks(), stand.ear.opened]).toEqual(['0 of 3 said', 1]);
    expect(screen.getByText(/^Nobody was heard/)).toBeTruthy();
  });

  it('may be ended by a press: what was heard till then is taken', async () => {
    const stand = await toSay(await openEar([aPerson([])]));
    await press(/^Begin/, /^Say it now/);
    expect(screen.getByText(/^Nobody was heard/)).toBeTruthy();
    expect(stand.ear.opened).toBe(1);
  });

  it('is held while the disk is full, and kept by a press once there is room', async () => {
    const stand = await toSay(await openEar([aPerson([])]));
    stand.voices.full = true;
    await press(/^Begin/);
    await says(stand);
    expect(screen.getByText(/^The tablet is full/)).toBeTruthy();
    expect([slab(), ticks(), keptIn(stand)[0]!.sayings]).toEqual([
      'Keep itthen the next phrase',
      '3 of 3 said',
      {},
    ]);
    stand.voices.full = false;
    await press(/^Keep it/);
    expect(keptIn(stand)[0]!.sayings.done).toHaveLength(6);
    expect(headline()).toBe('“Take that back”');
  });

  it('is skipped and gone back to, and what was begun of it is dropped', async () => {
    const stand = await toSay(await openEar([aPerson([])]));
    expect(isOff(/^Phrase before/)).toBe(true);
    await press(/^Begin/);
    await says(stand, 1);
    await press(/^Skip this one/);
    expect([headline(), ticks()]).toEqual(['“Take that back”', '0 of 3 said']);
    await press(/^Phrase before/);
    expect([headline(), ticks()]).toEqual(['“That’s done”', '0 of 3 said']);
    // The one that was open when it was left was shut: what it hears now is nobody's.
    expect(keptIn(stand)[0]!.sayings).toEqual({});
  });

  it('is drawn where it tells of something, and a digit stands as its sign', async () => {
    await toSay(await openEar([aPerson(ROUNDS.phrases.filter((one) => one !== 'lidOff'))]));
    expect(document.querySelector('.act-picture .sketch')!.getAttribute('aria-label')).toMatch(
      /lid/,
    );
    await press(/^Skip/, /^Digits now/);
    expect([headline(), document.querySelector('.ear-digit')!.textContent]).toEqual([
      '“Zero”',
      '0',
    ]);
  });
});

describe('a call', () => {
  it('shuts the microphone as it rings; nothing is opened while it does', async () => {
    const stand = await toSay(await openEar([aPerson([])]));
    await press(/^Begin/);
    await says(stand, 1);
    stand.ring(CALL);
    await settle();
    expect(screen.getByText(/a call comes first/)).toBeTruthy();
    expect([ticks(), panel(), stand.ear.opened]).toEqual(['1 of 3 said', 'The ear is shut', 2]);
    await press(/^Go on/);
    expect(stand.ear.opened).toBe(2);
    stand.ring(null);
    await press(/^Go on/);
    await says(stand, 2);
    expect(keptIn(stand)[0]!.sayings.done).toHaveLength(6);
  });

  it('is not talked over by the take that follows one that came just then', async () => {
    const stand = await toSay(await openEar([aPerson([])]));
    await press(/^Begin/);
    stand.ear.said(aTake());
    stand.ring(CALL);
    await settle();
    expect([ticks(), stand.ear.opened]).toEqual(['1 of 3 said', 1]);
    expect(screen.getByText(/a call comes first/)).toBeTruthy();
  });

  it('finds the microphone shut seconds before, as what is hot does', async () => {
    const stand = await toSay(await openEar([aPerson([])]));
    const { house, world } = stand;
    await house.take({
      kind: 'timer',
      timer: 't',
      name: 'kettle',
      call: 'act',
      until: house.now() + 9_000,
    } as never);
    await press(/^Begin/);
    const turn = (ms: number): void => {
      world.clock.turn(ms);
      world.beat();
    };
    turn(5_000);
    await settle();
    expect(panel()).toBe('Say it now');
    turn(2_000);
    await settle();
    expect(panel()).toBe('The ear is shut');
    await press(/^Begin/);
    expect(screen.getByText(/^Not while it is hot or a call comes/)).toBeTruthy();
    expect(stand.ear.opened).toBe(1);
  });

  it('is no reason to forget less: a voice is forgotten while it is hot', async () => {
    const stand = await openEar([aPerson(['done'])]);
    await stand.house.take({
      kind: 'timer',
      timer: 't',
      name: 'nuts',
      call: 'hot',
      until: stand.house.now() + 900_000,
    } as never);
    await press(/^Forget every voice/, /^Tap here first/, /^Then tap here/);
    expect(stand.voices.rows.size).toBe(0);
  });
});

describe('leaving', () => {
  it('shuts the microphone, and a take that came with it opens none', async () => {
    const stand = await toSay(await openEar([aPerson([])]));
    await press(/^Begin/);
    stand.ear.said(aTake());
    cleanup();
    await settle();
    expect(stand.ear.opened).toBe(1);
    expect(keptIn(stand)[0]!.sayings).toEqual({});
  });
});

describe('the list of phrases', () => {
  it('tells what is known, opens where something is left, and any may be said anew', async () => {
    const known = ROUNDS.phrases.slice(0, 5);
    const stand = await openEar([aPerson(known)]);
    await press(/^Whose voices/, /^Star/);
    expect(button(/^Phrases/).textContent).toBe('Phrases5 of 15');
    expect(button(/^Digits/).textContent).toBe('Digits0 of 11');
    expect(button(/^Go on speaking/).textContent).toBe('Go on speakingNew reading');
    await press(/^Phrases/);
    const listed = () =>
      [...document.querySelectorAll('.kitchen-grid .control')].map((el) => el.textContent);
    expect(listed()).toEqual([
      'Hush pleaseKnown',
      'New readingNot yet',
      'Not yetNot yet',
      'It’s readyNot yet',
    ]);
    await press(/^Further back/, /^That’s done/);
    expect(screen.getByText(/^This one is known/)).toBeTruthy();
    await press(/^Begin/);
    stand.ear.said(aTake('plain', 70));
    await settle();
    await says(stand, 2);
    const [first] = keptIn(stand)[0]!.sayings.done!;
    expect(first!.plain.data[0]).toBe(70);
    expect(keptIn(stand)[0]!.sayings.takeBack).toHaveLength(6);
    expect(headline()).toBe('“New reading”');
  });

  it('wants what the plain ear alone knows said anew to the learned one', async () => {
    await openEar([aPerson(['done'])], 'learned');
    await press(/^Whose voices/, /^Star/);
    expect(screen.getByText(/^Some phrases were said to the plain ear/)).toBeTruthy();
    expect(button(/^Phrases/).textContent).toBe('Phrases0 of 15');
    await press(/^Phrases/);
    expect(button(/^That’s done/).textContent).toBe('That’s doneSay it anew');
  });
});

describe('a round', () => {
  it('is five presses for somebody new: all phrases of it follow each other', async () => {
    const stand = await openEar();
    await press(/^Whose voices/, /^Add a voice/, /^Sun/, /^Grown.up/, /^Begin/);
    expect(TO_A_VOICE).toBe(5);
    for (const phrase of ROUNDS.phrases) {
      expect(headline()).toBe(`“${earPhrases[phrase]}”`);
      await says(stand);
    }
    expect(headline()).toBe('That was the last phrase');
    expect(stand.ear.opened).toBe(ROUNDS.phrases.length * TAKES);
    expect(Object.keys(keptIn(stand)[0]!.sayings)).toEqual([...ROUNDS.phrases]);
  });

  it('ends with its last phrase; digits come now or later, and then the try', async () => {
    const stand = await toSay(await openEar([aPerson(ROUNDS.phrases.slice(0, -1))]));
    expect(headline()).toBe(`“${earPhrases.no}”`);
    await press(/^Begin/);
    await says(stand);
    expect(headline()).toBe('That was the last phrase');
    expect(screen.getByText(/They may wait/)).toBeTruthy();
    await press(/^That’s it/);
    expect(button(/^Phrases/).textContent).toBe('Phrases15 of 15');
    expect(button(/^Go on speaking/).textContent).toBe('Go on speakingZero');
    expect(keptIn(stand)[0]!.sayings).toEqual(aPerson(ROUNDS.phrases).sayings);
  });

  it('of digits ends too, and leaves nothing to go on with', async () => {
    const all = [...ROUNDS.phrases, ...ROUNDS.digits];
    const stand = await toSay(await openEar([aPerson(all.slice(0, -1))]));
    expect(document.querySelector('.ear-digit')!.textContent).toBe('.');
    await press(/^Begin/);
    await says(stand);
    expect([headline(), maybeButton(/^Digits now/)]).toEqual(['That was the last digit', null]);
    await press(/^How well it hears here/);
    expect(headline()).toBe('How well it hears here');
    await press(/^Star/);
    expect(maybeButton(/^Go on speaking/)).toBeNull();
  });
});
