/**
 * The microphone is wanted, or no more, which some tablets have to be told: an iPad hears nothing while it
 * only plays, and plays softly while it hears.
 */
export function tellSession(open: boolean): void {
  const { audioSession } = navigator as { audioSession?: { type: string } };
  if (audioSession) audioSession.type = open ? 'play-and-record' : 'playback';
}

/** Why a microphone that was asked for did not come. */
export function whyNone(cause: unknown): 'denied' | 'none' | 'failed' {
  const { name } = cause as Error;
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'denied';
  return name === 'NotFoundError' ? 'none' : 'failed';
}
