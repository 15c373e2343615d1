import type * as english from '../words/water.ts';
import type { InTongue } from '../tongue.ts';

export const water: InTongue<typeof english.water> = {
  dough: 'für Teig mit {celsius}',
  levain: 'für Sauerteig mit {celsius}',
  range: 'oder {range}',
  line: '{line}, {celsius}',
  spoken: '{line}, mit {celsius}.',
  moved: 'Das Wasser hat jetzt {celsius}.',
  ice: '{grams} davon als Eis. Der Rest kommt kalt aus dem Hahn.',
  hot: 'Nicht heißer: es fängt mit {celsius} an und dauert länger.',
  warmer: 'Deine letzten Teige waren {got} wärmer: darum kühleres Wasser.',
  cooler: 'Deine letzten Teige waren {got} kühler: darum wärmeres Wasser.',
  guess: {
    both: 'Geschätzt: Mehl und Sauerteig so warm wie die Küche.',
    flour: 'Geschätzt: Mehl so warm wie die Küche.',
    levain: 'Geschätzt: Sauerteig so warm wie die Küche.',
    tap: 'Geschätzt: kaltes Leitungswasser mit {celsius}.',
    seed: 'Geschätzt: Anstellgut mit {celsius}, aus dem Kühl\u00adschrank.',
  },
};
export const mixTaught: InTongue<typeof english.mixTaught> = {
  right: 'Der Teig ist so warm wie berechnet.',
  warmer: '{got} wärmer als berechnet: das nächste Wasser wird kühler.',
  cooler: '{got} kühler als berechnet: das nächste Wasser wird wärmer.',
};
export const whyWater: InTongue<typeof english.whyWater> = {
  title: 'Warum Wasser mit {celsius}?',
  dough: 'Gewünscht im Teig',
  levain: 'Gewünscht im Glas',
  flour: 'Mehl',
  levainNow: 'Sauerteig',
  seed: 'Anstellgut',
  kitchen: 'Küche',
  tap: 'Kalt aus dem Hahn',
  read: '{celsius}, gemessen',
  told: '{celsius}, von dir genannt',
  guessed: '{celsius}, geschätzt',
  ofFormula: '{celsius}, laut Rezept',
  usual: '{celsius}, wie üblich',
  change: 'Ändere den Wunsch: {celsius}',
  wetting: 'Nasses Mehl wärmt sich selbst, niemand weiß wie sehr: {range}.',
  one: 'Dein letzter Teig war {got}. Das Wasser gleicht die Hälfte aus.',
  some: 'Deine letzten {count} Teige waren {got}. Das Wasser gleicht das meiste aus.',
  known: 'Deine letzten {count} Teige waren {got}. Das Wasser gleicht es aus.',
  as: { warmer: '{got} wärmer als berechnet', cooler: '{got} kühler als berechnet' },
  asReckoned: 'wie berechnet',
  rule: 'Die Faustregel sagt {celsius}. Sie zählt wenig Sauerteig wie ein Kilo Mehl: eine zweite Meinung.',
  most: 'Nie über {celsius}: das schadet Händen und Sauerteig.',
  second: 'Wenig Wasser ändert viel Teig nur wenig.',
  measure: 'Miss den Teig trotzdem.',
};
