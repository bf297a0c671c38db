import { describe, expect, test } from 'vitest';
import { renameInRule } from '#shared-calc/rule/rename-line.ts';

describe('renameInRule', () => {
  test.each([
    ['drainage+ drainage * drainage_settle', 'depth+ depth * drainage_settle'],
    ['12 L/drainage', '12 L/depth'],
    ['max( drainage ,"drainage")  ', 'max( depth ,"drainage")  '],
    ['drainage(drainage)', 'drainage(depth)'],
    ['drainage + (((', 'depth + ((('],
    ['3 drainage + drainage', '3 drainage + depth'],
    ['kit = "drainage', 'kit = "drainage'],
    ['', ''],
  ])('in %j puts the new name and keeps the rest: %j', (text, renamed) => {
    expect(renameInRule(text, 'drainage', 'depth')).toBe(renamed);
  });
});
