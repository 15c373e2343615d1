import type * as english from '../words/kitchen-page.ts';
import type { InTongue } from '../tongue.ts';

export const kitchenPage: InTongue<typeof english.kitchenPage> = {
  title: 'Küche',
  edge: 'Küche: einmal einrichten, jederzeit ändern',
  places: 'Töpfe und Formen',
  placesValue: '{count} je Ladung',
  placesDetail: 'Wie viele in einer Ladung?',
  pots: 'Töpfe mit Deckel',
  tins: 'Formen',
  stones: 'Plätze auf dem Stein',
  made: 'Woraus sind die Töpfe?',
  pot: 'Topf {count}',
  notSaid: 'Keine Angabe',
  materials: { bareIron: 'Blankes Gusseisen', enamel: 'Emaille', clay: 'Ton', glass: 'Glas' },
  notHot: 'Hier darf kein Topf heiß beladen werden.',
  saved: 'Zuletzt: {date}',
  neverSaved: 'Nie: das Tagebuch ist nur hier',
  promise: [
    'Das Tablet ist still, wenn es aus, stumm oder im Schlaf ist.',
    'Lass es am Kabel: mit leerem Akku ruft es nicht mehr.',
    'Es ist eine Hilfe, kein Wecker. Stell auch den Handywecker.',
  ],
  promiseTitle: 'Was ein Tablet nicht kann',
};
