import type { Filling, Preparation } from './formula.ts';
import { Fields, readName, readOneOf } from './read-fields.ts';

const PREPARE = ['soak', 'toast', 'drain', 'cut', 'coat'] as const satisfies Preparation[];

/** Most water a soaker may take, % of its dry weight: seeds that jelly take up to tenfold. Judgement. */
export const MOST_SOAK = 1000;

/** What a filling holds of salt and of water, %; together they cannot be more than all of it. */
const readBrings = (brings: Fields): NonNullable<Filling['brings']> => {
  const salt = brings.number('salt', 0, 100);
  return { salt, water: brings.number('water', 0, 100 - salt) };
};

/** More than all the names there are, each grain and nut by itself, and some of a file's own. */
export const MOST_ALLERGENS = 30;

export const readAllergens = (of: Fields): readonly string[] =>
  of.list('allergens', 0, MOST_ALLERGENS, (one, at) => readName(one, at));

export const readPacket = (of: Fields): Pick<Filling, 'packet'> =>
  of.has('packet') ? { packet: of.oneOf('packet', ['read']) } : {};

/** One filling of a formula file. Fields a file may leave out stay left out. Throws `Refused`. */
export function readFilling(value: unknown, path: string): Filling {
  const filling = Fields.read(value, path);
  const prepare = filling.has('prepare')
    ? filling.list('prepare', 1, PREPARE.length, (one, at) => readOneOf(one, at, PREPARE))
    : [];
  return {
    id: filling.id('id'),
    name: filling.name('name'),
    pct: filling.number('pct', 0.1, 100),
    keeps: filling.oneOf('keeps', ['shelf', 'hardCheese', 'perishable']),
    allergens: readAllergens(filling),
    ...readPacket(filling),
    ...(prepare.length > 0 ? { prepare } : {}),
    ...(filling.has('group') ? { group: filling.name('group') } : {}),
    ...(filling.has('soak')
      ? { soak: { water: filling.inner('soak').number('water', 1, MOST_SOAK) } }
      : {}),
    ...(filling.has('brings') ? { brings: readBrings(filling.inner('brings')) } : {}),
    ...(filling.has('from') ? { from: filling.oneOf('from', ['shelf', 'fridge', 'freezer']) } : {}),
  };
}
