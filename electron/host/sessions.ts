import { randomBytes, timingSafeEqual } from 'node:crypto';

/** Who can use the page: every browser that opened a link from the program; each link works once. */
export interface Sessions {
  readonly secret: string;
  readonly cookie: string;
  /** A key that logs one browser in, once. */
  readonly newKey: () => string;
  /** Uses up a key; returns whether it was valid. */
  readonly takeKey: (key: string) => boolean;
  readonly isIn: (cookies: string | undefined) => boolean;
}

/** Cookies are shared by all ports of a host, so the cookie's name contains the port. */
export function openSessions(port: number, secret: string): Sessions {
  const name = `loamwright-${port}`;
  const keys = new Set<string>();
  return {
    secret,
    cookie: `${name}=${secret}; HttpOnly; SameSite=Strict; Path=/`,
    newKey: () => {
      const key = newSecret();
      keys.add(key);
      return key;
    },
    takeKey: (key) => {
      const known = [...keys].find((each) => isSame(each, key));
      return known !== undefined && keys.delete(known);
    },
    isIn: (cookies = '') =>
      cookies.split(';').some((each) => {
        const [given, ...value] = each.trim().split('=');
        return given === name && isSame(value.join('='), secret);
      }),
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
