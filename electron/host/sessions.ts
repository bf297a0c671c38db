import { randomBytes, timingSafeEqual } from 'node:crypto';

/** Who may use the page: whoever came in by a link that was given out, each link once. */
export interface Sessions {
  readonly secret: string;
  readonly cookie: string;
  /** A key that lets one browser in, once. */
  readonly newKey: () => string;
  /** Takes a key; it is spent then. */
  readonly takeKey: (key: string) => boolean;
  readonly isIn: (cookies: string | undefined) => boolean;
}

/** Cookies do not tell ports apart, so that the port is in the name. */
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

/** 32 random bytes, in letters that a link takes. */
export function newSecret(): string {
  return randomBytes(32).toString('base64url');
}

/** Compared in the same time however much of it is right. */
function isSame(one: string, other: string): boolean {
  const [left, right] = [Buffer.from(one), Buffer.from(other)];
  return left.length === right.length && timingSafeEqual(left, right);
}
