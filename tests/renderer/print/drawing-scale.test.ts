import { describe, expect, test } from 'vitest';
import { drawingScale } from '#renderer/print/drawing-scale.ts';
import { frozenSection } from '#renderer/print/frozen-section.ts';
import { quoteModel } from '#shared-calc/papers/quote-model.ts';
import { issued, libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';

function sectionsOf(tanks: readonly string[]) {
  const { body } = issued(libraryJob({ sizes: tanks.map((tank) => ({ tank, count: 1 })) }), 'A');
  return quoteModel(body).sizes.map((size) => frozenSection(size));
}

describe('frozenSection', () => {
  test('an issued quote draws its tanks from the figures that it was issued with, in mm', () => {
    const [t05] = sectionsOf(['T05']);
    expect(t05).toMatchObject({
      shape: 'rectangle',
      overallDepth: 445,
      insideHeight: 600,
      damHeight: 125,
      drainage: 35,
      drainGap: 10,
      capping: 10,
      soilFront: 70,
      soilRise: 0,
      litter: 30,
      lamps: 2,
    });
  });
});

describe('drawingScale', () => {
  test('one tank stands at about 1 to 14, or as high as the page lets it', () => {
    expect(drawingScale(sectionsOf(['T03'])).scale).toBeCloseTo(0.262, 3);
    expect(drawingScale(sectionsOf(['T05'])).scale * 670).toBeCloseTo(175.54, 1);
  });

  test('six tanks still stand in one row, without their words', () => {
    const { scale, labels } = drawingScale(sectionsOf(['T03', 'T04', 'T05', 'T06', 'T07', 'T08']));
    expect([labels, scale > 0.1]).toEqual([false, true]);
  });
});
