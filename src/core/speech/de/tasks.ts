import type * as english from '../words/tasks.ts';
import type { InTongue } from '../tongue.ts';
import type { TaskWords } from '../words/tasks.ts';

const HOW_FAR: TaskWords = {
  done: 'Sag, wie weit',
  subject: 'wie weit der Teig ist',
  headline: 'Sieh nach, wie weit der Teig ist',
  detail: 'Ein Blick auf die Marke an der Wanne sagt mir mehr.',
};
export const fetchLoad: InTongue<typeof english.fetchLoad> = {
  headline: 'Hol {loaves} aus dem Kühl\u00adschrank',
  spoken: '{loaves} aus dem Kühl\u00adschrank',
};
export const tasks: InTongue<typeof english.tasks> = {
  rise45: HOW_FAR,
  rise70: HOW_FAR,
  rise85: HOW_FAR,
  soak: {
    done: 'Samen sind im Wasser',
    subject: 'Samen einweichen',
    headline: 'Weich die Samen ein',
    detail: 'Nur knapp bedeckt. Über zwei Stunden: im Kühl\u00adschrank.',
  },
  takeOut: {
    done: 'Käse ist draußen',
    subject: 'der Käse kommt raus',
    headline: 'Nimm den Hartkäse heraus',
    detail: 'Er wird weniger kalt. Was verdirbt, bleibt im Kühl\u00adschrank.',
    care: 'Frischkäse, Fleisch und Gekochtes bleiben im Kühl\u00adschrank.',
  },
  toast: {
    done: 'Geröstet, kühlt ab',
    subject: 'Nüsse und Samen rösten',
    headline: 'Röste Nüsse und Samen',
    detail: 'Zehn Minuten, goldgelb. Dann kühlen sie auf dem Blech.',
    care: 'Blech heiß: trockene Handschuhe, Kinder 1 m weg. Nüsse und Sesam sind Allergene.',
  },
  drain: {
    done: 'Ab\u00adgetropft, trocken',
    subject: 'Einlage abtropfen',
    headline: 'Lass die Einlage abtropfen und trockne sie',
    detail: 'Nasse Einlage rutscht und zerreißt den Teig.',
  },
  cut: {
    done: 'Alles ge\u00adschnitten',
    subject: 'Einlage schneiden',
    headline: 'Schneide die Einlage gleich groß',
    detail: 'So groß wie eine Erbse. Das Messer haben Erwachsene.',
    care: 'Klinge: schneide von deiner Hand weg.',
  },
  coat: {
    done: 'Mit Mehl bestäubt',
    subject: 'Einlage bestäuben',
    headline: 'Bestäube die Einlage mit Mehl',
    detail: 'Ganz dünn: dann rutscht sie nicht.',
  },
  bench: {
    done: 'Fläche ist nass',
    subject: 'Fläche nass machen',
    headline: 'Mach den Tisch nass',
    detail: 'Ein dünner Film Wasser, breit genug für den ganzen Teig.',
  },
  baskets: {
    done: 'Körbe sind bemehlt',
    subject: 'Gärkörbe bemehlen',
    headline: 'Bemehle die Gärkörbe',
    detail: 'Mit Reismehl, bis in die Rillen.',
  },
  grease: {
    done: 'Formen gefettet',
    subject: 'Formen fetten',
    headline: 'Fette die Formen',
    detail: 'Auch die Ecken. Butter ist Milch: nenn sie.',
  },
  shelf: {
    done: 'Fach ist frei',
    subject: 'ein Fach frei machen',
    headline: 'Mach im Kühl\u00adschrank ein Fach frei',
    detail: 'Eben, und Luft rund um die Laibe.',
  },
  parchment: {
    done: 'Papier ist ge\u00adschnitten',
    subject: 'Backpapier schneiden',
    headline: 'Schneide das Backpapier zu',
    detail: 'Vieles hält nur {parchmentHeat} aus. Sieh auf der Packung nach.',
  },
  kettle: {
    done: 'Wasser kocht',
    subject: 'Wasser kochen',
    headline: 'Koch Wasser für den Dampf',
    detail: 'Eine Tasse. Sie kommt nach dem Laib in die Schale.',
    care: 'Kochendes Wasser: das machen Erwachsene. Kinder bleiben 1 m weg.',
  },
  fetch: {
    done: 'Aus dem Kühl\u00adschrank',
    subject: 'der nächste kalte Laib',
    headline: 'Hol Laib {load} aus dem Kühl\u00adschrank',
    detail: 'Die anderen Laibe bleiben kalt.',
  },
  rack: {
    done: 'Gitter steht bereit',
    subject: 'das Kuchengitter',
    headline: 'Stell das Kuchengitter bereit',
    detail: 'Nah am Ofen, weg von Tüchern und Händen.',
  },
  tidyMix: {
    done: 'Schüsseln weichen ein',
    subject: 'Tisch frei machen',
    headline: 'Mach den Tisch frei',
    detail: 'Schüsseln in kaltes Wasser: der Teig löst sich von selbst.',
  },
  tidyBulk: {
    done: 'Tisch sauber',
    subject: 'Tisch frei machen',
    headline: 'Mach den Tisch frei',
    detail: 'Erst schaben, dann ein nasses Tuch. Kein Teig in den Abfluss.',
  },
  tidyBench: {
    done: 'Reste sind weg',
    subject: 'Tisch frei machen',
    headline: 'Mach den Tisch frei',
    detail: 'Teigkarte und Waage gewischt, Mehl zur Hand.',
  },
};
export const taskPress: InTongue<typeof english.taskPress> = {
  then: 'das Warten geht weiter',
  leave: 'Auslassen',
  byPicture: 'mit Bild',
  ahead: 'Vorher tun: {count}',
  aheadTitle: 'Was du vorher tun kannst',
  calls: '{name}. Ruft um {time}.',
  aheadNone: 'Vorher ist nichts mehr zu tun.',
};
export const tasksLines: InTongue<typeof english.tasksLines> = {
  fetchLast: 'Kein anderer Laib wartet auf den Ofen.',
  spoilsToo: 'Was verdirbt, kommt gleich wieder in den Kühl\u00adschrank.',
};
