import { ChoiceField } from '#renderer/kit/field.tsx';
import { fieldOf, headingOf } from '#shared-calc/fields/record-fields.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import { unitChoices, usualOf, withChoice, withUnitShown, type WorkshopChoice } from './workshop-fields.ts';
import { Group, type WorkshopParts } from './workshop-group.tsx';

/** The one choice of units, with its exceptions by kind; how days are written, and on what paper. */
export function UnitsPart(parts: WorkshopParts) {
  return (
    <>
      <Group title="Units, dates and paper">
        <Choice {...parts} field="units" hint="what was typed in another unit stays as it was typed" />
        <Choice {...parts} field="dateOrder" hint="12 May and 2027-05-12 are read in any" />
        <Choice {...parts} field="weekStart" />
        <Choice {...parts} field="paper" />
      </Group>
      <Exceptions {...parts} />
    </>
  );
}

interface ChoiceParts extends WorkshopParts {
  readonly field: WorkshopChoice;
  readonly hint?: string;
}

function Choice({ context: { workshop }, api, field, hint }: ChoiceParts) {
  return (
    <ChoiceField
      label={headingOf('workshop', field)}
      value={workshop[field] ?? usualOf(field)}
      options={fieldOf('workshop', field)?.options ?? []}
      choose={(value) => api.doAct('put', { kind: 'workshop', record: withChoice(workshop, field, value) })}
      {...(hint !== undefined && { hint })}
    />
  );
}

function Exceptions({ context: { workshop }, api }: WorkshopParts) {
  const other = workshop.units === 'us' ? { value: 'metric', label: 'metric' } : { value: 'us', label: 'US' };
  return (
    <Group title={headingOf('workshop', 'unitsShown')}>
      {unitChoices.map(({ kind, units }) => (
        <ChoiceField
          key={kind}
          label={capital(kind)}
          value={workshop.unitsShown[kind] ?? ''}
          options={[
            { value: '', label: 'as the choice' },
            other,
            ...units.map((unit) => ({ value: unit, label: unitWords(unit, workshop.currency) })),
          ]}
          choose={(unit) => api.doAct('put', { kind: 'workshop', record: withUnitShown(workshop, kind, unit) })}
        />
      ))}
    </Group>
  );
}
