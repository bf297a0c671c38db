import { Button } from '#renderer/kit/button.tsx';
import { Fields, SettledField } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { sizeWords } from '#shared-calc/jobs/job-sheet.ts';
import { MOST_BUILDS, type WantedSize } from '#shared-calc/jobs/read-sizes.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import css from './jobs.module.css';

interface PickTanksParts {
  readonly tanks: readonly Tank[];
  readonly sizes: readonly WantedSize[];
  readonly put: (sizes: readonly WantedSize[]) => void;
}

/** Picks the tanks of a job from the tank book, and how often each is built; the same tank again is built once more. */
export function PickTanks({ tanks, sizes, put }: PickTanksParts) {
  const options = tanks.map(({ id, label }) => ({ value: id, label }));
  const change = (at: number, to: WantedSize | undefined) =>
    put(sizes.flatMap((size, place) => (place === at ? (to ?? []) : size)));
  const add = (tank: string) => put(withOneMore(sizes, tank));
  return (
    <>
      <PickOne label="Add a tank" placeholder="Code or name, such as hexagon" options={options} value="" choose={add} />
      {sizes.length > 0 && (
        <ul class={css['picked']}>
          {sizes.map((size, at) => (
            <li key={at}>
              <span>{nameOf(size, tanks)}</span>
              <Fields look="short">
                <SettledField
                  label="Builds"
                  of={size.tank}
                  figure
                  text={String(size.count)}
                  settle={(text) => settleCount(text, (count) => change(at, { ...size, count }))}
                />
              </Fields>
              <Button look="plain" onClick={() => change(at, undefined)}>
                Remove {size.tank}
              </Button>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function withOneMore(sizes: readonly WantedSize[], tank: string): readonly WantedSize[] {
  const at = sizes.findLastIndex((size) => size.tank === tank && size.recipe === undefined);
  if (at < 0) return [...sizes, { tank, count: 1 }];
  return sizes.map((size, place) => (place === at ? { ...size, count: size.count + 1 } : size));
}

function nameOf(size: WantedSize, tanks: readonly Tank[]): string {
  const label = tanks.find(({ id }) => id === size.tank)?.label ?? 'no longer in the tank book';
  return `${sizeWords({ ...size, count: 1 })} ${label}`;
}

function settleCount(text: string, put: (count: number) => void): string | undefined {
  const count = Number(text);
  if (!Number.isInteger(count) || count < 1 || count > MOST_BUILDS)
    return `Write a whole number from 1 to ${MOST_BUILDS}.`;
  put(count);
  return undefined;
}
