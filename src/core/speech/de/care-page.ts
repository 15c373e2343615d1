import type * as english from '../words/care-page.ts';
import type { InTongue } from '../tongue.ts';

export const carePage: InTongue<typeof english.carePage> = {
  title: 'Vorsicht',
  defer: 'Örtliche Regeln und fachlicher Rat gehen allem vor, was hier steht.',
  say: 'Vorlesen',
  sayPart: 'Vorlesen: {title}',
  by: 'Quelle: {by}',
  parts: [
    {
      title: 'Rohes Mehl und roher Teig',
      by: 'US FDA, CDC; Health Canada',
      lines: [
        'Sie sind roh: nicht probieren, und kein Spielzeug.',
        'Danach Hände, Fläche und Werkzeug waschen. Unter fünf Jahren: kein roher Teig.',
      ],
    },
    {
      title: 'Heißes Eisen und Dampf',
      by: 'NFPA; zu Verbrennungen britische Feuer\u00adwehren; zu Topf, Knauf und Papier übliche Praxis',
      lines: [
        'Trockene Handschuhe, beide Hände. Deckel von dir weg heben, Gesicht weg.',
        'Kinder bleiben 1 m weg. Erwachsene schieben ein und holen heraus.',
        'Prüf, welche Hitze Knauf und Backpapier aushalten. Viele Papiere halten nur {parchmentHeat} aus.',
        'Kalter Teig kommt nur in blankes Gusseisen, oder wo es der Hersteller erlaubt.',
        'Verbrannt? 20 Minuten kühles fließendes Wasser, und hol Hilfe.',
      ],
    },
    {
      title: 'Kinder',
      by: 'NFPA, Safe Kids',
      lines: [
        'Ofen, heißer Topf und Klinge sind nur für Erwachsene.',
        'Gib dem Kind solange eine eigene Aufgabe.',
        'Unter zehn: kein Herd, kein Gerät, nichts Scharfes oder Heißes. An den Ofen nur Erwachsene.',
      ],
    },
    {
      title: 'Einlagen, die verderben',
      by: 'USDA-Regel für daheim; zu Hartkäse Bishop und Smukowski, 2006',
      lines: [
        'Frischkäse, Ei, Fleisch, Fisch, Reis, gekochtes Gemüse und Gemüse in Öl verderben.',
        'Nichts davon in langer Gare, nichts in Laiben für den Kühlschrank.',
        'Kalt beim letzten Formen, binnen 2 Stunden im Ofen. Über {warmRoom}: 1 Stunde.',
        'Backen macht es nicht wieder gut. Zu lange: wegwerfen.',
        'Nach dem Backen binnen 2 Stunden kühlen und beschriften: „Gekühlt aufbewahren“.',
        'Knoblauch in Öl steht nie bei Zimmer\u00adtemperatur.',
        'Halte den Kühlschrank auf {fridgeHeat} oder kälter.',
        'Quellstücke über 2 Stunden stehen im Kühl\u00adschrank.',
        'Saurer Teig hält keine Einlage davon ab zu verderben.',
        'Harter, gereifter Käse darf eine Weile stehen, nicht wärmer als die Küche.',
      ],
    },
    {
      title: 'Anstellgut',
      by: 'übliche Praxis',
      lines: [
        'Rosa, orange oder Schimmel: wegwerfen.',
        'Nie in einem fest verschlossenen Glas gehen lassen.',
      ],
    },
    {
      title: 'Allergene und Verkauf',
      by: 'Listen der USA, der EU und Kanadas; örtliche Behörden',
      lines: [
        'Weizen, Roggen, Gerste und Dinkel haben Gluten. Sauerteig ist nicht glutenfrei.',
        'Nenn jedes Allergen auf dem Etikett: Nüsse, Sesam, Milch, Ei und mehr.',
        'Verkaufst du? Mancherorts sind Käse, Fleisch oder frische Kräuter verboten: prüf die örtlichen Regeln.',
      ],
    },
    {
      title: 'Kruste',
      by: 'EU 2017/2158; McGee zu altbackenem Brot',
      lines: [
        'Back goldbraun, nicht schwarz.',
        'Brot erst unter {bagHeat} einpacken.',
        'Brot wird im Kühl\u00adschrank schneller altbacken. Was verdirbt, bleibt trotzdem dort.',
      ],
    },
  ],
};
