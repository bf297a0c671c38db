import type { ComponentChildren } from 'preact';
import { SectionDrawing } from '#renderer/drawing/section-drawing.tsx';
import type { SectionFigures } from '#renderer/drawing/section-figures.ts';
import type { PictureName } from '#shared-calc/help/word.ts';
import css from './help-picture.module.css';

/** A small tank in whole figures, mm. */
const tank: SectionFigures = {
  shape: 'rectangle',
  overallDepth: 400,
  insideHeight: 360,
  damHeight: 150,
  glass: 5,
  baseGlass: 6,
  frontBow: undefined,
  sideReturn: undefined,
  frontVent: 20,
  drainage: 40,
  drainGap: 10,
  meshThickness: 1,
  meshUpturn: 30,
  capping: 12,
  beadWidth: 20,
  beadHeight: 20,
  soilFront: 87,
  soilRise: 60,
  litter: 30,
  coverVent: 30,
  lamps: 1,
};

const scale = 0.42;

/** Each picture that explains a word, with what it shows in words. */
const pictures: Readonly<Record<PictureName, () => ComponentChildren>> = {
  layers: () => <Section of="The layers of a tank," />,
  dam: () => <Section of="The dam at the foot of the front," part="lip" />,
  drainage: () => <Section of="Drainage on the floor, with water in it," part="drainage" />,
  capping: () => <Section of="Capping on the mesh," part="capping" />,
  soil: () => <Section of="Soil, higher at the back," part="soil" />,
  litter: () => <Section of="Litter on the soil," part="litter" />,
  corner: () => (
    <Drawn label="A corner tank from above: two long sides at the walls, a short return at each end, a slanted front">
      <path class={css['glass']} d="M20 10H180V90L100 150H20z" />
      <path class={css['marked']} d="M180 10V90M20 150H100" />
      <text x="184" y="54">
        return
      </text>
      <text x="48" y="165">
        return
      </text>
      <text x="145" y="132">
        front
      </text>
    </Drawn>
  ),
  packs: () => (
    <Drawn label="A bag of 45 litres of which 9 go into the tank: used cost is a fifth of the bag, packs cost the whole bag">
      <path class={css['glass']} d="M20 20H90V140H20z" />
      <path class={css['filled']} d="M20 116H90V140H20z" />
      <text x="96" y="132">
        9 L go in: used cost
      </text>
      <text x="96" y="70">
        45 L bag: packs cost
      </text>
    </Drawn>
  ),
  range: () => (
    <Drawn label="A line from the least to the most, with the likely figure between them">
      <path class={css['marked']} d="M20 80H180M20 66V94M180 66V94" />
      <path class={css['filled']} d="M84 70H92V90H84z" />
      <text x="8" y="114">
        least
      </text>
      <text x="70" y="58">
        likely
      </text>
      <text x="168" y="114">
        most
      </text>
    </Drawn>
  ),
};

export function HelpPicture({ name }: { readonly name: PictureName }) {
  return <figure class={css['picture']}>{pictures[name]()}</figure>;
}

/** The section drawing of the bench; a marked part stands out from the others. */
function Section({ of, part }: { readonly of: string; readonly part?: string }) {
  return (
    <div class={css['section']} data-mark={part}>
      <SectionDrawing figures={tank} scale={scale} of={of} />
    </div>
  );
}

function Drawn({ label, children }: { readonly label: string; readonly children: ComponentChildren }) {
  return (
    <svg class={css['drawn']} viewBox="0 0 230 175" role="img" aria-label={label}>
      {children}
    </svg>
  );
}
