import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { styleFaults } from './styles.ts';

const folder = (of: string) => fileURLToPath(new URL(`../../${of}`, import.meta.url));

describe('styles of the page', () => {
  test('every class and style file that the page calls for is there, and no class of a part is worn by nothing', () => {
    expect(styleFaults(folder('renderer'))).toEqual([]);
  });

  test('a page that calls for what is not there is refused', () => {
    expect(styleFaults(folder('fixtures/styles'))).toEqual([
      'part.tsx: no style for the class nowhere',
      'part.tsx: no class missing in part.module.css',
      'part.tsx: there is no gone.css',
      'part.module.css: nothing wears the class lonely',
    ]);
  });
});
