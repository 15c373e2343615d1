import type { Span } from '../plan/types.ts';

/** Hands that a bake outside the plan wants: no errand, so it neither bends nor is drawn as one. */
export interface BakeSpan extends Span {
  readonly bake: string;
}

export const isBakeSpan = (span: Span): span is BakeSpan => 'bake' in span;
