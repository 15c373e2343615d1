import type { Round } from '../../../core/ear/known.ts';
import type { EarEngine } from '../../../core/ear/person.ts';
import type { EarPhrase } from '../../../core/ear/phrases.ts';
import { earKitchen } from '../../../core/speech/words/ear-kitchen.ts';
import type { NotWritten } from '../../house-circle.ts';
import type { HouseEar } from '../../house-ear.ts';
import type { House } from '../../house.ts';

/** A face each, with what it is of. */
type Each<A extends string, Of = object> = A extends string ? { readonly at: A } & Of : never;
interface OfVoice {
  readonly id: string;
}
interface OfRound extends OfVoice {
  readonly round: Round;
}
interface OfPhrase extends OfRound {
  readonly phrase: EarPhrase;
  /** It follows one that was just said: the microphone opens by itself. */
  readonly goesOn?: boolean;
}

/** Where one is on the ear's pages. `id`: whose voice. */
export type EarFace =
  | Each<'ear' | 'engine' | 'expect' | 'eraseAll' | 'people' | 'new'>
  | Each<'person' | 'erase' | 'try', OfVoice>
  | Each<'list' | 'done', OfRound>
  | Each<'say', OfPhrase>;

export interface EarFaceProps {
  readonly house: House;
  readonly ear: HouseEar;
  readonly onOpen: (next: EarFace) => void;
  /** To the face over this one. */
  readonly onBack: () => void;
}

/** The face that one goes back to, whichever way one came; null: off these pages. */
export function faceOver(face: EarFace): EarFace | null {
  switch (face.at) {
    case 'ear':
      return null;
    case 'engine':
    case 'expect':
    case 'eraseAll':
    case 'people':
      return { at: 'ear' };
    case 'new':
    case 'person':
      return { at: 'people' };
    case 'erase':
    case 'try':
    case 'list':
    case 'done':
      return { at: 'person', id: face.id };
    case 'say':
      return { at: 'list', id: face.id, round: face.round };
  }
}

/** What voices are learned for: the engine that is chosen, and the plain one before any is. */
export function engineOf(house: House): EarEngine {
  const { ear } = house.equipment();
  return ear === 'off' ? 'plain' : ear;
}

/** Why something is not on the disk, told. */
export const notWritten = (why: NotWritten): string =>
  why === 'full' ? earKitchen.full : earKitchen.notWritten;
