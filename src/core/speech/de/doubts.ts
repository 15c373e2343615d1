import type * as english from '../words/doubts.ts';
import type { InTongue } from '../tongue.ts';

export const doubts: InTongue<typeof english.doubts> = {
  kitchenUnknown: 'Wie warm es hier ist, ist nicht bekannt.',
  kitchenCold: 'So kalt, dass es nur grob geschätzt ist.',
  kitchenHot: 'So heiß, dass es nur grob geschätzt ist.',
  tooCold: 'Zu kalt, kein Ende zu sehen: wärm ihn.',
  above28: 'So warme Teige sind verschieden: sieh früh nach.',
  pff: 'Bei so viel oder wenig Sauerteig: grob geschätzt.',
  salt: 'Bei diesem Salz: grob geschätzt.',
  rye: 'So viel Roggen: grob geschätzt.',
  hydration: 'So fester oder nasser Teig: grob geschätzt.',
  rise: 'Er soll höher gehen, als erprobt ist.',
  oddReading: 'Ein seltsamer Messwert ist dabei: grob geschätzt.',
  laterThanModel: 'Länger als gedacht: trau deinen Augen.',
};
export const doubtsLines: InTongue<typeof english.doubtsLines> = {
  warmPlace: 'An einem warmen Platz, {celsius}: so weit etwa um {time}.',
  readyByThen: 'Bis dahin sind sie wohl so weit.',
};
