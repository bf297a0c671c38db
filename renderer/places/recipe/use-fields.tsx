import { ChoiceField, SettledField } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import type { BookStore } from '#renderer/store/book-store.ts';
import { usesFor } from '#shared-calc/acts/move-use.ts';
import {
  checkParts,
  cureNames,
  isUse,
  linePlaces,
  lineTags,
  useOf,
  type CureName,
  type UseName,
} from '#shared-calc/fields/uses.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { entryOf, type LineFields } from './put-fields.ts';
import { MutedLine } from '#renderer/kit/muted.tsx';

interface UseParts extends LineFields {
  readonly book: BookStore;
}

/** What the program itself reads a line for. Selecting a use for another line moves it there. */
export function UseFields({ line, put, book }: UseParts) {
  const records = book.records.value;
  const lines = linesOf(records, line.recipe);
  const choose = (use: string) => {
    void book.doAct('moveUse', { line: line.id, use: isUse(use) ? use : undefined });
  };
  return (
    <>
      <PickOne
        coded={false}
        {...entryOf('use')}
        value={line.use ?? ''}
        options={[nothing, ...usesFor(line).map((use) => ({ value: use, label: useLabel(use, line, lines) }))]}
        choose={choose}
      />
      {(line.as ?? []).map((tag) => (
        <MutedLine key={tag}>{lineTags[tag]}.</MutedLine>
      ))}
      {line.role === 'need' && (
        <ChoiceField
          {...entryOf('place')}
          value={line.place ?? ''}
          options={[{ value: '', label: 'with most of its section' }, ...places]}
          choose={(word) => put({ place: linePlaces.find((place) => place === word) ?? null })}
        />
      )}
      {line.role === 'check' && <CheckUse line={line} put={put} />}
    </>
  );
}

/** Names the line that has a use now, because it loses it. */
function useLabel(use: UseName, line: Line, lines: readonly Line[]): string {
  const holder = lines.find((each) => each.use === use && each.id !== line.id);
  return holder ? `${useOf(use).what} (now ${lineLabel(holder)})` : useOf(use).what;
}

function CheckUse({ line, put }: LineFields) {
  const settle = (text: string) => {
    const cures = readCures(text);
    return typeof cures === 'string' ? cures : put({ cures: cures.length === 0 ? null : cures });
  };
  return (
    <>
      <ChoiceField
        {...entryOf('part')}
        value={line.part ?? 'other'}
        options={checkParts.map((part) => ({ value: part, label: part }))}
        choose={(word) => put({ part: checkParts.find((part) => part === word) })}
      />
      <SettledField {...entryOf('cures')} text={(line.cures ?? []).join(', ')} settle={settle} />
    </>
  );
}

function readCures(text: string): CureName[] | string {
  const words = text
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '');
  const cures = words.flatMap((word) => cureNames.find((cure) => cure === word) ?? []);
  const unknown = words.find((word) => !cureNames.some((cure) => cure === word));
  return unknown === undefined ? cures : `There is no cure called ${unknown}.`;
}

const nothing = { value: '', label: 'nothing' };
const places = linePlaces.map((place) => ({ value: place, label: place }));
