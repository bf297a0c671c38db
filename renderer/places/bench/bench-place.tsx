import { actNames } from '#shared-calc/words/act-names.ts';
import { benchList } from '#renderer/bench/bench-list.ts';
import type { BoxPlace } from '#renderer/bench/view-model.ts';
import type { BenchController } from '#renderer/bench/bench-controller.ts';
import { contextNow } from '#renderer/books/book-api.ts';
import { BenchStrips } from '#renderer/bench/bench-place.tsx';
import { SoldAs } from '#renderer/books/sold-as.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Dialog } from '#renderer/kit/dialog.tsx';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { differenceWords } from '#shared-calc/papers/house-said.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { FindView, PlaceView } from '#renderer/frame/page-view.ts';
import { places } from '#shared-calc/contract/places.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { FollowedPanel } from '#renderer/panel/followed-panel.tsx';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { memo } from '#shared-calc/records/memo.ts';
import { guessesAsMissing } from '#shared-calc/buy/missing.ts';
import { countMissing } from '#shared-calc/buy/say-missing.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import { tankFigures } from '#shared-calc/recipe/tank-figures.ts';
import type { WorkedBench } from '#renderer/store/worked-bench.ts';
import type { PageStore } from '#renderer/store/page-store.ts';
import { downloadCsv } from '#renderer/files/download-csv.ts';
import { benchCsv } from '#shared-calc/papers/bench-csv.ts';
import { CompareSizes } from './compare-sizes.tsx';
import { PriceBySize } from './price-by-size.tsx';
import { TakeSize } from './take-size.tsx';

/** The size bench: a job's sizes side by side, or a quote as it was issued; `#/bench/J01`, `#/bench/Q-0027A`. */
export function benchPlace(store: PageStore): (route: Route) => PlaceView {
  const { bench } = store;
  const optionsMemo = memo<readonly string[]>();
  let shown: Route | undefined;
  let wanted: BoxPlace | undefined;
  /** Selects the box that the link names once the grid is there. */
  const goToWanted = () => {
    const { current: grid } = store.strips;
    if (!grid || !wanted) return;
    if (bench.reveal(wanted.row)) grid.go(wanted);
    wanted = undefined;
  };
  const stand = (grid: BenchController | null) => {
    store.strips.current = grid;
    if (grid && wanted) requestAnimationFrame(goToWanted);
  };
  return (route) => {
    const [asked, row, column] = route.rest;
    if (asked !== undefined) queueMicrotask(() => bench.open(asked));
    if (row !== undefined && column !== undefined && route !== shown) {
      wanted = { row, column };
      queueMicrotask(goToWanted);
    }
    shown = route;
    const opened = bench.opened.value;
    if (!opened) return nothingOpen(store);
    return {
      about: bench.title.value,
      aside: [asideOf(store), soldWords(store)].filter((words) => words !== '').join('; '),
      acts: actsOf(store),
      work: (
        <>
          <BenchStrips key={opened.id} view={bench.view} acts={bench.acts} moved={bench.moved} grid={stand} />
          <OpenDialog store={store} />
        </>
      ),
      sidePanel: <FollowedPanel panel={bench.panel} turn={bench.panelTurn} acts={bench.panelActs} />,
      printed: () => benchList(bench.view.peek(), workshopOf(store.book.records.peek())),
      find: findOn(store, optionsMemo),
    };
  };
}

/** No job is open that has a size. */
function nothingOpen({ book }: PageStore): PlaceView {
  const isNew = book.records.value.size.size === 0;
  return {
    about: '',
    aside: '',
    acts: [],
    work: (
      <EmptyNote>
        The bench works every figure of a job's tanks side by side.{' '}
        {isNew ? (
          <Link href={writeRoute('today')}>Begin with what a first quote needs</Link>
        ) : (
          <Link href={writeRoute('jobs')}>Open a job</Link>
        )}
        .
      </EmptyNote>
    ),
  };
}

function OpenDialog({ store }: { readonly store: PageStore }) {
  const dialog = store.dialog.value;
  if (!dialog) return null;
  if (dialog.is === 'compare') return <CompareSizes store={store} one={dialog.one} />;
  if (dialog.is === 'sold') return <SoldDialog store={store} />;
  return dialog.is === 'take' ? <TakeSize store={store} /> : <PriceBySize store={store} />;
}

function SoldDialog({ store: { book, bench, dialog } }: { readonly store: PageStore }) {
  const context = contextNow(book);
  const job = context.records.job.get(bench.opened.value?.job ?? '');
  if (!job) return null;
  return (
    <Dialog title={`${jobName(job)} as sold`} close={() => (dialog.value = undefined)}>
      {(leave) => (
        <>
          <SoldAs job={job} context={context} api={book} />
          <Buttons>
            <Button onClick={leave}>Close</Button>
          </Buttons>
        </>
      )}
    </Dialog>
  );
}

function asideOf({ bench }: PageStore): string {
  const sizes = bench.sizes.value.length;
  if (sizes === 0) return 'no size yet';
  return sizes === 1 ? 'one size' : `${numbers[sizes] ?? sizes} sizes`;
}

/** A sold job's bench is worked from its quote, and says what is not in it. */
function soldWords({ book, bench }: PageStore): string {
  const derived = book.derived.value;
  const sold = derived.job(bench.opened.value?.job ?? '')?.sold;
  if (!sold) return '';
  return [`as sold in ${sold.quote.id}`, differenceWords(sold.quote.id, sold.differs(), derived)]
    .filter((words) => words !== '')
    .join(', ');
}

const numbers: Readonly<Record<number, string>> = { 2: 'two', 3: 'three', 4: 'four', 5: 'five', 6: 'six' };

function actsOf(store: PageStore): readonly PlaceAct[] {
  const { bench, book, dialog } = store;
  const opened = bench.opened.value;
  if (!opened) return [];
  const { job, worked } = opened;
  const columns = worked.source().columns;
  const save = () => {
    const { lines } = worked.source();
    downloadCsv(`${opened.id} bench`, benchCsv(worked.bench(), lines, bench.display.peek()));
    book.say(`The bench of ${opened.id} is saved as a list.`);
  };
  const several = columns.length > 1;
  const compare: PlaceAct = several
    ? {
        label: actNames.compare,
        hint: 'Two sizes: what differs, and why',
        run: () => (dialog.value = { is: 'compare', one: chosenColumn(store) }),
      }
    : { label: actNames.compare, hint: 'Take a second size first.' };
  const prices: PlaceAct = several
    ? {
        label: actNames.priceBySize,
        hint: 'Price against size, as a curve',
        run: () => (dialog.value = { is: 'prices' }),
      }
    : { label: actNames.priceBySize, hint: 'Take a second size first.' };
  const list: PlaceAct = { label: actNames.saveCsv, hint: 'The bench as a list', run: save };
  const lacks = [...lackAct(worked, job), ...measureAct(worked, job)];
  if (job === undefined) return [compare, prices, list, ...lacks];
  const offered = book.derived.value.job(job)?.sold?.offered.length ?? 0;
  const offers: PlaceAct = {
    label: offered === 1 ? '1 house change' : `${offered} house changes`,
    hint: 'The house has changed since this was sold: take it or leave it',
    run: () => (dialog.value = { is: 'sold' }),
  };
  return [
    compare,
    prices,
    list,
    ...(offered > 0 ? [offers] : []),
    ...lacks,
    { label: actNames.makeQuote, run: () => (location.hash = writeRoute('quotes', job)) },
    { label: actNames.takeSize, main: true, run: bench.acts.takeSize },
  ];
}

/** Leads to the prices that the sizes wait for or guess; nothing while all are there. */
function lackAct({ source, sums, isWorked }: WorkedBench, job: string | undefined): readonly PlaceAct[] {
  const { columns, lines, pricing } = source();
  const isOpen = (material: string) => {
    const goods = pricing.prices.goods.get(material);
    return !goods || goods.fault !== undefined || goods.packs.some(({ guess }) => guess);
  };
  const needed = new Set([...lines.flatMap(({ material }) => material ?? []), ...columns.map(({ tank }) => tank.id)]);
  needed.delete('TANK');
  if (![...needed].some(isOpen)) return [];
  const known = columns.filter(({ key }) => isWorked(key)).map(({ key }) => sums(key));
  const asked = known.flatMap((each) =>
    each.ok ? [...each.value.missing, ...guessesAsMissing(each.value.guesses)] : [],
  );
  const prices = new Map(asked.filter(({ what }) => what === 'price').map((each) => [each.of, each]));
  if (prices.size === 0) return [];
  const run = () => (location.hash = writeRoute('prices', ...(job === undefined ? [] : [job])));
  return [{ label: countMissing([...prices.values()]), hint: 'Give them in one list', run }];
}

/** Leads to the measurements that the sizes wait for; only sizes whose tank or cells lack a figure are looked at. */
function measureAct({ source, sums, isWorked }: WorkedBench, job: string | undefined): readonly PlaceAct[] {
  if (job === undefined) return [];
  const isOpen = ({ tank, locals }: ColumnInput) => [...tankFigures(tank).values(), ...locals.values()].includes('');
  const known = source()
    .columns.filter((column) => isWorked(column.key) && isOpen(column))
    .map(({ key }) => sums(key));
  const missing = known.flatMap((each) => (each.ok ? each.value.missing : []));
  const measures = missing.filter(({ what }) => what === 'measure');
  if (measures.length === 0) return [];
  const run = () => (location.hash = writeRoute('measures', job));
  return [{ label: countMissing(measures), hint: 'Give them in one list', run }];
}

function chosenColumn({ bench }: PageStore): string {
  return bench.chosen.peek()?.column ?? bench.sizes.peek()[0] ?? '';
}

const titles = places.map((each) => each.title);

function findOn({ bench, strips }: PageStore, optionsMemo: ReturnType<typeof memo<readonly string[]>>): FindView {
  const faces = bench.opened.value?.shown.faces();
  const keys = bench.sizes.value;
  return {
    label: 'Find a line, a tank or a place',
    placeholder: 'Find a line',
    options: optionsMemo([faces, keys], () => [
      ...new Set([...(faces?.all ?? []).map((face) => face.label), ...keys, ...titles]),
    ]),
    go: (words) => {
      const named = places.find((each) => each.title.toLowerCase() === words.toLowerCase());
      if (named) location.hash = writeRoute(named.id);
      const found = named ? undefined : bench.findLine(words);
      if (found) strips.current?.go(found);
      return (named ?? found) !== undefined;
    },
  };
}
