import { ChoiceField, SettledField } from '#renderer/kit/field.tsx';
import { lineRoles } from '#shared-calc/fields/recipe.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { given, type LineFields } from './put-fields.ts';
import { Checkbox } from '#renderer/kit/checkbox.tsx';

interface NameParts extends LineFields {
  readonly rename: (name: string) => string | undefined;
}

/** How the line is called, in rules and in words, and where it stands. */
export function NameFields({ line, put, rename }: NameParts) {
  const settleSection = (text: string) => {
    const section = given(text);
    return section === undefined ? 'A line stands in a section.' : put({ section });
  };
  return (
    <>
      <SettledField
        label="Name in rules"
        text={line.name}
        settle={rename}
        hint="Renamed through every rule that uses it."
        longest={60}
      />
      <SettledField label="Name in words" text={line.label ?? ''} settle={(text) => put({ label: given(text) })} />
      <SettledField label="Section" text={line.section} settle={settleSection} />
    </>
  );
}

/** What the line is, and in what unit. */
export function KindFields({ line, put }: LineFields) {
  return (
    <>
      <ChoiceField
        label="What it is"
        value={line.role}
        options={roles}
        choose={(word) => put({ role: lineRoles.find((role) => role === word) ?? line.role })}
      />
      <SettledField
        label="Unit"
        text={line.unit}
        settle={(unit) => put({ unit: unit.trim() })}
        hint="mm, m2, L, kg, g, %, each, min, degC, number, money; choice and yes_no for words"
      />
      {line.unit === 'choice' && (
        <SettledField
          label="Choices"
          text={(line.options ?? []).join(', ')}
          settle={(text) => put({ options: wordsIn(text) })}
        />
      )}
    </>
  );
}

/** What is said beside the line, and whether it stays out. */
export function WordFields({ line, put }: LineFields) {
  return (
    <>
      <SettledField label="Note" text={line.note} lines settle={(note) => put({ note })} />
      <SettledField label="Caution" text={line.caution ?? ''} lines settle={(text) => put({ caution: given(text) })} />
      <Checkbox label="shown first" on={line.shownFirst} turn={(shownFirst) => put({ shownFirst })} />
      <Checkbox label="set in under the line before" on={line.inset} turn={(inset) => put({ inset })} />
    </>
  );
}

const roleWords: Readonly<Record<Line['role'], string>> = {
  tank: 'supplied by the tank',
  given: 'a figure of the house',
  worked: 'worked by a rule',
  need: 'a need of a material',
  work: 'minutes of work',
  check: 'a check',
};

const roles = lineRoles.map((role) => ({ value: role, label: roleWords[role] }));

function wordsIn(text: string): string[] {
  return text
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '');
}
