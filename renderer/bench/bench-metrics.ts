import type { SectionFigures } from '#renderer/drawing/section-figures.ts';
import { lampRoom } from '#renderer/drawing/section-shapes.ts';

export interface Room {
  /** Width of the grid, px. */
  readonly width: number;
  /** Width of the window, px. */
  readonly pageWidth: number;
  readonly pageHeight: number;
  /** Pixels per rem. */
  readonly rem: number;
}

/** Sizes on the bench, px. With one column, a whole strip is shown next to the names if it fits. */
export interface BenchMetrics {
  /** One column, nothing pinned: a narrow window, or 400 % zoom. */
  readonly narrow: boolean;
  readonly names: number;
  readonly strip: number;
  /** There is room next to the strips for a dashed tank. */
  readonly spare: boolean;
  readonly head: number;
  readonly plank: number;
  /** Pixels per millimetre in the section drawings, the same for all. */
  readonly scale: number;
  readonly line: number;
  readonly section: number;
  readonly foot: number;
  readonly price: number;
  readonly flags: number;
}

/** A head fits a tank 600 mm high with its lamps, mm. */
const usualHeight = 668;
/** A dashed tank may be a little narrower than a whole strip, as a share of it. */
const spareShare = 0.85;
/** Room next to a drawing for its labels and the paper's edge, px. */
const labelRoom = 92;

export function benchMetrics(room: Room, sections: readonly SectionFigures[]): BenchMetrics {
  const rem = (count: number) => Math.round(count * room.rem);
  const narrow = room.pageWidth <= rem(60);
  const step = stepOf(room);
  const least = rem(narrow ? 9.5 : 13.5);
  const strip = narrow ? Math.min(rem(step.strip), Math.max(rem(9), room.width - least)) : rem(step.strip);
  const left = room.width - strip * sections.length;
  const spare = !narrow && left >= rem(18) + strip * spareShare;
  const drawing = Math.ceil(usualHeight * step.scale);
  return {
    narrow,
    names: narrow ? least : Math.max(least, spare ? rem(18) : left),
    strip,
    spare,
    head: drawing + rem(1.75),
    plank: 7,
    scale: fittingScale(step.scale, { drawing, across: strip - labelRoom }, sections),
    line: rem(1.5),
    section: rem(1.5),
    foot: rem(1.125),
    price: rem(1.5) + 4,
    flags: rem(2.25),
  };
}

/** Strip in rem and scale in px per mm, by the size of the window. */
function stepOf({ pageWidth, pageHeight, rem }: Room): { readonly strip: number; readonly scale: number } {
  if (pageWidth >= 105 * rem) return { strip: 16.5, scale: pageHeight <= 52 * rem ? 0.17 : 0.24 };
  if (pageWidth <= 84 * rem) return { strip: 12.5, scale: 0.17 };
  return { strip: 14.125, scale: pageHeight <= 52 * rem ? 0.17 : 0.212 };
}

/** The usual scale, or a smaller one if a tank would not fit its head or its strip. */
function fittingScale(
  usual: number,
  room: { readonly drawing: number; readonly across: number },
  sections: readonly SectionFigures[],
): number {
  const fits = sections.flatMap(({ insideHeight, overallDepth, baseGlass = 6, glass = 6 }) => [
    insideHeight === undefined ? usual : room.drawing / (insideHeight + lampRoom + baseGlass),
    overallDepth === undefined ? usual : room.across / (overallDepth + 2 * glass),
  ]);
  return Math.min(usual, ...fits);
}
