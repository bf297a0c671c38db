import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { newSecret, openSessions } from '#electron/host/sessions.ts';

describe('openSessions', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  test('a key that nobody used within a minute lets nobody in', () => {
    const sessions = openSessions(newSecret());
    const ended: string[] = [];
    const [early, late] = ['early', 'late'].map((name) => sessions.newKey(() => ended.push(name)));
    vi.advanceTimersByTime(59_000);
    expect(sessions.takeKey(early ?? '')).toBe('taken');
    vi.advanceTimersByTime(2_000);

    expect(sessions.takeKey(late ?? '')).toBe('old');
    expect(sessions.takeKey('made up')).toBe('unknown');
    expect(ended).toEqual(['early', 'late']);
  });

  test('closing ends every key', () => {
    const sessions = openSessions(newSecret());
    const key = sessions.newKey();
    sessions.close();

    expect(sessions.takeKey(key)).toBe('old');
  });

  test('the secret alone is let in, whole and by its scheme', () => {
    const secret = newSecret();
    const { isIn } = openSessions(secret);
    const given = [`Bearer ${secret}`, secret, `bearer ${secret}`, `Bearer ${secret}x`, `Bearer ${secret.slice(1)}`];

    expect([...given, '', undefined].map(isIn)).toEqual([true, false, false, false, false, false, false]);
  });
});
