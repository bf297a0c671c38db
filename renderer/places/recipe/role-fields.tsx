import { ChoiceField, SettledField } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { checkLevels } from '#shared-calc/fields/recipe.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { entryOf, given, type LineFields } from './put-fields.ts';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { headingOf } from '#shared-calc/fields/record-fields.ts';

interface FieldParts extends LineFields {
  readonly records: Records;
}

/** Additional fields of a need, a piece of work or a check. */
export function RoleFields(parts: FieldParts) {
  switch (parts.line.role) {
    case 'need':
      return <NeedFields {...parts} />;
    case 'work':
      return <WorkFields {...parts} />;
    case 'check':
      return <CheckFields {...parts} />;
    default:
      return null;
  }
}

function NeedFields({ line, put, records }: FieldParts) {
  const materials = [...records.material.values()].map(({ id, label }) => ({ value: id, label: `${id} ${label}` }));
  const groups = [...records.margin.values()].map(({ id, label }) => ({ value: id, label }));
  return (
    <>
      <PickOne
        {...entryOf('material')}
        value={line.material ?? ''}
        options={[none, { value: 'TANK', label: 'the tank itself' }, ...materials]}
        choose={(material) => put({ material: given(material) })}
      />
      <PickOne
        {...entryOf('group')}
        value={line.group ?? ''}
        options={[none, ...groups]}
        choose={(group) => put({ group: given(group) })}
      />
      <PerJob line={line} put={put} />
    </>
  );
}

function WorkFields({ line, put, records }: FieldParts) {
  const rates = [...records.rate.values()].filter(({ id, per }) => per === 'h' && id !== 'R-overhead');
  return (
    <>
      <SettledField {...entryOf('task')} text={line.task ?? ''} settle={(task) => put({ task: given(task) })} />
      <PickOne
        {...entryOf('who')}
        value={line.who ?? ''}
        options={[{ value: '', label: 'the builder' }, ...rates.map(({ id, label }) => ({ value: id, label }))]}
        choose={(who) => put({ who: given(who) })}
      />
      <PerJob line={line} put={put} />
    </>
  );
}

function PerJob({ line, put }: LineFields) {
  return <Checkbox label={headingOf('line', 'perJob')} on={line.perJob} turn={(perJob) => put({ perJob })} />;
}

function CheckFields({ line, put }: FieldParts) {
  return (
    <>
      <ChoiceField
        {...entryOf('level')}
        value={line.level ?? 'watch'}
        options={levels}
        choose={(word) => put({ level: checkLevels.find((level) => level === word) })}
      />
      <SettledField {...entryOf('says')} text={line.says ?? ''} lines settle={(says) => put({ says: given(says) })} />
      <SettledField
        {...entryOf('decides')}
        text={line.decides ?? ''}
        settle={(decides) => put({ decides: given(decides) })}
      />
    </>
  );
}

const none = { value: '', label: 'not said' };
const levels = checkLevels.map((level) => ({ value: level, label: level }));
