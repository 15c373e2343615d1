import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { NOTHING_SAID, type Keepsake } from '../../../src/core/log/about.ts';
import { fileNameOf } from '../../../src/screens/log/bake/shared-file.ts';
import { fakeHouseLog } from '../../fakes/house-log.ts';
import { Hand } from '../../machines/support/hand.ts';
import { walkTo } from '../../machines/support/onward.ts';
import { ARMED, tap } from '../parts/touching.ts';
import { showBake } from './show-bake.tsx';

afterEach(cleanup);

const FROM = Date.UTC(2031, 4, 2, 6);
const kept = (id: string, kind: Keepsake['kind'], byte: number): Keepsake => ({
  id,
  start: 'f1',
  kind,
  at: FROM,
  type: kind === 'photo' ? 'image/jpeg' : 'audio/webm',
  bytes: new Uint8Array([byte, byte, byte]),
});
const LOG = {
  abouts: {
    f1: {
      ...NOTHING_SAID,
      note: 'M. had the <b>dark</b> one.',
      tags: ['best', 'for M.'],
      ate: ['neighbour-7'],
      home: true,
      at: 0,
    },
  },
  kept: [kept('p', 'photo', 65), kept('v', 'voice', 90)],
};

const baked = (note = 'The ear is fine.'): Hand => {
  const hand = new Hand({ now: FROM });
  hand.start('a', 'mix.first');
  walkTo(hand, 'a', 'mix.temperature');
  hand.dough('a', 25);
  walkTo(hand, 'a', 'cool.note');
  hand.press('a', 'noted', { text: note });
  return hand;
};
const press = (clock: { at: number }, label: RegExp): void => {
  clock.at += ARMED + 700;
  tap(screen.getByRole('button', { name: label }));
};
const handOn = (clock: { at: number }): void => {
  clock.at += ARMED + 700;
  tap(document.querySelector('.slab')!);
};
const texts = (): string => document.querySelector('main')!.textContent!.replaceAll('\u00a0', ' ');
const bodyOf = (text: string): string =>
  new DOMParser().parseFromString(text, 'text/html').body.textContent!;

describe('a bake that is handed on', () => {
  it('says what is in it before it goes, and holds its values', async () => {
    const { clock, handed } = await showBake('share', baked().records, 'f1', fakeHouseLog(LOG));
    expect(texts()).toContain('In it: times, readings, calls, loads, weights and the chart.');
    expect(texts()).toContain('Not in it: names, who ate it, voices.');
    expect(handed).toEqual([]);
    handOn(clock);
    await expect.poll(() => handed.length).toBe(1);
    const [file] = handed;
    expect([file!.name, file!.type]).toEqual(['cherry-and-hazelnut-2031-05-02.html', 'text/html']);
    const body = bodyOf(file!.text as string);
    for (const word of [
      'Cherry and hazelnut',
      'Handed over',
      'Dough temperature',
      '25 °C',
      'First mix',
    ])
      expect(body).toContain(word);
    await expect.poll(texts).toContain('Saved in this device’s downloads.');
  });

  it('has nothing that was typed, no photo and no voice unless they are wanted', async () => {
    const { clock, handed } = await showBake('share', baked().records, 'f1', fakeHouseLog(LOG));
    handOn(clock);
    await expect.poll(() => handed.length).toBe(1);
    const text = handed[0]!.text as string;
    for (const word of [
      'M. had',
      'for M.',
      'Best so far',
      'The ear is fine',
      'neighbour-7',
      '<img',
    ])
      expect(text).not.toContain(word);
  });

  it('has what was typed and the photos once their tiles are pressed, and a word of care', async () => {
    const { clock, handed } = await showBake('share', baked().records, 'f1', fakeHouseLog(LOG));
    await expect
      .poll(() => screen.queryByRole('button', { name: /Photos.*left out/ }))
      .toBeTruthy();
    press(clock, /Your words/);
    expect(texts()).toContain('it may name somebody');
    press(clock, /Photos/);
    expect(texts()).toContain('they may show somebody');
    handOn(clock);
    await expect.poll(() => handed.length).toBe(1);
    const text = handed[0]!.text as string;
    expect(bodyOf(text)).toContain('The ear is fine.; M. had the <b>dark</b> one.');
    expect(text).not.toContain('<b>dark');
    expect(text.match(/data:image\/jpeg;base64,QUFB/g)).toHaveLength(1);
    // The voice's bytes, and who ate it.
    for (const word of ['WlpaWg', 'WlpZ', 'neighbour-7']) expect(text).not.toContain(word);
    press(clock, /Your words/);
    press(clock, /Photos/);
    handOn(clock);
    await expect.poll(() => handed.length).toBe(2);
    expect(handed[1]!.text).not.toContain('M. had');
    expect(handed[1]!.text).not.toContain('<img');
  });

  it('keeps a note that a press left: it names nobody', async () => {
    const { clock, handed } = await showBake('share', baked('good').records, 'f1');
    expect(screen.getByRole('button', { name: /Your words/ }).ariaDisabled).toBe('true');
    handOn(clock);
    await expect.poll(() => handed.length).toBe(1);
    expect(bodyOf(handed[0]!.text as string)).toContain('It was good');
  });

  it('goes as a sheet of its readings too, and of no other bake’s', async () => {
    const hand = baked();
    hand.start('a', 'mix.temperature');
    hand.dough('a', 31);
    const { clock, handed } = await showBake('share', hand.records, 'f1');
    press(clock, /As a sheet/);
    await expect.poll(() => handed.length).toBe(1);
    const { name, type, text } = handed[0]!;
    expect([name, type]).toEqual(['cherry-and-hazelnut-2031-05-02.csv', 'text/csv']);
    expect(text).toContain('Dough temperature,25,°C');
    expect(text).not.toContain(',31,');
  });
});

describe('the name of a page file', () => {
  it('is plain letters whatever the bread is called', () => {
    expect(fileNameOf('Pão / ../ "x"', '2031-05-02', 'html')).toBe('pao-x-2031-05-02.html');
    expect(fileNameOf('Хліб', '', 'html')).toBe('bake.html');
  });
});
