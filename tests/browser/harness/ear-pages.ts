import { ROUNDS } from '../../../src/core/ear/known.ts';
import { HAND_MARKS } from '../../../src/core/small/marks.ts';
import { back, press, to, turned, type PageStep } from './page-step.ts';
import { putVoices } from './put-voices.ts';

/** The ear's pages that want no microphone: from one that is off and knows nobody to as many as it may know. */
export const EAR_PAGES: readonly PageStep[] = [
  {
    name: 'the ear, off',
    async go(baker) {
      await baker.page.locator('.start-grid').waitFor();
      await press(baker, ['Kitchen', 'This tablet', 'The ear']);
      await baker.page.locator('.act-care').waitFor();
    },
  },
  to('the ear, whether it listens', 'Does it listen?'),
  {
    name: 'the ear, on',
    async go(baker) {
      await turned(baker, '.tile:has-text("Plain")');
      await turned(baker, '.slab:visible');
    },
  },
  to('the ear, what to expect', 'What to expect'),
  back('the ear, nobody known', 1, 'Whose voices'),
  to('a voice, its mark', 'Add a voice'),
  to('a voice, whose it is', 'Sun'),
  to('a voice, its first phrase', 'Child'),
  to('a voice, its phrases', 'All phrases'),
  to('a phrase that is drawn', 'Further on', 'Further on', 'Springs up'),
  {
    name: 'a voice',
    async go(baker) {
      await press(baker, ['All phrases']);
      await turned(baker, '.slab:visible');
    },
  },
  to('a voice, its digits', 'Digits'),
  to('a digit', 'Three'),
  {
    name: 'a voice, too little to try',
    async go(baker) {
      await press(baker, ['All phrases']);
      await turned(baker, '.slab:visible');
      await press(baker, ['How well it hears here']);
    },
  },
  back('a voice to be forgotten', 1, 'Forget this voice'),
  to('a voice that stays', 'Keep it'),
  {
    name: 'as many voices as there are marks',
    async go(baker) {
      const tongue = baker.app.lang.slice(0, 2);
      const phrases = ROUNDS.phrases;
      await baker.page.evaluate(
        putVoices(HAND_MARKS.map((mark) => ({ mark, child: false, tongue, phrases }))),
      );
      await baker.app.reopen();
      await baker.page.locator('.start-grid').waitFor();
      await press(baker, ['Kitchen', 'This tablet', 'The ear', 'Whose voices']);
    },
  },
  to('how well it hears here', 'Star', 'How well it hears here'),
  {
    name: 'every voice to be forgotten',
    async go(baker) {
      await press(baker, ['Star']);
      for (let n = 0; n < 2; n++) await turned(baker, '.slab:visible');
      await press(baker, ['Forget every voice']);
    },
  },
];
