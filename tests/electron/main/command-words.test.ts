import { describe, expect, test } from 'vitest';
import { commandWords } from '#electron/main/command-words.ts';

describe('commandWords', () => {
  test.each([
    ['bench --sizes T03', ['bench', '--sizes', 'T03']],
    ['--version', ['--version']],
    ['benhc', ['benhc']],
    ['', undefined],
    ['start', undefined],
    ['--book /books/ferry.loamwright', undefined],
    ['/books/ferry.loamwright', undefined],
    ['ferry.loamwright', undefined],
    ['--no-sandbox', undefined],
    ['-psn_0_12345', undefined],
  ])('loamwright %s', (line, words) => {
    const args = line.split(' ').filter((word) => word !== '');
    expect(commandWords(['/opt/Loamwright/loamwright', ...args], true)).toEqual(words);
    expect(commandWords(['electron', '.', ...args], false)).toEqual(words);
  });
});
