import { describe, expect, test } from 'vitest';
import { glassMass } from '#shared-calc/trade/mass/glass-mass.ts';

const KG_M2_PER_LB_FT2 = 4.88242763638; // exact by definition, NIST SP 811 App. B
const MM_PER_INCH = 25.4;

describe('mass of glass, EN 572-1: 2500 kg/m3, so 2.5 kg a square metre and mm', () => {
  // worked from that density for the labels of ASTM C1036
  test.each([
    { label: 2.5, inch: 3 / 32, byLabel: 6.25, byInch: 5.95, pounds: 1.219 },
    { label: 3, inch: 1 / 8, byLabel: 7.5, byInch: 7.94, pounds: 1.626 },
    { label: 4, inch: 5 / 32, byLabel: 10, byInch: 9.92, pounds: 2.032 },
    { label: 5, inch: 3 / 16, byLabel: 12.5, byInch: 11.91, pounds: 2.439 },
    { label: 6, inch: 1 / 4, byLabel: 15, byInch: 15.88, pounds: 3.251 },
    { label: 8, inch: 5 / 16, byLabel: 20, byInch: 19.84, pounds: 4.064 },
    { label: 10, inch: 3 / 8, byLabel: 25, byInch: 23.81, pounds: 4.877 },
    { label: 12, inch: 1 / 2, byLabel: 30, byInch: 31.75, pounds: 6.503 },
    { label: 19, inch: 3 / 4, byLabel: 47.5, byInch: 47.63, pounds: 9.754 },
  ])('$label mm is $byLabel kg/m2 by its label', ({ label, inch, byLabel, byInch, pounds }) => {
    const exact = Number(glassMass.compute([1, inch * MM_PER_INCH]));
    expect(glassMass.compute([1, label])).toBeCloseTo(byLabel, 9);
    expect(Math.abs(exact - byInch)).toBeLessThan(0.0051);
    expect(exact / KG_M2_PER_LB_FT2).toBeCloseTo(pounds, 3);
  });

  // handbook weights from memory: within 1 %
  test.each([
    { inch: 1 / 8, pounds: 1.64 },
    { inch: 3 / 16, pounds: 2.45 },
    { inch: 1 / 4, pounds: 3.27 },
  ])('a handbook gives $pounds lb/ft2 for $inch in', ({ inch, pounds }) => {
    const ours = Number(glassMass.compute([1, inch * MM_PER_INCH])) / KG_M2_PER_LB_FT2;
    expect(Math.abs(ours / pounds - 1)).toBeLessThan(0.01);
  });

  test('a pane of 600 x 300 x 4 mm weighs 1.80 kg', () => {
    expect(glassMass.compute([0.18, 4])).toBeCloseTo(1.8, 9);
  });
});
