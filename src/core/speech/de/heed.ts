import type * as english from '../words/heed.ts';
import type { InTongue } from '../tongue.ts';

export const heed: InTongue<typeof english.heed> = {
  beforeStart: {
    starter: { fridge: 'Aus der Kälte wacht es langsam auf. Ein zweites Füttern hilft.' },
    flour: { short: 'Hol mehr Mehl, oder back weniger Laibe.' },
    filling: {
      toPrepare: 'Röste und trockne sie, lass sie abtropfen, während der Sauerteig geht.',
      toastedDry: 'Kein Frischkäse, Fleisch, Gekochtes oder Knoblauch in Öl.',
    },
    pot: {
      metalKnob: 'Erlaubt der Hersteller kalten Teig im heißen Topf? Prüf das zuerst.',
      plasticKnob: 'Schraub den Knauf ab, bevor der Topf heiß wird.',
      clayOrGlass: 'Kalter Teig kann ihn springen lassen. Nimm blankes Gusseisen oder eine Form.',
    },
    scale: {
      notZero: 'Drück auf null, mit der leeren Schüssel darauf.',
      noScale: 'Löffel und Tassen sind ungenau. Leih dir eine Waage, wenn es geht.',
    },
    hands: { notYet: 'Wasch dir die Hände, dann antworte.' },
    fridge: {
      full: 'Mach ein Fach frei, bevor die Laibe geformt sind.',
      warm: 'Stell ihn jetzt kälter und prüf ihn heute Abend.',
    },
  },
  beforeOven: {
    child: {
      close: 'Gib dem Kind eine Aufgabe, 1 m weg. Dann antworte.',
      withGrownUp: 'Beide bleiben bitte 1 m weg.',
    },
    floor: {
      cluttered: 'Räum den Boden am Ofen frei. Dann antworte.',
      wet: 'Wisch den Boden am Ofen trocken. Dann antworte.',
    },
    mitts: {
      wet: 'Hol trockene Handschuhe: nasse verbrennen dich. Dann antworte.',
      missing: 'Such zwei trockene Ofenhandschuhe. Dann antworte.',
    },
    landing: { notYet: 'Mach zwei Plätze frei, die Hitze aushalten.' },
    parchment: {
      unknown: 'Lass es weg, oder such die Gradzahl auf der Packung.',
      rated: 'Schneide es knapp: lange Ränder verkohlen.',
    },
    knob: {
      plastic: 'Ofen aus. Schraub den Knauf ab, sobald der Topf kalt ist.',
      plasticOff: 'Heb den Deckel mit dem Handschuh unter dem Rand.',
    },
    blade: { notYet: 'Deck die Klinge ab und leg sie in Reichweite. Dann antworte.' },
  },
  levainSigns: {
    colour: { pinkOrMould: 'Wirf alles weg. Back nicht damit.' },
  },
};
export const heedLines: InTongue<typeof english.heedLines> = {
  listComplete: 'Liste fertig.',
};
