import { SectionDrawing } from '#renderer/drawing/section-drawing.tsx';
import type { SectionFigures } from '#renderer/drawing/section-figures.ts';
import { drawnSections } from './stand-in-bench.ts';

const plain = drawnSections['T07'];

const shapes: readonly (readonly [of: string, differs: Partial<SectionFigures>])[] = [
  [
    'T01 small',
    {
      overallDepth: 300,
      insideHeight: 300,
      damHeight: 75,
      drainage: 20,
      capping: 6,
      soilFront: 41,
      soilRise: 40,
      lamps: 1,
      glass: 4,
    },
  ],
  ['T07 sloped', { soilRise: 40 }],
  [
    'T09 bow',
    { shape: 'bow', overallDepth: 460, frontBow: 70, insideHeight: 500, damHeight: 140, soilFront: 80, soilRise: 40 },
  ],
  ['T10 corner', { shape: 'corner', overallDepth: 580, sideReturn: 250, damHeight: 140, soilFront: 80, soilRise: 60 }],
  [
    'T11 hexagon',
    { shape: 'hexagon', overallDepth: 519.6, insideHeight: 450, damHeight: 120, drainage: 30, soilFront: 70 },
  ],
  [
    'T12 cylinder',
    { shape: 'cylinder', overallDepth: 400, insideHeight: 500, damHeight: 140, soilFront: 80, lamps: 1 },
  ],
  ['no room for soil', { drainage: 120, soilFront: -25 }],
  ['soil over the dam', { soilFront: 130 }],
  ['soil not known', { soilFront: undefined }],
  ['dry', { drainage: 0, drainGap: 10, capping: 0, soilFront: 130, litter: 0 }],
  ['not measured', { overallDepth: undefined }],
];

/** Every shape of tank, and every way in which a stack does not fit. */
export function DrawnShapes() {
  return (
    <div class="place-page" style={{ display: 'flex', flexWrap: 'wrap', gap: '24px 110px', padding: '16px' }}>
      {shapes.map(([of, differs]) => (
        <figure key={of} style={{ width: '240px' }}>
          {plain && <SectionDrawing figures={{ ...plain, ...differs }} scale={0.3} of={of} />}
          <figcaption>{of}</figcaption>
        </figure>
      ))}
    </div>
  );
}
