import type * as english from '../words/readings.ts';
import type { InTongue } from '../tongue.ts';

export const readingNames: InTongue<typeof english.readingNames> = {
  doughTemperature: 'Teigtemperatur',
  kitchenTemperature: 'Küchen\u00adtemperatur',
  coreTemperature: 'Im Laib',
  flourTemperature: 'Mehltemperatur',
  levainTemperature: 'Sauerteig-Temperatur',
  fillingTemperature: 'Einlage-Temperatur',
  wantedDough: 'Gewünscht im Teig',
  'water.tap': 'Kaltes Leitungswasser',
  'water.bowl': 'Eingegossenes Wasser',
  'rise.dough': 'Anstieg Teig',
  'rise.levain': 'Anstieg Sauerteig',
  'weight.dough': 'Teiggewicht',
  'weight.piece': 'Gewicht eines Stücks',
  'weight.loaf': 'Gewicht eines Laibs',
  firstPiece: 'Erstes Stück',
  edge: 'Rand und Blasen',
  growth: 'Wachsen in der Kälte',
  poke: 'Fingertest',
  crust: 'Krustenfarbe',
};
export const readingShort: InTongue<typeof english.readingShort> = {
  doughTemperature: 'Teig',
  kitchenTemperature: 'Küche',
  'weight.dough': 'Teig',
  'weight.piece': 'Ein Stück',
  'weight.loaf': 'Ein Laib',
};
export const reading: InTongue<typeof english.reading> = {
  begin: 'Zahl eintippen oder wählen',
  which: 'Drück, was du gemessen hast',
  noKind: 'Kein Messwert hat diese Zahl',
  number: 'Die Zahl, die du abliest',
  rest: 'Nichts davon',
  choose: 'Wähl, was du gemessen hast',
  byEye: '{name}, nach Augenmaß',
  inPercent: '{name}, in %',
  back: 'Andere Messwerte',
  usual: 'Üblich: {range}.',
  odd: 'Seltsam: üblich {range}.',
  otherScale: 'Seltsam: misst du in {unit}?',
  impossible: 'Ändere das: hier {range}.',
  keep: 'Behalten',
  keepOdd: '{got}, als seltsam markiert',
  change: 'Zahl ändern',
  spot: 'Noch eine Stelle',
  spots: 'Bisher {got}. Nächste Stelle:',
  taken: '{got}: {name}.',
  takenOdd: '{got}: {name}. Behalten und als seltsam markiert.',
  hot: 'Trockene Handschuhe. Rost heraus, Gesicht weg.',
};
export const readingList: InTongue<typeof english.readingList> = {
  how: 'Drück einen, um ihn zu ändern.',
  none: 'Noch nichts gemessen.',
  odd: 'seltsam',
  was: 'war {got}',
  probe: 'mit Fühler',
  correct: 'Ändere {got}',
  correctHint: '{time}: üblich {range}.',
  correctPictures: '{name}, {time}: da steht {got}.',
  corrected: '{got}: {name}, geändert.',
  newer: 'Neuere',
  older: 'Ältere',
};
export const riseInJar: InTongue<typeof english.riseInJar> = {
  name: 'Anstieg Teig im Glas',
  mark: 'im Glas',
  ask: 'Wie weit ist das Glas?',
  detail: 'Eine Probe von diesem Teig, ab der Marke.',
};
export const readingPictures: InTongue<typeof english.readingPictures> = {
  rise: {
    ask: 'Wie weit ist er gegangen?',
    detail: 'Schau auf die Marke an Wanne oder Glas.',
    tiles: [
      { value: '0', label: 'Gar nicht' },
      { value: '25', label: 'Um ein Viertel' },
      { value: '50', label: 'Um die Hälfte' },
      { value: '75', label: 'Um drei Viertel' },
      { value: '100', label: 'Verdoppelt' },
    ],
  },
  edge: {
    ask: 'Wie steht der Rand?',
    detail: 'Wo der Teig die Schüssel berührt.',
    tiles: [
      { value: 'flat', label: 'Flach' },
      { value: 'domed', label: 'Gewölbt' },
      { value: 'fallen', label: 'Ein\u00adgefallen' },
    ],
  },
  bubbles: {
    ask: 'Wie viele Blasen an der Wand?',
    detail: 'Schau durch die Seite der Wanne.',
    tiles: [
      { value: 'none', label: 'Keine' },
      { value: 'some', label: 'Einige' },
      { value: 'many', label: 'Viele' },
    ],
  },
  growth: {
    ask: 'Wie viel ist er gewachsen?',
    detail: 'Seit er in den Kühl\u00adschrank kam.',
    tiles: [
      { value: 'none', label: 'Gar nicht' },
      { value: 'little', label: 'Ein wenig' },
      { value: 'grown', label: 'Deutlich gewachsen' },
      { value: 'unsure', label: 'Nicht sicher' },
    ],
  },
  poke: {
    ask: 'Was macht die Delle?',
    detail: 'Bemehlter Finger, 1 cm tief. Kalter Teig: nur ein Hinweis.',
    tiles: [
      { value: 'springs', label: 'Springt zurück' },
      { value: 'slow', label: 'Kommt langsam zurück' },
      { value: 'stays', label: 'Bleibt' },
      { value: 'unsure', label: 'Nicht sicher' },
    ],
  },
  crust: {
    ask: 'Welche Farbe hat die Kruste?',
    detail: 'Goldbraun ist das Ziel, nicht schwarz.',
    tiles: [
      { value: 'pale', label: 'Blass' },
      { value: 'golden', label: 'Goldbraun' },
      { value: 'dark', label: 'Dunkel' },
    ],
  },
} as const;
