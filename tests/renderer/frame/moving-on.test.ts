import { describe, expect, test } from 'vitest';
import { onMovingOn } from '#renderer/frame/moving-on.ts';

describe('onMovingOn', () => {
  test('writing anew is moving on, and after a stop nothing is', () => {
    const page = new EventTarget();
    let moves = 0;
    const stop = onMovingOn(page, () => (moves += 1));
    page.dispatchEvent(new Event('input'));
    page.dispatchEvent(new Event('input'));
    stop();
    page.dispatchEvent(new Event('input'));
    expect(moves).toBe(2);
  });
});
