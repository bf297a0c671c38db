import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { styleFaults } from './styles.ts';

const folder = (of: string) => fileURLToPath(new URL(`../../${of}`, import.meta.url));

describe('styles of the page', () => {
  test('every class that the page wears is of a module that is there, and no class of a module is worn by nothing', () => {
    expect(styleFaults(folder('renderer'))).toEqual([]);
  });

  test('a page that calls for what is not there, or wears a class of the whole page, is refused', () => {
    expect(styleFaults(folder('fixtures/styles'))).toEqual([
      'part.tsx: anywhere is the class of no module',
      'part.tsx: on is the class of no module',
      'part.tsx: no class missing in part.module.css',
      'part.tsx: there is no gone.css',
      'part.module.css: the class elsewhere is global',
      'sheet.css: the class anywhere is global',
      'part.module.css: nothing wears the class lonely',
    ]);
  });
});
