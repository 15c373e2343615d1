import type * as english from '../words/remedies.ts';
import type { InTongue } from '../tongue.ts';
import { MITTS, RAW_DOUGH } from './care.ts';

export const remedies: InTongue<typeof english.remedies> = {
  levain: {
    slow: {
      sign: 'Kaum gegangen, oben flach',
      now: 'Wärm ihn und warte ein bis vier Stunden. Mische später.',
      next: 'Füttere nach dem Kühl\u00adschrank zweimal. Halt es wärmer.',
    },
    past: {
      sign: 'Ein\u00adgesunken, scharf, flüssig',
      now: 'Gerade eingesunken: nimm ihn jetzt. Lange vorbei: füttere ihn erst.',
      next: 'Weniger Anstellgut zum Füttern, oder ein kühlerer Platz.',
    },
  },
  mix: {
    soupy: {
      sign: 'Suppiger Teig',
      now: '20 Minuten ruhen, dann falten. Kein Wasser, kein Mehl mehr.',
      next: 'Halt 15 % vom Wasser zurück.',
    },
    cold: {
      sign: 'Teig zu kalt',
      now: 'Stell ihn warm. Warmes zweites Wasser hilft wenig.',
      next: 'Miss Mehl und Raum, dann stell das Wasser ein.',
    },
    hot: {
      sign: 'Teig zu warm',
      now: 'Stell ihn in einen kühlen Raum. Kaltes zweites Wasser hilft wenig.',
      next: 'Miss Mehl und Raum, dann stell das Wasser ein.',
    },
    noSalt: {
      sign: 'Kein Salz darin',
      now: 'Mach das Salz nass, arbeite es ein, falte zweimal. Bis jetzt ging er schnell.',
      next: 'Sag es laut, wenn das Salz drin ist.',
      care: RAW_DOUGH,
    },
  },
  folds: {
    tears: {
      sign: 'Reißt, springt zurück',
      now: 'Stopp. Lass ihn 15 bis 30 Minuten ruhen.',
      next: 'Weniger ziehen, mehr Ruhe dazwischen.',
    },
  },
  bulk: {
    flat: {
      sign: 'Rand flach, keine Blasen',
      now: 'Warte, oder wärm ihn. Sieh in 45 bis 60 Minuten wieder nach.',
      next: 'Wärmerer Teig, oder mehr Sauerteig.',
    },
    ready: {
      sign: 'Gewölbt, wackelt, Blasen',
      now: 'Teile ihn jetzt. Ist es warm, noch eher.',
      next: 'Notier, wie hoch er ging.',
    },
    fallen: {
      sign: 'Ein\u00adgefallen, klebrig, sauer',
      now: 'Back ihn in einer Form, oder flach auf dem Blech, jetzt.',
      next: 'Beende die Stockgare früher, oder halt sie kühler.',
      care: 'Einlagen, die verderben: die Zeit zählt, nicht das Aussehen. Folge den örtlichen Regeln.',
    },
  },
  sheet: {
    rips: {
      sign: 'Das Teigblatt reißt',
      now: 'Stopp, falte über den Riss, lass ruhen. Füll nur den heilen Teil.',
      next: 'Zieh ihn nach ein- oder zweimal Falten aus. Mach die Fläche nass.',
    },
    wet: {
      sign: 'Nasse Einlage rutscht',
      now: 'Tupf sie ab, nimm weniger, streu sie. Falte noch einmal.',
      next: 'Abtropfen, trocknen, kühlen. Bleib bei 10 bis 20 %.',
    },
  },
  divide: {
    lumpy: {
      sign: 'Klumpig, viele Reste',
      now: 'Steck Reste hinein. Wirke rund, dann lass ruhen.',
      next: 'Trenn jedes Stück mit zwei Schnitten ab.',
    },
  },
  preshape: {
    splits: {
      sign: 'Die Haut reißt',
      now: 'Lass es 10 bis 15 Minuten länger ruhen, Schluss unten.',
      next: 'Wirke es lockerer rund.',
    },
    runs: {
      sign: 'Läuft breit',
      now: 'Noch mal rundwirken, kurz ruhen. Läuft es noch, nimm eine Form.',
      next: 'Mehr falten, weniger Wasser, oder früher formen. Ändere eins.',
    },
  },
  basket: {
    stuck: {
      sign: 'Klebt im Gärkorb',
      now: 'Kühl ihn 15 bis 20 Minuten. Lös ihn mit der Teigkarte.',
      next: 'Reismehl in einen trockenen Korb, oder ein Tuch.',
    },
  },
  cold: {
    still: {
      sign: 'Ist nicht gewachsen',
      now: 'Lass ihn 60 bis 120 Minuten draußen, dann back.',
      next: 'Beende die Stockgare später, oder kühl ihn kürzer.',
    },
    over: {
      sign: 'Am Rand, wackelt',
      now: 'Jetzt kalt in den Ofen. Flacher Schnitt, im Topf.',
      next: 'Früher kalt stellen, auf {fridgeHeat} oder weniger. Weniger auf einmal.',
      care: `Kein kalter Teig in heißen Ton oder Emaille. ${MITTS}`,
    },
  },
  proof: {
    far: {
      sign: 'Viel zu weit, noch dehnbar',
      now: 'Forme ihn noch einmal. Beobachte ihn 20 bis 45 Minuten.',
      next: 'Sieh früher nach.',
    },
  },
  oven: {
    burst: {
      sign: 'Seitlich gerissen',
      now: 'Lass ihn weiterbacken. Er ist gut so.',
      next: 'Längere Stückgare, oder lockere Haut, Schluss unten. Ändere eins.',
    },
    flat: {
      sign: 'Flach, Schnitt bleibt zu',
      now: 'Back ihn ganz durch.',
      next: 'Kürzer gehen lassen.',
    },
    black: {
      sign: 'Schwarzer Boden',
      now: 'Aus dem Topf. Die letzten 5 bis 10 Minuten auf den Rost.',
      next: 'Rost höher, Backpapier, und ein Blech auf die Schiene darunter.',
      care: MITTS,
    },
    pale: {
      sign: 'Blasse Kruste',
      now: 'Deckel ab, noch 5 bis 10 Minuten.',
      next: 'Heißerer Ofen, Deckel früher ab, oder kürzer gehen lassen. Ändere eins.',
      care: MITTS,
    },
    dark: {
      sign: 'Zu dunkel, harte Kruste',
      now: 'Deck ihn locker ab. Stell den Ofen etwas niedriger.',
      next: 'Mach Laibe mit Frucht oder Käse kleiner.',
      care: MITTS,
    },
    leaks: {
      sign: 'Einlage läuft aus, verbrennt',
      now: 'Backpapier darunter. Lass es abkühlen, nimm Verbranntes im Freien ab.',
      next: 'Lass 2 bis 3 cm Rand frei. Große kalte Stücke nach innen.',
      care: `Geschmolzene Einlage verbrüht: lass sie abkühlen. ${MITTS}`,
    },
  },
  cool: {
    crackles: {
      sign: 'Knistert, feine Risse',
      now: 'Nichts zu tun: Krusten singen beim Auskühlen.',
      next: null,
    },
  },
  cut: {
    gummy: {
      sign: 'Klitschige Krume',
      now: 'Noch warm: 10 Minuten zurück in den Ofen. Ausgekühlt: toaste es.',
      next: 'Back bis {crumbHeat} und goldbraun. Dann lass es auskühlen.',
      care: MITTS,
    },
    dense: {
      sign: 'Dicht, wenige große Löcher',
      now: 'Toaste es.',
      next: 'Stockgare länger, wärmer, oder reiferer Sauerteig. Ändere eins.',
    },
    flyingCrust: {
      sign: 'Ein Loch unter der Kruste',
      now: null,
      next: 'Sieh dir erst zwei Zeichen mehr an.',
    },
    streaks: {
      sign: 'Streifen in der Krume',
      now: null,
      next: 'Weniger Mehl auf der Fläche.',
    },
  },
  handOver: {
    soft: {
      sign: 'Weiche Kruste',
      now: 'Öffne die Tüte. Back ihn im heißen Ofen 5 bis 8 Minuten auf.',
      next: 'Bei {bagHeat} oder weniger einpacken, in Papier.',
    },
  },
} as const;
