import type * as english from '../words/cut-loaf.ts';
import type { InTongue } from '../tongue.ts';

export const cutLoaf: InTongue<typeof english.cutLoaf> = {
  crumb: {
    ask: 'Sieh dir die Krume an',
    shown: {
      even: 'Gleich\u00ADmäßig',
      tight: 'Dicht',
      bigHoles: 'Wenige große Löcher',
      gummy: 'Klitschig',
      streaks: 'Streifen',
    },
  },
  base: {
    ask: 'Sieh unten am Boden entlang',
    shown: { even: 'Wie der Rest', tight: 'Dicht oder klitschig', dark: 'Sehr dunkel' },
  },
  holes: {
    ask: 'Sieh, wo Löcher sind',
    shown: {
      none: 'Keine fallen auf',
      underCrust: 'Unter der Kruste',
      throughout: 'Überall',
      byFilling: 'Um die Einlage',
    },
  },
  crust: {
    ask: 'Sieh dir die Kruste an',
    shown: { golden: 'Goldbraun', pale: 'Blass', dark: 'Dunkel' },
  },
  spread: {
    ask: 'Sieh dir die Form an',
    shown: { tall: 'Hoch', spread: 'Breit\u00ADgelaufen', burst: 'Seitlich gerissen' },
  },
  sour: { ask: 'Riech an der Krume', shown: { no: 'Kaum sauer', sour: 'Sauer' } },
};
export const howSure: InTongue<typeof english.howSure> = {
  likely: 'Wahrscheinlich',
  mayBe: 'Vielleicht',
  hard: 'Schwer zu sagen',
};
export const cutLoafSays: InTongue<typeof english.cutLoafSays> = {
  well: 'Ein schöner Laib. Lass es so.',
  causes: 'Ändere eine Sache, dann sieh wieder hin.',
  look: 'Noch zu wenig, um etwas zu sagen.',
  oneSign: 'Ein Zeichen genügt nicht. Sieh dir noch eins an.',
  done: 'Schwer zu sagen. Back es genauso und sieh wieder hin.',
};
export const loafChanges: InTongue<typeof english.loafChanges> = {
  warmerDough: 'Fang mit wärmerem Teig an.',
  longerBulk: 'Lass die Stockgare etwas länger dauern.',
  longerProof: 'Lass den geformten Laib etwas länger gehen.',
  shorterBulk: 'Beende die Stockgare etwas früher.',
  coolerDough: 'Fang mit kühlerem Teig an.',
  shorterCold: 'Lass ihn kürzer in der Kälte.',
  coolLonger: 'Lass ihn zwei Stunden auskühlen, bevor du ihn schneidest.',
  bakeLonger: 'Back ihn fünf bis zehn Minuten länger.',
  tighterSkin: 'Forme ihn etwas straffer.',
  coverSkin: 'Halt den Laib zugedeckt, damit die Haut weich bleibt.',
  lessFlour: 'Nimm weniger Mehl auf der Fläche.',
  hotterOven: 'Heiz den Ofen länger vor.',
  coolerOven: 'Stell den Ofen etwas niedriger.',
  trayBelow: 'Stell ein Blech auf die Schiene darunter.',
  drierFilling: 'Lass die Einlage gut abtropfen und trockne sie.',
};
export const dayFacts: InTongue<typeof english.dayFacts> = {
  rise: 'der Anstieg am Ende der Stockgare',
  proof: 'wie weit der Laib gegangen ist',
  dough: 'wie warm der Teig war',
  poke: 'die Delle',
  core: 'die Kerntemperatur',
  crust: 'die Kruste am Ofen',
  baked: 'die Zeit im Ofen',
  cooled: 'wie lange er auskühlte',
};
export const cutPage: InTongue<typeof english.cutPage> = {
  title: 'Anschnitt',
  well: 'Ein schöner Laib',
  keepIt: 'Lass es so.',
  hard: 'Schwer zu sagen',
  perhaps: 'Vielleicht {name}, oder {other}.',
  look: 'Zu wenig zu sehen',
  same: 'Back es genauso und sieh wieder hin.',
  cause: '{value}: {name}',
  also: 'Vielleicht {name}',
  change: 'Nächstes Mal',
  because: 'Von diesem Tag spricht dafür: {lines}.',
  keep: 'Behalten',
  keepThen: 'im Tagebuch dieses Backens',
  kept: 'Angesehen am {date}',
  todo: 'Was zu tun ist',
  todoTitle: 'Was du tun kannst',
  before: 'Die Antwort davor',
  again: 'Noch mal ansehen',
  back: 'Zurück zum Laib',
  refused: 'Es wurde nicht gesichert. Versuch es noch mal.',
};
export const cutLoafLines: InTongue<typeof english.cutLoafLines> = {
  cutLoafUnsure: 'Nicht sicher',
};
