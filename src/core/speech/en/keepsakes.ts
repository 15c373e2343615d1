/** What is told of what is kept of a bake, without a word of what stands in it. */
export const keepsakesTold = {
  misread:
    '{count} of what is kept of bakes cannot be read and is left out. First: {path}, expected {expected}, got {got}.',
} as const;
