import type * as english from '../words/keepsakes.ts';
import type { InTongue } from '../tongue.ts';

export const keepsakes: InTongue<typeof english.keepsakes> = {
  title: 'Andenken an dieses Backen',
  detail: 'Auf diesem Tablet. Du kannst es löschen.',
  opening: 'Einen Moment',
  closed: 'Es lässt sich nicht öffnen',
  closedDetail: 'Nichts davon ist geändert. Öffne diese Seite noch einmal.',
  back: 'Zum Backen',
  photos: 'Fotos',
  latest: 'Das neueste Foto',
  note: 'Notiz',
  voices: 'Gesprochene Notizen',
  who: 'Wer davon aß',
  tags: 'Stichworte',
  none: 'noch keine',
  of: '{n} von {most}',
  hide: 'Aus\u00ADblenden',
  hidden: 'Aus\u00adgeblendet: die Liste lässt es weg.',
  show: 'Wieder zeigen',
  erase: 'Für immer löschen',
  later: 'Weiter',
  first: 'Von vorn',
  goesOn: '{words}…',
};
export const photoWords: InTongue<typeof english.photoWords> = {
  none: 'Noch kein Foto',
  noneDetail: 'Kruste oder Krume: klein gespeichert, ohne Ort und Zeit.',
  one: 'Foto {n} von {of}',
  oneDetail: '{date}',
  alt: 'Foto {n} von diesem Backen',
  camera: 'Nimm die Kamera',
  choose: 'Eins aus\u00ADwählen',
  next: 'Nächstes Foto',
  erase: 'Dieses löschen',
  eraseAsk: 'Dieses Foto für immer löschen?',
  eraseDetail: 'Kein Zurück, und keine Datei bringt es hierher zurück.',
  busy: 'Wird verkleinert',
  full: 'Mehr Fotos gehen hier nicht.',
};
export const spokenWords: InTongue<typeof english.spokenWords> = {
  title: 'Gesprochene Notizen',
  none: 'Sag, was du dir merken willst, höchstens eine Minute.',
  detail: 'Sie verlassen dieses Tablet nur in einer Datei, wenn du es ankreuzt.',
  one: 'Notiz {n}',
  at: '{date} {time}',
  plays: 'stopp',
  record: 'Aufnehmen',
  recordThen: 'zum Stoppen noch mal',
  stop: 'Stopp',
  heard: 'Ich höre dich',
  unheard: 'Sprich jetzt',
  wait: 'Einen Moment',
  full: 'Voll',
  fullThen: 'lösch erst eine',
  erase: 'Notiz {n} löschen',
  eraseAsk: 'Notiz {n} für immer löschen?',
  eraseDetail: 'Kein Zurück, und keine Datei bringt sie hierher zurück.',
  lost: 'Auf diesem Tablet ist sie nicht zu hören.',
  noMicrophone: 'Das Mikrofon ist nicht erreichbar. Öffne diese Seite noch einmal.',
  why: {
    denied: 'Das Mikrofon ist nicht erlaubt. Erlaube es im Browser.',
    none: 'Dieses Tablet hat kein Mikrofon.',
    silent: 'Niemand war zu hören. Nichts wurde gesichert.',
    failed: 'Das ließ sich nicht aufnehmen. Versuch es noch mal.',
    stopped: 'Es hörte auf, und nichts wurde gesichert: ein Ruf geht vor.',
    hot: 'Nicht, solange es heiß ist oder ein Ruf kommt.',
  },
};
export const whoWords: InTongue<typeof english.whoWords> = {
  title: 'Wer aß davon?',
  detail: 'Drück jeden. Nur ein Zeichen bleibt; Namen bleiben im Kreis.',
  home: 'Zu Hause',
  ate: 'aß davon',
  nobody: 'Auch die Nachbarn aus deinem Kreis stehen hier.',
  lost: 'Der Kreis lässt sich nicht öffnen. Seine Namen fehlen hier.',
};
export const tagPage: InTongue<typeof english.tagPage> = {
  title: 'Welche Stichworte?',
  detail: 'Drück eins für an, noch mal für aus.',
  on: 'an',
  own: 'Deine eigenen Worte',
  ownAsk: 'Welche eigenen Worte?',
  ownDetail: 'Kurz: es steht auf einer Taste. Beim Löschen geht es mit.',
  full: 'Mehr hat ein Backen nicht.',
};
export const noteWords: InTongue<typeof english.noteWords> = {
  ask: 'Was willst du dir merken?',
  detail: 'Es steht so in der gespeicherten Datei, auch Namen.',
};
export const eraseWords: InTongue<typeof english.eraseWords> = {
  ask: 'Alles für immer löschen?',
  detail: 'Fotos, gesprochene Notizen, Notiz, wer davon aß, eigene Stichworte.',
  stays: 'Was geschah, bleibt: Zeiten, Gewichte, Messwerte, Krume.',
  hold: 'Zum Löschen halten',
  holding: 'Weiter halten',
  two: 'Oder an zwei Stellen tippen',
  first: 'Tipp erst hier',
  second: 'Dann tipp hier',
  keep: 'Doch nicht',
};
export const keepsakesTold: InTongue<typeof english.keepsakesTold> = {
  misread:
    'Von den Andenken nicht lesbar und nicht dabei: {count}. Zuerst: {path}, erwartet {expected}, gefunden {got}.',
  full: 'Das Tablet ist voll. Nichts ist geändert: schaff Platz, dann drück noch mal.',
  shows: 'Diese Seite zeigt die Küche nur. Ändere es auf der anderen.',
  closed: 'Es ließ sich nicht schreiben. Nichts ist geändert: drück noch mal.',
};
