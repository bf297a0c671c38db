import { ChoiceField, SettledField } from '#renderer/kit/field.tsx';
import { PickField } from '#renderer/kit/pick-field.tsx';
import { lineRoles } from '#shared-calc/fields/recipe.ts';
import { noSource, sourceMarks } from '#shared-calc/fields/source.ts';
import { markWords } from '#shared-calc/bench/source-words.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { entryOf, given, type LineFields } from './put-fields.ts';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { headingOf, recordFields } from '#shared-calc/fields/record-fields.ts';

interface OfLines {
  /** All lines of the recipe: what stands in them is offered. */
  readonly lines: readonly Line[];
}

interface NameParts extends LineFields, OfLines {
  readonly rename: (name: string) => string | undefined;
}

/** The line's name in rules, its label, and its position. */
export function NameFields({ line, put, rename, lines }: NameParts) {
  const settleSection = (text: string) => {
    const section = given(text);
    return section === null ? 'A line stands in a section.' : put({ section });
  };
  return (
    <>
      <SettledField {...entryOf('name')} text={line.name} settle={rename} longest={60} />
      <SettledField {...entryOf('label')} text={line.label ?? ''} settle={(text) => put({ label: given(text) })} />
      <PickField {...entryOf('section')} {...sameAs(lines, 'section')} text={line.section} settle={settleSection} />
    </>
  );
}

/** The line's kind and unit. */
export function KindFields({ line, put, lines }: LineFields & OfLines) {
  return (
    <>
      <ChoiceField
        {...entryOf('role')}
        value={line.role}
        options={roles}
        choose={(word) => put({ role: lineRoles.find((role) => role === word) ?? line.role })}
      />
      <PickField
        {...entryOf('unit')}
        {...sameAs(lines, 'unit')}
        text={line.unit}
        settle={(unit) => put({ unit: unit.trim() })}
      />
      {line.unit === 'choice' && (
        <SettledField
          {...entryOf('options')}
          text={(line.options ?? []).join(', ')}
          settle={(text) => put({ options: wordsIn(text) })}
        />
      )}
    </>
  );
}

/** Where the line's figure, or the figures in its rule, come from. */
export function SourceFields({ line, put }: LineFields) {
  return (
    <>
      <ChoiceField
        {...entryOf('source')}
        value={line.source ?? ''}
        options={[{ value: '', label: noSource }, ...marks]}
        choose={(word) => put({ source: sourceMarks.find((mark) => mark === word) ?? null })}
      />
      <SettledField
        {...entryOf('sourceNote')}
        text={line.sourceNote ?? ''}
        settle={(text) => put({ sourceNote: given(text) })}
      />
    </>
  );
}

/** The note on the line, and whether it stays visible. */
export function WordFields({ line, put }: LineFields) {
  return (
    <>
      <SettledField {...entryOf('note')} text={line.note} lines settle={(note) => put({ note })} />
      <SettledField
        {...entryOf('caution')}
        text={line.caution ?? ''}
        lines
        settle={(text) => put({ caution: given(text) })}
      />
      <Checkbox
        label={headingOf('line', 'shownFirst')}
        on={line.shownFirst}
        turn={(shownFirst) => put({ shownFirst })}
      />
      <Checkbox label={headingOf('line', 'inset')} on={line.inset} turn={(inset) => put({ inset })} />
    </>
  );
}

/** What the other lines have; any other text may be written. */
function sameAs(lines: readonly Line[], key: 'section' | 'unit') {
  const words = [...new Set(lines.map((line) => line[key]))];
  return { options: words.map((word) => ({ value: word, label: word })), free: true };
}

const marks = sourceMarks.map((value) => ({ value, label: markWords(value) }));
const roles = recordFields.line.role.options;

function wordsIn(text: string): string[] {
  return text
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '');
}
