import type { JSX } from 'solid-js';
import { Control } from '../parts/Control.tsx';

/** A press that asks for a file of the tablet's: `camera` has it taken there and then, where there is one. */
export function FileControl(props: {
  readonly label: string;
  readonly accept: string;
  readonly camera?: boolean;
  readonly disabled: boolean;
  readonly onFile: (file: File) => void;
}): JSX.Element {
  let input!: HTMLInputElement;
  const chosen = (): void => {
    const [file] = input.files ?? [];
    if (file) props.onFile(file);
    // The same one again is a choice too.
    input.value = '';
  };
  return (
    <>
      <input
        ref={input}
        type="file"
        hidden
        accept={props.accept}
        capture={props.camera ? 'environment' : undefined}
        aria-label={props.label}
        onChange={chosen}
      />
      <Control label={props.label} disabled={props.disabled} onPress={() => input.click()} />
    </>
  );
}
