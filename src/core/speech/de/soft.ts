import type * as english from '../words/soft.ts';
import type { InTongue } from '../tongue.ts';

/** What long German words of this work end in: the second half of a compound may stand in the next line. */
const HALVES = `
  brot roggen weizen mehl korn kerne gerste hafer samen nüsse teig wasser kocher salz öl butter käse
  laib laibe stück rest temperatur ratur gewicht menge zeit zeiten dauer wärme hitze schüssel
  schüsseln topf töpfe ofen deckel korb körbe kasten tisch schrank buch bücher kreis liste zettel
  karte karten datei probe anteil anteile punkt punkte seite seiten größe fläche farbe stufe stunde
  stunden woche wochen tag tage abend nacht nehmen werfen legen stellen halten geben wegs lassen
  zählen gabe gaben nahme stand stände lage lagen schluss messung tasten messer waage füllung mischung
  ladung rung rungen lung lungen dungen seln ketten kühlt backen schen blumenkerne vollkorn
  vollkornmehl blendetes gare wort scheid gossenes weise art arten bäcker linie schaft fertig
  speichert speicherte hörer schale raum wechsel los tens den schnitten schnitt kommt nis
  wachsenen sche chern sel nuss nieren früchte gleichen blumen men
`;

const BEFORE_HALF = new RegExp(
  `(?<=\\p{L}{2})(?=(?:${HALVES.trim().split(/\s+/).join('|')})(?!\\p{L}))`,
  'giu',
);

/** Shorter words have room wherever anything has. */
const LONG = /\p{L}{7,}/gu;

/**
 * The same words, with soft hyphens where a line may end inside one, and a long pair of words parted at its
 * hyphen; a baker's own are parted likewise.
 */
const soften = (text: string): string =>
  text
    .replace(LONG, (word) => word.replace(BEFORE_HALF, '\u00AD'))
    .replace(/(?<=\p{L}{4})-(?=\p{L}{4})/gu, '-\u200B');

export const soft: InTongue<typeof english.soft> = { soften };
