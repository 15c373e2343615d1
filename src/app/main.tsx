import { render } from 'solid-js/web';
import { makeBeat } from '../adapters/beat.ts';
import { makeClock } from '../adapters/clock.ts';
import { readDevice } from '../adapters/device.ts';
import { makeHold } from '../adapters/hold.ts';
import { makeIds } from '../adapters/ids.ts';
import { askToKeep } from '../adapters/keep.ts';
import { makeLaterUpdate } from '../adapters/later-update.ts';
import { makeNews } from '../adapters/news.ts';
import { makeScreenAwake } from '../adapters/screen-awake.ts';
import { makeSettings } from '../adapters/settings.ts';
import { makeShowing } from '../adapters/showing.ts';
import { makeSound } from '../adapters/sound/sound.ts';
import { makeSpeaker } from '../adapters/speaker/speaker.ts';
import { makeLogStore } from '../adapters/store.ts';

import { App } from './App.tsx';
import { drawn } from './drawn.ts';
import { loadTongue, tongueOf } from './load-tongue.ts';
import { LOGS } from './logs.ts';
import { openHouse } from './open-house.ts';
import { openWays } from './ways.ts';
import '../parts/tokens.css';

const later = (ms: number, then: () => void) => {
  const timer = setTimeout(then, ms);
  return () => clearTimeout(timer);
};
/** Only a rehearsal needs it. */
const rehearsal = () => import('./rehearsal.ts');
const open = async (root: HTMLElement): Promise<void> => {
  const wall = makeClock();
  const settings = makeSettings();
  const rehearses = new URLSearchParams(location.search).has('rehearsal');
  const name = rehearses ? LOGS.rehearsal : LOGS.earnest;
  const hold = makeHold();
  // Before the first render: two pages that both believe they hold the kitchen write over each other.
  const holds = await hold.take(name);
  const sound = makeSound();
  const reload = (): void => location.reload();
  const ways = await openWays(settings, document.documentElement, {
    hour: () => new Date(wall.now()).getHours(),
    every: makeBeat,
    tongue: tongueOf(navigator.languages),
    reload,
  });
  // Before anything is read of a catalogue.
  await loadTongue(ways.ways().tongue, document.documentElement);
  const house = await openHouse({
    clock: rehearses
      ? await rehearsal().then(({ rehearsalClock }) => rehearsalClock(settings, wall))
      : wall,
    showing: makeShowing(),
    store: makeLogStore(name),
    lent: rehearses ? () => rehearsal().then(({ lendHere }) => lendHere()) : null,
    settings,
    sound,
    speaker: makeSpeaker({ context: sound.context, later, settings }),
    studio: () =>
      import('../adapters/speaker/studio.ts').then(({ openStudio }) => openStudio(settings, later)),
    spokenNotes: () =>
      import('../adapters/speaker/spoken-notes.ts').then((its) => its.openSpokenNotes(later)),
    planner: () =>
      import('../adapters/planner/planner.ts').then(({ makePlanner }) => makePlanner()),
    pictures: () =>
      import('../adapters/pictures/open-pictures.ts').then((its) => its.openPictures(!rehearses)),
    circle: () =>
      import('../adapters/circle/open-circle-rows.ts').then((its) =>
        its.openCircleRows(!rehearses),
      ),
    keepsakes: () =>
      import('../adapters/log/open-keepsake-rows.ts').then((its) =>
        its.openKeepsakeRows(!rehearses),
      ),
    otherLogs: () =>
      import('../adapters/log/open-other-logs.ts').then((its) => its.openOtherLogs(!rehearses)),
    ear: () =>
      import('../adapters/ear/open-ear.ts').then((its) => its.openEar(later, sound.context)),
    voices: () =>
      import('../adapters/ear/open-voice-rows.ts').then((its) => its.openVoiceRows(!rehearses)),
    zone: () => new Intl.DateTimeFormat().resolvedOptions().timeZone,
    screen: makeScreenAwake(),
    update: makeLaterUpdate(),
    news: makeNews(name),
    ids: makeIds(await readDevice(settings)),
    ways,
    holds,
    whenFree: (then) => hold.whenFree(name, then),
    secure: isSecureContext,
    askToKeep,
    later,
    drawn,
    every: makeBeat,
    reload,
    rehearse: () =>
      void rehearsal()
        .then(({ beginRehearsal }) => beginRehearsal(settings, wall))
        .then(() => location.assign('/?rehearsal')),
    endRehearsal: () => location.assign('/'),
  });
  root.replaceChildren();
  render(() => <App house={house} />, root);
};

// index.html has it.
void open(document.getElementById('loafward')!);
