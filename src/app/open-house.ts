import { createSignal } from 'solid-js';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import type { Say } from '../../machines/kitchen/step.ts';
import type { Deed } from '../core/records/fact.ts';
import type { House, Lost, Order } from '../screens/house.ts';
import { makeAway } from './away.ts';
import { beforeItRings } from './before-it-rings.ts';
import { openEquipment } from './equipment.ts';
import { makeDay } from './day.ts';
import { makeFollowUp } from './follow-up.ts';
import { makeFiles } from './files.ts';
import { makeKeeper, type Kept, type Pressed } from './keeper.ts';
import { makeKitchenTime } from './kitchen-time.ts';
import { openLog, type Opened } from './open-log.ts';
import { makeLastKitchen } from './last-kitchen.ts';
import { laterBook } from './later-book.ts';
import { makeCourse } from './later-course.ts';
import { laterEar } from './later-ear.ts';
import { laterHalf } from './later-half.ts';
import { laterTold } from './later-told.ts';
import { makeFront } from './later-front.ts';
import { laterVoice } from './later-voice.ts';
import { keepMoment, lastMoment, makeLeaps } from './leaps.ts';
import { loadJudge } from './load-judge.ts';
import { makeHearing } from './quiet.ts';
import { makeRunner } from './runner.ts';
import { makeShownHours } from './shown-hours.ts';
import type { World } from './world.ts';

/** The kitchen time is shown by the second; a rehearsal's by what a quarter of a second brings. */
const SECOND = 1000;
const RETRY_MS = 5000;

/** Opens the log and puts the parts together: the only place where machines meet the world. */
export async function openHouse(world: World): Promise<House> {
  const { store, clock, sound, speaker, screen, settings, ids, news, later } = world;
  const [opened, { equipment, equip, misread }] = await Promise.all([
    openLog(store, MACHINES),
    openEquipment(settings, clock.rate === 1),
  ]);
  const last = opened.records.at(-1)?.fact ?? null;
  const time = makeKitchenTime(clock, await lastMoment(settings, last));
  const leaps = makeLeaps(time, world.showing, (at) => away.notSince(at));
  const start: Pick<Opened, 'kitchen' | 'records'> =
    opened.trouble?.kind === 'differs'
      ? { ...opened, kitchen: (await import('./before-jump.ts')).beforeJump(opened) }
      : opened;

  const [kept, setKept] = createSignal<Kept>(
    {
      ...start,
      unsaved: 0,
      slow: false,
      trouble: opened.trouble?.kind === 'closed' ? 'closed' : null,
    },
    { equals: false },
  );
  const [now, setNow] = createSignal(time.read(start.kitchen.now).at);
  const [soundState, setSoundState] = createSignal(sound.state());
  const [lit, setLit] = createSignal(screen.state());
  const [offer, setOffer] = createSignal<(() => void) | null>(null);
  const [free, setFree] = createSignal(false);
  const [lost, setLost] = createSignal<Lost | null>(null);
  const [clockBack, setClockBack] = createSignal(time.fellBack());
  const { lastKitchen, keep } = makeLastKitchen(settings);
  const own = () => ({ ...kept(), ...equipment(), formulas: book.formulas() });
  const voice = laterVoice(speaker, later, own, world.ways.ways);
  // What fell due before this page was opened is shown and rung, not recited.
  let catchingUp = true;
  const away = makeAway(last?.at ?? null, clock.rate);
  const wall = (at: number) => time.wallOf(at);
  const hearing = await makeHearing(equipment().quiet, wall);
  const ringing = () => (world.holds ? hearing.ringing(kept().kitchen) : null);
  const course = await makeCourse(opened.records.length > 0);
  const front = await makeFront(kept, ringing);
  const hours = makeShownHours(time, world.zone, () => world.ways.ways().clock);
  const { hour } = hours.shown;
  const kitchen = () => kept().kitchen;
  const records = () => kept().records;
  const keeps = world.holds && clock.rate === 1;
  const book = laterBook(records, (deed) => take(deed), settings, keeps, world);
  const files = makeFiles(world, { records, equipment, equip, tell: (notice) => tell(notice) });
  const { told, tell, troubles } = laterTold({
    store: () => kept().trouble,
    unsaved: () => kept().unsaved,
    clockBack,
    holds: world.holds,
    free,
    offer,
    baking: () => Object.keys(kitchen().bakes).length > 0,
    soundless: () => soundState() === 'unavailable',
    voiceLost: voice.lost,
    secure: world.secure,
    misread,
    saveAsFile: files.saveAsFile,
    reload: world.reload,
  });

  // A screen may begin to say what it shows as soon as it is shown: a done act's end does not end that.
  let spoken = voice.now();
  const speak = async (says: readonly Say[], pressed?: Pressed): Promise<void> => {
    const mine = spoken;
    const { sayAloud } = await import('./say-aloud.ts');
    sayAloud(mine, says, hearing, kept(), hour, now(), world.ways.ways(), equipment(), pressed);
  };
  const followUp = makeFollowUp(world, () => runner.follow(keeper.kept().kitchen));
  const keeper = makeKeeper({
    opened: start,
    reopen: () => openLog(store, MACHINES),
    store,
    machines: MACHINES,
    ...{ judge: loadJudge, course, height: () => equipment().height ?? 0 },
    time,
    ids,
    later,
    onChange(next, pressed) {
      if (pressed) spoken = voice.now();
      setKept(next);
      setClockBack(time.fellBack());
      followUp(pressed && hearing.ringing(next.kitchen) === null);
    },
    onSay: (says, pressed) => void (catchingUp || speak(says, pressed)),
  });
  const runner = makeRunner({
    ...{ clock, sound, course },
    machines: MACHINES,
    wallOf: wall,
    tick: keeper.tick,
    quiet: hearing.quiet,
  });
  const follow = () => world.holds && runner.follow(keeper.kept().kitchen);

  const take = async (deed: Deed): Promise<void> => {
    if (!world.holds) return;
    try {
      const outcome = await keeper.take(deed);
      if (outcome === 'refused' && deed.kind === 'press') {
        voice.say((await troubles()).pressRefused);
      }
    } catch (error) {
      tell({ id: 'machine', text: (await troubles()).machineFailed, action: null });
      reportError(error);
    }
  };

  const begin = async (order: Order): Promise<string | null> =>
    (await import('./begin.ts')).beginBake(order, kitchen, world, equipment(), take, tell, keep);
  const takeBack = async (): Promise<void> => {
    // With the judge's own chunks, it is here before anything can be taken back.
    const { takeBackTarget } = await import('../../machines/kitchen/take-back.ts');
    const target = takeBackTarget(kitchen());
    if (target === null) return voice.say((await troubles()).nothingToTakeBack);
    await take({ kind: 'takeBack', target: target.id });
  };
  sound.onState(setSoundState);
  screen.onState(setLit);
  world.update.onOffer((go) => setOffer(() => go));
  world.every(clock.rate > 1 ? SECOND / 4 : SECOND, () => {
    if (world.holds) keeper.tick();
    const moment = time.read(kept().kitchen.now);
    if (leaps.beat() && world.holds) keepMoment(settings, moment, records().at(-1)?.fact);
    // Every alarm is at another hour of the wall now, or the quiet hours are.
    if (hours.beat(moment)) follow();
    setClockBack(time.fellBack());
    setNow(moment.at);
    away.seen(moment.at);
  });
  if (world.holds) {
    keeper.tick();
    catchingUp = false;
    follow();
    world.every(RETRY_MS, () => void keeper.retry());
    screen.hold();
    if (opened.trouble) {
      const { findPlace } = await import('./find-place.ts');
      const done = () => setLost(null);
      const found = { opened, kitchen: start.kitchen, time, take, tell, ...files, done };
      setLost(await findPlace(found));
    }
  } else {
    news.onNews(() => {
      void openLog(store, MACHINES).then(({ kitchen: k, records }) =>
        setKept((old) => ({ ...old, kitchen: k, records })),
      );
    });
    world.whenFree(() => setFree(true));
  }
  const calling = { world, ringing, now, hearing, equipment, sound: soundState };
  const unheard = beforeItRings(voice, { ...calling, speak: () => void speak([]) });
  return {
    ...{ kitchen, records, now, ...hours.shown },
    foresee: keeper.foresee,
    takeBack,
    async clockWasWrong() {
      const { goOn } = await import('./clock-wrong.ts');
      await goOn(records(), time.read(kitchen().now).at, leaps.open(), take, voice.say);
      leaps.read('ahead');
    },
    leaps: leaps.leaps,
    leapRead: leaps.read,
    ...makeDay(world, kitchen, now, take),
    saving: () => (kept().slow ? 'slow' : kept().unsaved > 0 ? 'unsaved' : 'saved'),
    unsaved: () => kept().unsaved,
    ...{ begin, ringing, front },
    unheard: unheard.waits,
    hush() {
      voice.hush();
      const call = hearing.ringing(keeper.kept().kitchen);
      if (call === null || !world.holds) return false;
      if (unheard.touch()) return true;
      runner.quiet();
      // Of two that came at once the next one rings now, and is said.
      void take({ kind: 'heard', call: call.id }).then(() => speak([]));
      return true;
    },
    ...voice.house,
    studio: world.studio,
    sound: soundState,
    armSound: () => void sound.arm().then(setSoundState),
    ...{ lit, told, tell, take },
    holds: world.holds,
    rehearsal: clock.rate > 1 ? clock.rate : null,
    rehearse: world.rehearse,
    endRehearsal: world.endRehearsal,
    ...world.ways,
    ...book,
    ...{ lastKitchen, equipment },
    equip: hearing.keptBy(equip, follow),
    ...laterEar(world, (ear) => equip({ ear })),
    half: laterHalf(settings, () => clock.now(), keeps),
    tryCall(kind, inMs) {
      void sound.arm();
      return sound.ring(kind, inMs);
    },
    away: away.away,
    readBack: away.readBack,
    ...files,
    lost,
  };
}
