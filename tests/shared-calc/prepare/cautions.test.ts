import { describe, expect, test } from 'vitest';
import { figureCautions, stepCautions } from '#shared-calc/prepare/cautions.ts';
import { demoRecords } from '#tests/demo-bench.ts';

describe('stepCautions', () => {
  test('every caution names who decides, each step once', () => {
    expect(stepCautions.filter(({ caution, decides }) => caution === '' || decides === '')).toEqual([]);
    expect(new Set(stepCautions.map(({ step }) => step)).size).toBe(stepCautions.length);
  });

  test('none promises anything', () => {
    const promised = stepCautions.filter(({ caution }) =>
      /guarantee|\bis safe\b|maintenance-free|self-cleaning/i.test(caution),
    );
    expect(promised).toEqual([]);
  });
});

describe('figureCautions', () => {
  test('each stands beside lines that the house has', () => {
    const read = new Set([...demoRecords().line.values()].map((line) => line.use));
    expect(figureCautions.flatMap(({ uses }) => uses).filter((use) => !read.has(use))).toEqual([]);
  });
});
