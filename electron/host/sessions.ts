import { randomBytes, timingSafeEqual } from 'node:crypto';

/** How long a link that nobody has opened lets a browser in. */
const KEY_MS = 60_000;

/** `old` is a key of this run that was used, or that nobody used in time. */
export type KeyState = 'taken' | 'old' | 'unknown';

/**
 * Who can use the page: a browser that brought a key got the secret for it, and sends it with every call. Each key works
 * once. There is no cookie: a browser sends those to every server on this address, whatever its port.
 */
export interface Sessions {
  readonly secret: string;
  /** A key that lets one browser in, once, within a minute; `ended` is called as soon as it does so no longer. */
  readonly newKey: (ended?: () => void) => string;
  readonly takeKey: (key: string) => KeyState;
  /** Whether an `authorization` header has the secret. */
  readonly isIn: (authorization: string | undefined) => boolean;
  readonly close: () => void;
}

export function openSessions(secret: string): Sessions {
  const keys = new Map<string, () => void>();
  const old = new Set<string>();
  const end = (key: string) => {
    const ended = keys.get(key);
    keys.delete(key);
    old.add(key);
    ended?.();
  };
  return {
    secret,
    newKey: (ended = () => undefined) => {
      const key = newSecret();
      const timer = setTimeout(() => end(key), KEY_MS).unref();
      keys.set(key, () => {
        clearTimeout(timer);
        ended();
      });
      return key;
    },
    takeKey: (given) => {
      const key = [...keys.keys()].find((each) => isSame(each, given));
      if (key === undefined) return old.has(given) ? 'old' : 'unknown';
      end(key);
      return 'taken';
    },
    isIn: (authorization = '') => isSame(authorization, `Bearer ${secret}`),
    close: () => [...keys.keys()].forEach(end),
  };
}

/** 32 random bytes, encoded for use in a link. */
export function newSecret(): string {
  return randomBytes(32).toString('base64url');
}

/** Compares in constant time. */
function isSame(one: string, other: string): boolean {
  const [left, right] = [Buffer.from(one), Buffer.from(other)];
  return left.length === right.length && timingSafeEqual(left, right);
}
