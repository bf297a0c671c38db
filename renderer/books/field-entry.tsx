import { Checkbox } from '#renderer/kit/checkbox.tsx';
import type { Field } from '#shared-calc/fields/field.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import type { Option } from '#shared-calc/read/read-choice.ts';
import { fieldOf } from '#shared-calc/fields/record-fields.ts';
import { editField } from '#shared-calc/records/edit-field.ts';
import type { AsTyped } from '#shared-calc/quantity/as-typed.ts';
import { entryOfField, optionsOf, showField, valueOf } from '#shared-calc/records/field-text.ts';
import { fieldAsTyped, typedIn } from '#shared-calc/records/typed-figure.ts';
import type { RecordKind, RecordOf } from '#shared-calc/records/records.ts';
import { withoutUndefined } from '#shared-calc/records/without-undefined.ts';
import { sayFieldFault } from '#shared-calc/words/say-field-fault.ts';
import type { BookContext } from './book-api.ts';
import { ChoiceField, SettledField } from '#renderer/kit/field.tsx';
import { PickField } from '#renderer/kit/pick-field.tsx';
import { isFigure, unitBeside } from './record-columns.ts';

export interface FieldEntryParts<K extends RecordKind> {
  readonly kind: K;
  readonly record: RecordOf<K>;
  readonly field: string & keyof RecordOf<K>;
  readonly context: BookContext;
  /** Receives the record with the new field value, or returns why not. */
  readonly put: (record: RecordOf<K>) => string | undefined;
  /** Replaces the field's own help if the view has more to say. */
  readonly hint?: string;
  /** Replaces the records that the field can refer to, if the view offers fewer or in another order. */
  readonly options?: readonly Option[];
  /** Replaces the field's own name, where its record is what is asked. */
  readonly label?: string;
  /** What the field belongs to, for screen readers, where several of one name stand together. */
  readonly of?: string;
}

/** An input for one field of a record, built from the field's own description. */
export function FieldEntry<K extends RecordKind>(parts: FieldEntryParts<K>) {
  const { kind, record, field: key, context, put } = parts;
  const field = namedField(fieldOf(kind, key), parts.label);
  if (!field) return null;
  const settle = (text: string) => {
    const to = editField({ kind, record, key, text }, context);
    return to.ok ? put(to.value) : sayFieldFault(to.fault);
  };
  const hint =
    parts.hint ??
    field.help ??
    (field.kind === 'day' ? `a day, as ${writeDay(context.today, context.display.dateOrder)}` : undefined);
  const options = parts.options ?? optionsOf(field, context.records);
  const value = valueOf(record, key);
  const asTyped = fieldAsTyped(field, typedIn(kind, record, key, value), context);
  const inUnit = asTyped?.whole
    ? `${showField(field, value, context)} ${unitBeside(field, context.display)}`
    : undefined;
  const hints = [inUnit, hint].filter((each) => each !== undefined).join('; ');
  const beside = withoutUndefined({ hint: hints === '' ? undefined : hints, of: parts.of });
  return <EntryOf {...{ field, context, settle, beside, options, value }} {...(asTyped && { asTyped })} />;
}

function namedField(field: Field | undefined, label: string | undefined): Field | undefined {
  return field && label !== undefined ? { ...field, heading: label } : field;
}

interface EntryParts {
  readonly field: Field;
  readonly value: unknown;
  readonly context: BookContext;
  readonly settle: (text: string) => string | undefined;
  readonly beside: { readonly hint?: string; readonly of?: string };
  readonly options: readonly Option[];
  /** The figure as it was typed. */
  readonly asTyped?: AsTyped;
}

function EntryOf({ field, value, context, settle, beside, options, asTyped }: EntryParts) {
  const label = field.heading;
  if (field.kind === 'yes no')
    return <Checkbox label={label} on={value === true} turn={(on) => void settle(on ? 'yes' : 'no')} />;
  const withEmpty = field.mayBeEmpty ? [{ value: '', label: field.empty ?? 'not said' }, ...options] : options;
  const word = typeof value === 'string' ? value : '';
  if (field.kind === 'reference')
    return (
      <PickField
        label={label}
        {...beside}
        options={withEmpty}
        text={withEmpty.find((option) => option.value === word)?.label ?? word}
        settle={settle}
      />
    );
  if (field.kind === 'choice')
    return (
      <ChoiceField
        label={label}
        {...beside}
        value={word}
        options={withEmpty}
        choose={(chosen) => void settle(chosen)}
      />
    );
  return <WrittenEntry {...{ field, value, context, settle, beside }} {...(asTyped && { asTyped })} />;
}

/** A field that is written; a figure that was typed in another unit stands as it was typed. */
function WrittenEntry({ field, value, context, settle, beside, asTyped }: Omit<EntryParts, 'options'>) {
  return (
    <SettledField
      label={field.heading}
      {...beside}
      unit={asTyped?.whole ? '' : unitBeside(field, context.display)}
      figure={isFigure(field)}
      text={asTyped?.figure ?? entryOfField(field, value, context)}
      settle={settle}
      {...(field.kind === 'day' && { days: context })}
      {...(field.lines && { lines: true })}
      {...(field.longest !== undefined && { longest: field.longest })}
    />
  );
}
