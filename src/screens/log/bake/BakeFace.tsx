import type { JSX } from 'solid-js';
import { log } from '../../../core/speech/en/log.ts';
import { Words } from '../../../parts/Words.tsx';
import type { FaceProps } from '../face.ts';
import { LogPage } from '../LogPage.tsx';

export default function BakeFace(props: FaceProps & { readonly start: string }): JSX.Element {
  return (
    <LogPage
      back={log.title}
      onBack={() => props.onBack()}
      words={<Words headline={log.title} />}
    />
  );
}
