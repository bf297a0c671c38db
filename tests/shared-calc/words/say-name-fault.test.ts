import { describe, expect, test } from 'vitest';
import { lineNameFault } from '#shared-calc/rule/line-name.ts';
import { sayNameFault } from '#shared-calc/words/say-name-fault.ts';

describe('sayNameFault', () => {
  test.each([
    ['', 'A line needs a name, such as drain_gap.'],
    ['mm', 'mm is a unit; choose a longer name.'],
    ['if', 'if is a function; choose another name.'],
    ['no', 'no is an answer in rules; choose another name.'],
    ['drain gap', 'drain gap has a space in it; names are small letters a to z, digits and _.'],
    ['drain-gap', 'drain-gap has a hyphen in it; names are small letters a to z, digits and _.'],
    ['4th', '4th must begin with a letter.'],
    ['a'.repeat(61), `A name has at most 60 letters; ${'a'.repeat(20)}... has 61.`],
  ])('of %j says: %s', (name, sentence) => {
    const fault = lineNameFault(name, new Map());
    expect(fault && sayNameFault(fault)).toBe(sentence);
  });
});
