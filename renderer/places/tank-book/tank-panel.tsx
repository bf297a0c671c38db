import type { BookContext, BookApi } from '#renderer/books/book-api.ts';
import { PriceList } from '#renderer/books/price-list.tsx';
import { SectionDrawing } from '#renderer/drawing/section-drawing.tsx';
import { sectionGeometry } from '#renderer/drawing/section-geometry.ts';
import { figureWords } from '#shared-calc/quantity/figure-words.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { OutsideForm } from './outside-form.tsx';
import type { TankRow } from './tank-rows.ts';
import { floorArea, tankSection } from './tank-section.ts';
import { PanelHead } from '#renderer/kit/side-panel.tsx';
import { FactList } from '#renderer/kit/fact-list.tsx';
import { showsInches } from '#shared-calc/quantity/shown-unit.ts';
import css from './tank-panel.module.css';

interface TankPanelParts {
  readonly row: TankRow;
  readonly context: BookContext;
  readonly api: BookApi;
  /** Takes the keyboard to a cell of the tank. */
  readonly go: (column: string) => void;
}

/** A tank drawn from its own measurements, its outside size, its prices, and the jobs that use it. */
export function TankPanel({ row: { id, tank, pack }, context, api, go }: TankPanelParts) {
  return (
    <>
      <PanelHead
        where={tank.clientsOwn ? "Tank book, the client's own" : 'Tank book'}
        title={tank.label === '' ? id : `${id} ${tank.label}`}
      />
      <TankDrawing tank={tank} inches={showsInches(context.display)} />
      <TankFacts tank={tank} context={context} />
      <section>
        <h3>Enter it by its outside size</h3>
        <OutsideForm key={id} tank={tank} context={context} api={api} go={go} />
      </section>
      <section>
        <h3>Prices</h3>
        <PriceList pack={pack} of={id} context={context} api={api} />
      </section>
    </>
  );
}

/** Room for the drawing in the side panel, px: width without its labels, and height. */
const across = 200;
const up = 190;

function TankDrawing({ tank, inches }: { readonly tank: Tank; readonly inches: boolean }) {
  const figures = { ...tankSection(tank), inches };
  const bounds = sectionGeometry(figures)?.bounds;
  const scale = bounds ? Math.min(across / (bounds.right - bounds.left), up / (bounds.top - bounds.bottom)) : 0.2;
  return (
    <div class={css['drawn']}>
      <SectionDrawing figures={figures} scale={scale} of={tank.id} />
    </div>
  );
}

function TankFacts({ tank, context: { records, display } }: { readonly tank: Tank; readonly context: BookContext }) {
  const area = floorArea(tank);
  const jobs = new Set([...records.size.values()].filter((size) => size.tank === tank.id).map(({ job }) => job));
  return (
    <FactList
      facts={[
        ['Inside floor', area === undefined ? 'not measured' : figureWords(area, 'm2', display)],
        [
          'Used by',
          jobs.size === 0 ? 'no job' : [...jobs].map((job) => `${job} ${records.job.get(job)?.title ?? ''}`).join(', '),
        ],
      ]}
    />
  );
}
