import type * as english from '../words/care.ts';
import type { InTongue } from '../tongue.ts';

export const RAW_FLOUR =
  'Mehl ist ein rohes Lebensmittel: nicht probieren. Danach Hände und Fläche waschen.';
export const RAW_DOUGH = 'Teig ist roh: nicht probieren. Danach Hände waschen.';
export const ALLERGENS = 'Nüsse, Samen und Milch sind Allergene: nenn sie.';
export const BURN = 'Verbrannt: 20 Minuten kühles fließendes Wasser, hol Hilfe.';
export const RING = 'Nur Erwachsene: Kinder bleiben 1 m weg.';
export const MITTS = 'Heißes Eisen: trockene Handschuhe, beide Hände, Gesicht weg.';
export const RATING = 'Hitzefester Knauf; viele Backpapiere halten nur {parchmentHeat} aus.';
export const HOT_IRON = 'Topf und Deckel bleiben heiß: Kinder 1 m weg.';
export const WASH_AGAIN = 'Wasch sie nach rohem Mehl oder Teig noch mal.';
export const STEAM = 'Dampf verbrüht: von der Seite gießen, Gesicht weg.';

export const careLines: InTongue<typeof english.careLines> = {
  RAW_FLOUR,
  RAW_DOUGH,
  ALLERGENS,
  BURN,
  RING,
  MITTS,
  RATING,
  HOT_IRON,
  WASH_AGAIN,
  STEAM,
};
