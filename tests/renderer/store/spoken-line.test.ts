import { describe, expect, test } from 'vitest';
import { spokenLine } from '#renderer/store/spoken-line.ts';
import { ownClock } from './own-clock.ts';

const notice = { words: 'The book was opened from its backup.', refused: true };

describe('spokenLine', () => {
  test('a refusal leaves when the person moves on, but not with the act that it answers', () => {
    const clock = ownClock();
    const { said, speaking } = spokenLine(undefined, clock);
    speaking.refuse('Nothing here is called fern.');
    speaking.moveOn();
    const at = said.peek();
    clock.pass(1_000);
    speaking.moveOn();
    expect([at, said.peek()]).toEqual([{ words: 'Nothing here is called fern.', refused: true }, undefined]);
  });

  test('what was done, lost work and news of the book stay when the person moves on', () => {
    const clock = ownClock();
    const { said, speaking } = spokenLine(notice, clock);
    const lines = [() => undefined, () => speaking.say('Copied.'), () => speaking.warn('Not kept: litter.')].map(
      (tell) => {
        tell();
        clock.pass(5_000);
        speaking.moveOn();
        return said.peek();
      },
    );
    expect(lines).toEqual([
      notice,
      { words: 'Copied.', refused: false },
      { words: 'Not kept: litter.', refused: true },
    ]);
  });

  test('a change clears the line', () => {
    const { said, clear } = spokenLine(notice, ownClock());
    clear();
    expect(said.peek()).toBeUndefined();
  });
});
