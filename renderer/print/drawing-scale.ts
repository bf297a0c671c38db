import type { SectionFigures } from '#renderer/drawing/section-figures.ts';

/** About 1 to 14 on paper, in px to the mm. */
const USUAL = 0.262;
/** What a page is wide inside its margins, Letter and A4 alike, px. */
const ROOM = 660;
/** Words beside a drawing, and between two, px. */
const WORDS = 92;
const GAP = 14;
/** The tallest a drawing may stand, px. */
const TALLEST = 200;
/** Smaller than this, words would stand higher than the drawing: they are left off. */
const SMALLEST_WITH_WORDS = 0.16;

export interface DrawingScale {
  readonly scale: number;
  readonly labels: boolean;
}

/** One scale for all drawings of a paper, such that they stand in one row of the page. */
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
