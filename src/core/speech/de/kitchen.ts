import type * as english from '../words/kitchen.ts';
import type { InTongue } from '../tongue.ts';

export const ear: InTongue<typeof english.ear> = {
  sound: {
    armed: 'Ton ist an',
    locked: 'Tippen für Ton',
    lost: 'Ton weg: tipp hier',
    unavailable: 'Kein Ton hier',
  },
  mute: { locked: 'Ton aus', unavailable: 'Kein Ton' },
  awake: {
    held: 'Bildschirm bleibt an',
    lost: 'Bildschirm kann ausgehen',
    unavailable: 'Lass den Bildschirm selbst an',
  },
  unheard: 'Ton aus: tippen',
  untilTouch: 'Der Ton ist aus, bis du tippst',
};
export const noPromise: InTongue<typeof english.noPromise> = {
  title: 'Das ist kein sicherer Wecker',
  text: 'Das Tablet kann still sein, wenn es gesperrt oder leise ist oder etwas anderes zeigt. Stell für jeden heißen Schritt einen zweiten Wecker.',
  agree: 'Ich stelle einen zweiten',
};
export const night: InTongue<typeof english.night> = {
  plug: 'Steck mich ans Kabel.',
  phone: 'Stell den Handywecker auf {time}.',
  why: 'Eine Seite kann ein schlafendes Tablet nicht wecken.',
};
export const twoPages: InTongue<typeof english.twoPages> = {
  headline: 'Eine andere Seite hat die Küche',
  detail: 'Diese hier zeigt sie nur.',
  free: 'Die andere Seite ist weg.',
  take: 'Die Küche hierher holen',
};
export const update: InTongue<typeof english.update> = {
  offer: 'Eine neue Fassung ist da.',
  detail: 'Dein Backen geht weiter, wo es steht.',
  take: 'Wechsle zu ihr',
  later: 'Später',
};
export const coolLoaf: InTongue<typeof english.coolLoaf> = {
  lost: 'Backverlust: {grams}, das sind {percent} %. Warme Tüten offen lassen.',
};
export const divideAdvice: InTongue<typeof english.divideAdvice> = {
  heavy: {
    text: '{grams} zu schwer. Gib es zum nächsten Stück.',
    spoken: '{grams} zu schwer. Gib es zum nächsten Stück.',
  },
  light: {
    text: '{grams} zu leicht. Nimm etwas vom nächsten Stück.',
    spoken: '{grams} zu leicht. Nimm etwas vom nächsten Stück.',
  },
  right: {
    text: '{grams}: genau richtig. Leg es beiseite.',
    spoken: '{grams}, genau richtig. Leg es beiseite.',
  },
};
