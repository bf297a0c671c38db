import { Checkbox } from '#renderer/kit/checkbox.tsx';
import type { Field } from '#shared-calc/fields/field.ts';
import type { Option } from '#shared-calc/read/read-choice.ts';
import { fieldOf } from '#shared-calc/fields/record-fields.ts';
import { editField } from '#shared-calc/records/edit-field.ts';
import { entryOfField, optionsOf, valueOf } from '#shared-calc/records/field-text.ts';
import type { RecordKind, RecordOf } from '#shared-calc/records/records.ts';
import { withoutUndefined } from '#shared-calc/records/without-undefined.ts';
import { sayFieldFault } from '#shared-calc/words/say-field-fault.ts';
import type { BookContext } from './book-api.ts';
import { ChoiceField, SettledField } from '#renderer/kit/field.tsx';
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
  const field = fieldOf(kind, key);
  if (!field) return null;
  const settle = (text: string) => {
    const to = editField({ kind, record, key, text }, context);
    return to.ok ? put(to.value) : sayFieldFault(to.fault);
  };
  const hint = parts.hint ?? field.help ?? (field.kind === 'day' ? `a day, as ${context.today}` : undefined);
  const options = parts.options ?? optionsOf(field, context.records);
  const beside = withoutUndefined({ hint, of: parts.of });
  const { label = field.heading } = parts;
  return <EntryOf {...{ field, label, context, settle, beside, options }} value={valueOf(record, key)} />;
}

interface EntryParts {
  readonly field: Field;
  readonly label: string;
  readonly value: unknown;
  readonly context: BookContext;
  readonly settle: (text: string) => string | undefined;
  readonly beside: { readonly hint?: string; readonly of?: string };
  readonly options: readonly Option[];
}

function EntryOf({ field, label, value, context, settle, beside, options }: EntryParts) {
  if (field.kind === 'yes no')
    return <Checkbox label={label} on={value === true} turn={(on) => void settle(on ? 'yes' : 'no')} />;
  if (field.kind === 'choice' || field.kind === 'reference')
    return (
      <ChoiceField
        label={label}
        {...beside}
        value={typeof value === 'string' ? value : ''}
        options={field.mayBeEmpty ? [{ value: '', label: field.empty ?? 'not said' }, ...options] : options}
        choose={(word) => void settle(word)}
      />
    );
  return (
    <SettledField
      label={label}
      {...beside}
      unit={unitBeside(field, context.display)}
      figure={isFigure(field)}
      text={entryOfField(field, value, context)}
      settle={settle}
      {...(field.lines && { lines: true })}
      {...(field.longest !== undefined && { longest: field.longest })}
    />
  );
}
