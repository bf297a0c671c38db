import { actNames } from '#shared-calc/words/act-names.ts';
import { useState } from 'preact/hooks';
import { nextCode } from '#shared-calc/records/next-code.ts';
import { Fields } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Dialog } from '#renderer/kit/dialog.tsx';
import type { PageStore } from '#renderer/store/page-store.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { tankSizeWords } from '#shared-calc/recipe/size-words.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { NewTankForm } from './new-tank-form.tsx';
import css from './bench-place.module.css';
import { Muted } from '#renderer/kit/muted.tsx';
import { SearchField } from '#renderer/kit/search-field.tsx';

/** The tanks of the tank book, those not on the bench first, and a form for a new tank. */
export function TakeSize({ store }: { readonly store: PageStore }) {
  const [words, setWords] = useState('');
  const [recipe, setRecipe] = useState<string>();
  const records = store.book.records.value;
  const display = store.bench.display.value;
  const here = new Set(store.bench.opened.value?.worked.source().columns.map((column) => column.tank.id));
  const tanks = tanksToTake([...records.tank.values()], here, words);
  return (
    <Dialog title={actNames.takeSize} wide close={() => (store.dialog.value = undefined)}>
      {(leave) => {
        const taking = (take: () => string | undefined) => takeAndShow(store, take, leave);
        const takeTank = (tank: Tank) => taking(() => store.bench.acts.takeTank(tank.id, recipe));
        const takeFirst = () => tanks[0] && takeTank(tanks[0]);
        return (
          <div class={css['takeSize']}>
            <div class={css['find']}>
              <SearchField
                label="Find a tank by its name or size"
                placeholder="Name or size, such as 900"
                text={words}
                typing={setWords}
                enter={takeFirst}
              />
            </div>
            <RecipeChoice store={store} recipe={recipe} choose={setRecipe} />
            <TankList tanks={tanks} here={here} display={display} take={takeTank} />
            <NewTankForm
              code={nextCode('T', records.tank.keys())}
              context={{ records, workshop: workshopOf(records), display }}
              take={(tank, priceCoins) => taking(() => store.bench.acts.takeNewTank(tank, { priceCoins, recipe }))}
            />
            <Buttons>
              <Button onClick={leave}>{actNames.cancel}</Button>
            </Buttons>
          </div>
        );
      }}
    </Dialog>
  );
}

interface RecipeParts {
  readonly store: PageStore;
  readonly recipe: string | undefined;
  readonly choose: (recipe: string) => void;
}

/** The recipe that the size is built by; at first that of the job. */
function RecipeChoice({ store: { book, bench }, recipe, choose }: RecipeParts) {
  const usual = bench.opened.value?.worked.source().recipe.id ?? '';
  const options = [...book.records.value.recipe.values()].map(({ id, title }) => ({
    value: id,
    label: id === usual ? `${id} ${title}, as the job` : `${id} ${title}`,
  }));
  return (
    <Fields>
      <PickOne label="Built by recipe" value={recipe ?? usual} options={options} choose={choose} />
    </Fields>
  );
}

/** Adds a size, or returns why not; closes the dialog after a success. */
function takeAndShow(store: PageStore, take: () => string | undefined, leave: () => void): string | undefined {
  const before = columnsOf(store);
  const refused = take();
  if (refused !== undefined) return refused;
  leave();
  showNew(store, before);
  return undefined;
}

function columnsOf({ bench }: PageStore): readonly string[] {
  return bench.view.peek().columns.map(({ key }) => key);
}

/**
 * Selects a cell of the new size, at the selected line, so that its strip scrolls into view. The focus stays on the
 * button that opened the dialog, for adding the next size.
 */
function showNew(store: PageStore, before: readonly string[]): void {
  const { bench, strips } = store;
  const column = columnsOf(store).find((key) => !before.includes(key));
  const row = bench.chosen.peek()?.row ?? bench.view.peek().rows.find(({ kind }) => kind === 'line')?.id;
  if (column === undefined || row === undefined) return;
  requestAnimationFrame(() => strips.current?.bring({ row, column }));
}

interface ListParts {
  readonly tanks: readonly Tank[];
  /** Codes of the tanks on the bench. */
  readonly here: ReadonlySet<string>;
  readonly display: Display;
  readonly take: (tank: Tank) => void;
}

function TankList({ tanks, here, display, take }: ListParts) {
  return (
    <ul class={css['tanks']} aria-label="Tanks of the tank book">
      {tanks.map((tank) => (
        <li key={tank.id}>
          <Button look="bare" onClick={() => take(tank)}>
            <b>{tank.id}</b> <span>{tank.label}</span> <Muted>{sizeOf(tank, display)}</Muted>
            <Muted>{here.has(tank.id) ? 'on the bench' : tank.clientsOwn ? "the client's own" : ''}</Muted>
          </Button>
        </li>
      ))}
      {tanks.length === 0 && (
        <li>
          <Muted>No tank is called so. Enter it below.</Muted>
        </li>
      )}
    </ul>
  );
}

/** Tanks that match the words, those not on the bench first. */
function tanksToTake(tanks: readonly Tank[], here: ReadonlySet<string>, words: string): readonly Tank[] {
  const sought = words
    .trim()
    .toLowerCase()
    .split(/[\s×x]+/)
    .filter((word) => word !== '');
  const fits = (tank: Tank) => {
    const text = [tank.id, tank.label, tank.shape, ...sizesMm(tank)].join(' ').toLowerCase();
    return sought.every((word) => text.includes(word));
  };
  const order = (tank: Tank) => Number(here.has(tank.id));
  return tanks.filter(fits).toSorted((a, b) => order(a) - order(b) || (a.id < b.id ? -1 : 1));
}

function sizesMm({ insideLengthMm, insideDepthMm, insideHeightMm }: Tank): readonly number[] {
  return [insideLengthMm, insideDepthMm, insideHeightMm].filter((mm) => mm !== undefined);
}

function sizeOf(tank: Tank, display: Display): string {
  const words = tankSizeWords(tank, display);
  return words.startsWith(tank.shape) ? words : `${tank.shape}, ${words}`;
}
