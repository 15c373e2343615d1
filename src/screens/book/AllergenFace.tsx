import type { JSX } from 'solid-js';
import { PacketFace } from '../PacketFace.tsx';
import { BookPage } from './BookPage.tsx';
import type { Editing } from './editing.ts';
import { partOf, withPacket, withPart, type PartKey } from './parts.ts';

/** What the packet of a flour or a filling of the formula names. */
export function AllergenFace(props: {
  readonly editing: Editing;
  readonly part: PartKey;
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  const part = () => partOf(props.editing.formula(), props.part);
  const grain = () => {
    const { kind, of } = part();
    return kind === 'flour' ? of.grain : null;
  };
  return (
    <PacketFace
      page={BookPage}
      grid="book-grid book-top"
      name={part().of.name}
      of={part().of}
      grain={grain()}
      back={props.back}
      onChange={(to) =>
        props.editing.change(withPart(props.editing.formula(), withPacket(part(), to)))
      }
      onBack={() => props.onBack()}
    />
  );
}
