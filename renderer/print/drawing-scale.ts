import type { SectionFigures } from '#renderer/drawing/section-figures.ts';

/** About 1 to 14 on paper, px per mm. */
const USUAL = 0.262;
/** Width of a page inside its margins, for Letter and A4, px. */
const ROOM = 660;
/** Room for words next to a drawing, and between two, px. */
const WORDS = 92;
const GAP = 14;
/** Greatest height of a drawing, px. */
const TALLEST = 200;
/** At a smaller scale, px per mm, the words would be higher than the drawing, and are left out. */
const SMALLEST_WITH_WORDS = 0.16;

export interface DrawingScale {
  readonly scale: number;
  readonly labels: boolean;
}

/** One scale for all drawings of a paper, so that they fit in one row of the page. */
export function drawingScale(figures: readonly SectionFigures[]): DrawingScale {
  const depths = figures.reduce((sum, { overallDepth = 0 }) => sum + overallDepth + 20, 0);
  const heights = Math.max(...figures.map(({ insideHeight = 0 }) => insideHeight + 70));
  const fitting = (words: number) =>
    Math.min(USUAL, TALLEST / heights, (ROOM - figures.length * (words + GAP)) / depths);
  const labelled = fitting(WORDS);
  return labelled >= SMALLEST_WITH_WORDS
    ? { scale: labelled, labels: true }
    : { scale: Math.max(0.02, fitting(0)), labels: false };
}
