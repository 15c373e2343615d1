import type { Stop } from '../../machines/ports.ts';

export interface News {
  /** Tells the other pages of this kitchen that its log has grown. */
  tell(): void;
  onNews(then: () => void): Stop;
}

/** Pages of one kitchen hear of each other's writes; a browser that cannot is silent. */
export function makeNews(name: string): News {
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(name);
  return {
    tell: () => channel?.postMessage('grown'),
    onNews(then) {
      const hear = (): void => then();
      channel?.addEventListener('message', hear);
      return () => channel?.removeEventListener('message', hear);
    },
  };
}
