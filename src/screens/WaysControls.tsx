import type { JSX } from 'solid-js';
import { controls } from '../core/speech/en/controls.ts';
import { Control } from '../parts/Control.tsx';
import type { House } from './house.ts';

/** Light or dark, which hand, how big: kept on this tablet. */
export function WaysControls(props: { readonly house: House }): JSX.Element {
  const ways = () => props.house.ways();
  return (
    <>
      <Control
        label={ways().theme === 'dark' ? controls.light : controls.dark}
        onPress={() => props.house.choose({ theme: ways().theme === 'dark' ? 'light' : 'dark' })}
      />
      <Control
        label={ways().hands === 'left' ? controls.rightHand : controls.leftHand}
        onPress={() => props.house.choose({ hands: ways().hands === 'left' ? 'right' : 'left' })}
      />
      <Control
        label={controls.bigger}
        chosen={ways().text === 'bigger'}
        onPress={() => props.house.choose({ text: ways().text === 'bigger' ? 'plain' : 'bigger' })}
      />
    </>
  );
}
