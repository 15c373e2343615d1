import type * as english from '../words/lessons.ts';
import type { InTongue } from '../tongue.ts';

export const lessons: InTongue<typeof english.lessons> = {
  'read.plan': {
    title: 'Warum erst alles lesen?',
    why: 'Brot braucht viele Stunden, aber wenige Minuten deiner Hände. Sieh, wann.',
  },
  'read.list': {
    title: 'Warum alles bereitlegen?',
    why: 'Sind die Hände erst im Teig, kannst du nichts mehr holen.',
  },
  'levain.feed': {
    title: 'Warum füttern?',
    why: 'Hefe darin hebt den Laib. Mit Mehl und Wasser gefüttert wird sie stark.',
    word: { name: 'Sauerteig', means: 'das gefütterte Anstellgut, das in den Teig kommt' },
  },
  'levain.ripening': {
    title: 'Warum darauf warten?',
    why: 'Zu jung hebt er wenig, zu alt hat er nichts mehr zu geben.',
    word: { name: 'Reif', means: 'am stärksten, kurz bevor er einsinkt' },
    signs: {
      levainRising: { name: 'Er ist gegangen', means: 'Er steht weit über seiner Marke.' },
      levainRipe: { name: 'Gewölbt, mit Blasen', means: 'Oben rund, und überall Blasen.' },
    },
  },
  'levain.ripe': {
    title: 'Warum etwas aufheben?',
    why: 'Ein Löffel davon ist das Anstellgut für deinen nächsten Laib.',
  },
  'mix.weigh': {
    title: 'Warum alles wiegen?',
    why: 'Eine Tasse Mehl ist nie zweimal gleich. Eine Waage schon.',
  },
  'mix.first': {
    title: 'Warum ohne Salz mischen?',
    why: 'Mehl nimmt Wasser am besten auf, bevor das Salz dazukommt.',
  },
  'mix.rest': {
    title: 'Warum ruhen lassen?',
    why: 'Nasses Mehl verbindet sich von selbst. Deine Hände haben weniger zu tun.',
    word: { name: 'Ruhe', means: 'Mehl und Wasser verbinden sich von allein' },
  },
  'mix.salt': {
    title: 'Warum jetzt das Salz?',
    why: 'Salz gibt Geschmack und einen festen Teig. Es bremst auch das Gehen.',
    word: { name: 'Zweites Wasser', means: 'etwas Wasser, für jetzt aufgehoben' },
  },
  'mix.work': {
    title: 'Warum einarbeiten?',
    why: 'Liegt das Salz an einer Stelle, fehlt es im Rest vom Teig.',
  },
  'mix.temperature': {
    title: 'Warum die Wärme messen?',
    why: 'Warmer Teig geht schnell, kühler langsam. Alle Zeiten hier kommen von dieser Zahl.',
  },
  'bulk.between': {
    title: 'Warum geht er am Stück?',
    why: 'Viel Teig zusammen hält seine Wärme, und alles reift gleich.',
    word: { name: 'Stockgare', means: 'das erste Gehen, der ganze Teig in einer Wanne' },
  },
  'bulk.fold': {
    title: 'Warum den Teig falten?',
    why: 'Jedes Falten macht ihn stärker, so hält er sein Gas.',
    word: { name: 'Falten', means: 'eine Seite heben, dehnen, umlegen' },
  },
  'bulk.spread': {
    title: 'Warum dünn ausziehen?',
    why: 'Auf einem weiten Teigblatt liegt die Einlage gleichmäßig, und kein Klumpen reißt den Laib.',
    word: { name: 'Laminieren', means: 'dünn ausziehen, füllen und wieder aufrollen' },
  },
  'bulk.scatter': {
    title: 'Warum bleibt ein Rand frei?',
    why: 'Einlage am Rand läuft aus und verbrennt im Topf.',
  },
  'bulk.roll': {
    title: 'Warum aufrollen?',
    why: 'Teiglagen halten die Einlage auseinander und den Laib hoch.',
  },
  'bulk.proving': {
    title: 'Wie weit soll er gehen?',
    why: 'Nicht nur nach der Uhr: nach dem, was du siehst. Drei Zeichen zusammen sagen es.',
    signs: {
      riseMarks: { name: 'Er ist gewachsen', means: 'Schau auf die Marke an der Wanne.' },
      domeEdge: {
        name: 'Ein gewölbter Rand',
        means: 'Der Teig neigt sich nach unten, wo er die Wanne berührt.',
      },
      bubbles: { name: 'Blasen', means: 'Einige oben, viele an der Seite.' },
      gonePast: {
        name: 'Zu weit gegangen',
        means: 'Flach, eingesunken und klebrig: er hat zu lange gewartet.',
      },
    },
  },
  'shape.divide': {
    title: 'Warum gleiche Stücke?',
    why: 'Laibe mit gleichem Gewicht sind zur gleichen Zeit fertig.',
    word: { name: 'Teilen', means: 'den Teig nach Gewicht in Laibe schneiden' },
  },
  'shape.preshape': {
    title: 'Warum zweimal formen?',
    why: 'Locker rundgewirkt bekommt er eine Haut, so hält die letzte Form.',
    word: { name: 'Rundwirken', means: 'das erste, lockere Formen' },
  },
  'shape.benchRest': {
    title: 'Warum noch mal ruhen?',
    why: 'Straffer Teig reißt. In wenigen Minuten lässt er nach.',
    word: { name: 'Teigruhe', means: 'eine kurze Ruhe vor dem letzten Formen' },
  },
  'shape.finalShape': {
    title: 'Warum so straff?',
    why: 'Mit straffer Haut geht der Laib nach oben und läuft nicht breit.',
    word: { name: 'Schluss', means: 'wo der Teig zugefaltet wurde' },
  },
  'shape.basket': {
    title: 'Warum ein Gärkorb?',
    why: 'Weicher Teig läuft breit. Der Korb hält ihn, während er geht.',
    word: { name: 'Gärkorb', means: 'ein bemehlter Korb, in dem ein Laib geht' },
  },
  'shape.scoop': {
    title: 'Warum ein Löffel?',
    why: 'Roggenteig klebt und hält keine Form. Das tut die Backform.',
  },
  'proof.toFridge': {
    title: 'Warum in die Kälte?',
    why: 'Kälte bremst das Gehen, so kannst du schlafen. Der Laib wird fest und voll Geschmack.',
    word: { name: 'Kalte Gare', means: 'das letzte Gehen, langsam, im Kühl\u00adschrank' },
  },
  'proof.retard': {
    title: 'Was sagt, dass er so weit ist?',
    why: 'Er wächst ein wenig, bis zum Rand. Eine Delle allein sagt bei kaltem Laib wenig.',
  },
  'proof.warm': {
    title: 'Was sagt, dass er so weit ist?',
    why: 'Drück mit bemehltem Finger und schau auf die Delle.',
    word: { name: 'Fingertest', means: 'einen Finger eindrücken, sehen, wie es zurückkommt' },
    signs: {
      pokeSpringsBack: { name: 'Springt sofort zurück', means: 'Er braucht mehr Zeit.' },
      pokeSlow: { name: 'Kommt langsam zurück', means: 'Er ist so weit.' },
      pokeStays: { name: 'Die Delle bleibt', means: 'Das ist Übergare: back ihn jetzt.' },
    },
  },
  turnOn: {
    title: 'Warum auch den Topf heizen?',
    why: 'Ein heißer Topf hebt den Laib sofort und hält seinen Dampf drin.',
    word: { name: 'Topf', means: 'dickes Eisen mit Deckel, das die Hitze hält' },
  },
  before: {
    title: 'Warum jetzt eine Liste?',
    why: 'Heißes Eisen lässt keine Zeit, einen Handschuh zu suchen.',
  },
  score: {
    title: 'Warum den Laib schneiden?',
    why: 'Irgendwo muss er aufgehen. Der Schnitt sagt, wo.',
    word: { name: 'Einschneiden', means: 'die Haut schneiden, kurz vor dem Ofen' },
  },
  lidded: {
    title: 'Warum ist der Deckel drauf?',
    why: 'Dampf hält die Haut weich, während der Laib aufgeht. Dann kommt der Deckel ab für die Kruste.',
    signs: {
      colours: { name: 'Blass bis dunkel', means: 'Goldbraun ist das Ziel, nie schwarz.' },
      judgeCrust: {
        name: 'Eine goldbraune Kruste',
        means: 'Rundum braun, am Schnitt dunkler.',
      },
      knock: {
        name: 'Ein hohles Klopfen',
        means: 'Klopf auf den Boden: es klingt wie eine Trommel.',
      },
    },
  },
  'cool.cooling': {
    title: 'Warum warten mit dem Schneiden?',
    why: 'Innen wird er noch fest. Heiß ge\u00adschnitten wird die Krume klitschig.',
    word: { name: 'Krume', means: 'das Innere vom Laib' },
  },
  'cool.note': {
    title: 'Warum aufschreiben?',
    why: 'Eine Sache geändert macht den nächsten Laib besser. Nächste Woche weißt du es nicht mehr.',
  },
};
