import { inTongue } from '../tongue.ts';

/** Around a lesson: common practice, no source, as are the lessons themselves. */
export const lessonPage = inTongue('lesson-page', 'lessonPage', {
  label: 'Lesson',
  newWord: 'A new word',
  sign: 'A sign to know',
  toAct: 'Show me how',
  next: 'Go on',
  of: '{n} of {count}',
  leave: 'No more lessons',
  back: 'One back',
  open: 'Why, and how it looks',
  first: 'My first loaf',
  said: '{word}: {means}',
});
