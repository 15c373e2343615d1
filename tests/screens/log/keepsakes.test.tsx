import { cleanup, fireEvent, render, screen, waitFor } from '@solidjs/testing-library';
import { createRoot, createSignal } from 'solid-js';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Call } from '../../../machines/attention/attention.ts';
import { openHouse } from '../../../src/app/open-house.ts';
import type { Neighbour } from '../../../src/core/circle/circle.ts';
import { drop, put } from '../../../src/core/circle/row.ts';
import type { About, Keepsake } from '../../../src/core/log/about.ts';
import { NOTHING_SAID } from '../../../src/core/log/about.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import type { NotWritten } from '../../../src/screens/house-circle.ts';
import type { House } from '../../../src/screens/house.ts';
import KeepsakesFace from '../../../src/screens/log/keepsakes/KeepsakesFace.tsx';
import { serveFormulas } from '../../fakes/baking.ts';
import { fakeHouseLog } from '../../fakes/house-log.ts';
import { loadedLater } from '../../fakes/loaded-later.ts';
import { jpeg } from '../../fakes/memory-pictures.ts';
import { fakeSpokenNotes, type FakeSpokenNotes } from '../../fakes/spoken-notes.ts';
import { makeFakeWorld, type FakeWorld } from '../../fakes/world.ts';
import { down, tap, turnedClock, up } from '../parts/touching.ts';
import '../settle.ts';

const START = 'f-1';
const clock = turnedClock();
const [ringing, setRinging] = createSignal<Call | null>(null);
const [caption, setCaption] = createSignal('');
let world: FakeWorld;
let house: House;
let fails: NotWritten | null;
let notes: FakeSpokenNotes;
let log: ReturnType<typeof fakeHouseLog>;
let left: number;

const photo = (id: string, at = 1): Keepsake => ({
  ...{ id, start: START, kind: 'photo', at, type: 'image/jpeg', bytes: jpeg(at) },
});
const voice = (id: string): Keepsake => ({
  ...{ id, start: START, kind: 'voice', at: 5, type: 'audio/webm', bytes: Uint8Array.of(7) },
});
const settled = async (): Promise<void> => {
  for (let i = 0; i < 30; i += 1) await Promise.resolve();
};

beforeEach(async () => {
  serveFormulas();
  let n = 0;
  vi.stubGlobal(
    'URL',
    Object.assign(URL, {
      createObjectURL: () => `blob:${(n += 1)}`,
      revokeObjectURL: () => undefined,
    }),
  );
  world = makeFakeWorld();
  house = { ...(await createRoot(() => openHouse(world))), ringing, caption };
  setRinging(null);
  setCaption('');
  fails = null;
  left = 0;
  notes = fakeSpokenNotes();
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

/** The page of a bake that has this. */
async function show(
  has: {
    readonly said?: Partial<About>;
    readonly kept?: readonly Keepsake[];
    readonly abouts?: Readonly<Record<string, About>>;
    readonly circle?: readonly Neighbour[];
  } = {},
): Promise<void> {
  const said = has.said ? { [START]: { ...NOTHING_SAID, at: 0, ...has.said } } : {};
  log = fakeHouseLog(
    { abouts: { ...has.abouts, ...said }, kept: has.kept ?? [], voices: notes },
    () => fails,
  );
  if (has.circle)
    await (await house.circle()).write({ puts: has.circle.map((one) => put('neighbours', one)) });
  render(() => (
    <PressGround now={clock}>
      <KeepsakesFace
        house={house}
        log={log}
        start={START}
        onOpen={() => undefined}
        onBack={() => (left += 1)}
      />
    </PressGround>
  ));
  await settled();
}
/** Its name, or its lines with a blank between them. */
const nameOf = (el: Element): string => {
  const lines = [...el.querySelectorAll('*')].flatMap(({ childNodes }) =>
    [...childNodes].filter(({ nodeType }) => nodeType === Node.TEXT_NODE),
  );
  const text = lines.map(({ textContent }) => textContent).join(' ');
  return (el.getAttribute('aria-label') ?? text).replace(/\s+/g, ' ').trim();
};
const find = (label: string | RegExp): HTMLElement | undefined =>
  screen
    .getAllByRole('button')
    .find((el) => (typeof label === 'string' ? nameOf(el) === label : label.test(nameOf(el))));
const named = (label: string | RegExp): HTMLElement => {
  const found = find(label);
  if (!found)
    throw new Error(`No ${label} in: ${screen.getAllByRole('button').map(nameOf).join(' | ')}`);
  return found;
};
const press = async (label: string | RegExp): Promise<void> => {
  clock.at += 1_000;
  tap(named(label));
  await settled();
};
const heading = (): string | undefined =>
  screen.getByRole('heading').textContent?.replace(/\s/g, ' ');
const said = () => log.abouts()[START];
const told = () => house.told().map(({ text }) => text);
const twoTaps = async (): Promise<void> => {
  await press('Tap here first');
  await press('Then tap here');
};
const choose = async (label: string, file: File): Promise<void> => {
  const input = screen.getByLabelText<HTMLInputElement>(label, { selector: 'input' });
  Object.defineProperty(input, 'files', { value: [file], configurable: true });
  Object.defineProperty(input, 'value', { value: '', writable: true, configurable: true });
  fireEvent.change(input);
  await settled();
  await waitFor(() => expect(heading()).not.toBe('Making it small'));
};
const file = (...bytes: number[]): File =>
  Object.assign(new File([jpeg(...bytes)], 'crumb.jpg', { type: 'image/jpeg' }), {
    arrayBuffer: async () => jpeg(...bytes).buffer,
  });

describe('the page', () => {
  it('tells at once what there is, and where it is kept', async () => {
    await show({
      said: { note: 'Sour,\nbut good', home: true, tags: ['best', 'for the mill'] },
      kept: [photo('a'), photo('b'), voice('v')],
    });
    expect(heading()).toBe('Album of this bake');
    expect(screen.getByText(/On.this.tablet/)).toBeTruthy();
    expect(named('Photos 2 of 6')).toBeTruthy();
    expect(named('Note Sour…')).toBeTruthy();
    expect(named('Spoken notes 1 of 6')).toBeTruthy();
    expect(named('Who ate it At home')).toBeTruthy();
    expect(named('Tags Best so far, for the mill')).toBeTruthy();
    expect(screen.getByAltText('The latest photo')).toBeTruthy();
    await press(/^That’s it/);
    expect(left).toBe(1);
  });

  it('hides a bake and shows it again, once that is written', async () => {
    await show();
    fails = 'full';
    await press('Hide this bake');
    await waitFor(() => expect(told()).toEqual([expect.stringMatching(/^The tablet is full/)]));
    expect(named('Hide this bake')).toBeTruthy();
    fails = null;
    await press('Hide this bake');
    expect(said()?.hidden).toBe(true);
    expect(screen.getByText(/^Hidden/)).toBeTruthy();
    await press('Show it again');
    expect(said()?.hidden).toBe(false);
  });

  it('says so where nothing of it can be read', async () => {
    log = fakeHouseLog();
    const shut = { ...log, keepsakes: () => Promise.reject(new Error('shut')) };
    render(() => (
      <PressGround now={clock}>
        <KeepsakesFace
          {...{ house, log: shut, start: START }}
          onOpen={() => {}}
          onBack={() => {}}
        />
      </PressGround>
    ));
    await settled();
    expect(heading()).toBe('It cannot be opened');
    expect(find('Erase for good')).toBeUndefined();
  });
});

describe('the note', () => {
  it('is typed, kept, and stays on the page where it was not written', async () => {
    await show();
    await press('Note none yet');
    fireEvent.input(screen.getByRole('textbox'), { target: { value: ' Sour ' } });
    fails = 'full';
    await press(/^That’s it/);
    expect(screen.getByRole<HTMLTextAreaElement>('textbox').value).toBe(' Sour ');
    await waitFor(() => expect(told()).toHaveLength(1));
    fails = null;
    await press(/^That’s it/);
    expect(said()?.note).toBe('Sour');
    expect(named('Note Sour')).toBeTruthy();
  });
});

describe('who ate it', () => {
  const LANE: readonly Neighbour[] = [
    { id: 'n1', name: 'B of the mill', watch: [] },
    { id: 'n2', name: 'Q', watch: [] },
  ];

  it('keeps marks alone, shown by the names of the circle', async () => {
    await show({ circle: LANE });
    await press('Who ate it none yet');
    await press('At home');
    await press('Q');
    await press('B of the mill');
    await press('Q ate it');
    expect(said()).toMatchObject({ ate: ['n1'], home: true });
    expect(JSON.stringify(log.abouts())).not.toContain('mill');
    await press(/^That’s it/);
    expect(named('Who ate it At home, B of the mill')).toBeTruthy();
  });

  it('names nobody who was erased from the circle', async () => {
    await show({ circle: LANE, said: { ate: ['n1', 'n2'] } });
    expect(named('Who ate it B of the mill, Q')).toBeTruthy();
    await (await house.circle()).erase({ puts: [drop('neighbours', 'n1')] });
    expect(named('Who ate it Q')).toBeTruthy();
    await press('Who ate it Q');
    expect(screen.queryByText('B of the mill')).toBeNull();
  });

  it('says so where the circle cannot be had, and forgets nobody', async () => {
    house = { ...house, circle: () => Promise.reject(new Error('shut')) };
    await show({ said: { ate: ['n1'] } });
    await press(/^Who ate it/);
    expect(screen.getByText(/names are not shown/)).toBeTruthy();
    await press('At home');
    expect(said()).toMatchObject({ ate: ['n1'], home: true });
  });
});

describe('tags', () => {
  it('are on and off by a press, the baker’s own beside the catalogue’s', async () => {
    const other = { ...NOTHING_SAID, at: 0, tags: ['for the mill'] };
    await show({ abouts: { 'f-2': other } });
    await press('Tags none yet');
    await press('A gift');
    await press('Further on');
    await press('for the mill');
    await press('From the top');
    await press('A gift on');
    expect(said()?.tags).toEqual(['for the mill']);
    await press('Your own words');
    fireEvent.input(screen.getByRole('textbox'), { target: { value: '  harbour   day ' } });
    await press(/^That’s it/);
    expect(said()?.tags).toEqual(['for the mill', 'harbour day']);
    expect(named('harbour day on')).toBeTruthy();
    // Off, it stays where it was: it may have been the wrong press.
    await press('harbour day on');
    expect(named('harbour day')).toBeTruthy();
    await press('Your own words');
    fireEvent.input(screen.getByRole('textbox'), { target: { value: 'a GIFT' } });
    await press(/^That’s it/);
    expect(said()?.tags).toEqual(['for the mill', 'gift']);
  });
});

describe('photos', () => {
  it('are taken from a file, shown once they are written, and erased by two taps or a hold', async () => {
    await show();
    await press('Photos none yet');
    expect(heading()).toBe('No photo yet');
    const camera = screen.getByLabelText<HTMLInputElement>('Use the camera', { selector: 'input' });
    expect([camera.accept, camera.getAttribute('capture')]).toEqual(['image/*', 'environment']);
    await choose('Choose one', file(1));
    expect(heading()).toBe('Photo 1 of 1');
    await choose('Use the camera', file(2));
    expect(heading()).toBe('Photo 2 of 2');
    await press('Next photo');
    expect(heading()).toBe('Photo 1 of 2');
    await press('Erase this one');
    expect(screen.getByText(/no file brings it here again/)).toBeTruthy();
    fails = 'closed';
    await twoTaps();
    expect(await log.keepsakes(START)).toHaveLength(2);
    expect(heading()).toBe('Erase this photo for good?');
    fails = null;
    await twoTaps();
    expect((await log.keepsakes(START)).map(({ bytes }) => bytes)).toEqual([jpeg(2)]);
    expect(heading()).toBe('Photo 1 of 1');
  });

  it('tells why one was not taken, in plain words, and nothing is changed', async () => {
    await show();
    await press('Photos none yet');
    for (const [why, words] of [
      ['none', 'That file is not a picture. Nothing was changed: choose another.'],
      ['large', /too large: at most 20 megabytes/],
      ['broken', /cannot be read here/],
      ['full', /^The tablet is full/],
    ] as const) {
      log.takePhoto = () => Promise.resolve(why);
      await choose('Choose one', file(1));
      await waitFor(() => expect(told().at(-1)).toMatch(words));
      expect(heading()).toBe('No photo yet');
    }
  });

  it('are six of a bake at most', async () => {
    await show({ kept: Array.from({ length: 6 }, (_, n) => photo(`p${n}`, n)) });
    await press('Photos 6 of 6');
    expect(heading()).toBe('Photo 6 of 6');
    await press('Next photo');
    expect(heading()).toBe('Photo 1 of 6');
    expect(named('Choose one').getAttribute('aria-disabled')).toBe('true');
    await choose('Choose one', file(9));
    expect(await log.keepsakes(START)).toHaveLength(6);
  });
});

describe('spoken notes', () => {
  it('are recorded between two presses, heard by a press, and erased for good', async () => {
    await show();
    await press('Spoken notes none yet');
    await press(/^Record/);
    expect(notes.now()).toBe('records');
    notes.hear(true);
    expect(named('Stop I hear you')).toBeTruthy();
    await press(/^Stop/);
    expect((await log.keepsakes(START)).map(({ kind }) => kind)).toEqual(['voice']);
    await press(/^Note 1/);
    expect(notes.now()).toBe('plays');
    await press('Note 1 stop');
    expect(notes.now()).toBeNull();
    await press(/^Note 1/);
    notes.ended('heard');
    await settled();
    expect(find('Note 1 stop')).toBeUndefined();
    await press('Erase note 1');
    clock.at += 1_000;
    const hold = named('Hold to erase');
    vi.useFakeTimers();
    down(hold);
    clock.at += 1_300;
    vi.advanceTimersByTime(1_300);
    up(hold);
    vi.useRealTimers();
    await settled();
    expect(await log.keepsakes(START)).toEqual([]);
    expect(heading()).toBe('Spoken notes');
  });

  it('are nothing where the microphone is not allowed or nobody spoke: it is told', async () => {
    await show();
    await press(/^Spoken notes/);
    for (const [why, words] of [
      ['denied', /not allowed/],
      ['silent', /Nobody was heard/],
      ['none', /no microphone/],
      ['failed', /Try once more/],
    ] as const) {
      await press(/^Record/);
      notes.end(why);
      await settled();
      expect(screen.getByText(words)).toBeTruthy();
    }
    expect(await log.keepsakes(START)).toEqual([]);
  });

  it('say so where they were not written, or cannot be heard', async () => {
    await show({ kept: [voice('v')] });
    await press(/^Spoken notes/);
    fails = 'full';
    await press(/^Record/);
    await press(/^Stop/);
    await waitFor(() => expect(told()).toEqual([expect.stringMatching(/^The tablet is full/)]));
    await press(/^Note 1/);
    notes.ended('lost');
    await settled();
    expect(screen.getByText(/cannot be heard/)).toBeTruthy();
  });

  const CALL = { id: 'c', kind: 'look', since: 0 } as unknown as Call;
  it('give way to a call: the microphone shuts, what plays is still', async () => {
    await show({ kept: [voice('v')] });
    await press(/^Spoken notes/);
    await press(/^Record/);
    setRinging(CALL);
    await settled();
    expect(notes.now()).toBeNull();
    expect(screen.getByText(/a call comes first/)).toBeTruthy();
    setRinging(null);
    await press(/^Note 1/);
    expect(notes.now()).toBe('plays');
    setRinging(CALL);
    await settled();
    expect(notes.now()).toBeNull();
    await press(/^Note 1/);
    expect(notes.now()).toBeNull();
  });

  it('are six of a bake at most, and none where the microphone cannot be had', async () => {
    await show({ kept: Array.from({ length: 6 }, (_, n) => voice(`v${n}`)) });
    await press(/^Spoken notes/);
    await press('Full erase one first');
    expect(notes.now()).toBeNull();
    cleanup();
    log = { ...log, voices: () => Promise.reject(new Error('asleep')) };
    render(() => (
      <PressGround now={clock}>
        <KeepsakesFace {...{ house, log, start: START }} onOpen={() => {}} onBack={() => {}} />
      </PressGround>
    ));
    await settled();
    await press(/^Spoken notes/);
    expect(screen.getByText(/microphone cannot be reached/)).toBeTruthy();
    await press(/^Note 1/);
    expect(notes.now()).toBeNull();
  });

  it('stay the same presses while others come and go', async () => {
    await show({ kept: [voice('v'), voice('w')] });
    await press(/^Spoken notes/);
    const second = named(/^Note 2/);
    await press(/^Record/);
    await press(/^Stop/);
    expect(named(/^Note 2/)).toBe(second);
    await press(/^Note 1/);
    await press('Erase note 1');
    await twoTaps();
    expect(screen.getAllByRole('button').filter((el) => /^Note/.test(nameOf(el)))).toHaveLength(2);
  });

  it('give way to what the tablet says, and are still once the page is left', async () => {
    await show({ kept: [voice('v')] });
    await press(/^Spoken notes/);
    await press(/^Note 1/);
    setCaption('Come and look');
    await settled();
    expect(notes.now()).toBeNull();
    setCaption('');
    await press(/^Note 1/);
    await press('Album of this bake');
    expect(notes.now()).toBeNull();
    await press(/^Spoken notes/);
    await press(/^Record/);
    await press('Album of this bake');
    expect(notes.now()).toBeNull();
    expect(await log.keepsakes(START)).toHaveLength(1);
  });
});

it('erases all that names anybody for good, and says what stays', async () => {
  await show({
    said: { note: 'Sour', ate: ['n1'], home: true, tags: ['best', 'for the mill'] },
    kept: [photo('a'), voice('v')],
  });
  await press('Erase for good');
  expect(screen.getByText(/The facts of the bake stay/)).toBeTruthy();
  await press('Keep it');
  expect(await log.keepsakes(START)).toHaveLength(2);
  await press('Erase for good');
  await twoTaps();
  expect(await log.keepsakes(START)).toEqual([]);
  expect(said()).toMatchObject({ note: '', ate: [], home: false, tags: ['best'] });
  expect(named('Photos none yet')).toBeTruthy();
});
