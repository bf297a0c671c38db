import { useState } from 'preact/hooks';
import { contextNow } from '#renderer/books/book-api.ts';
import { ChoiceField, TextField, Fields } from '#renderer/kit/field.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { calledOf, headingOf } from '#shared-calc/fields/record-fields.ts';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import type { Option } from '#shared-calc/read/read-choice.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { jobOptions } from './job-options.ts';
import { asksOf, putInTyped, type PutInWishes } from './asked-entry.ts';

interface SheetParts {
  readonly api: JobApi;
  readonly material: string | undefined;
  readonly close: () => void;
}

const fields = ['bestBefore', 'quarantineUntil', 'note'] as const;

/** Adds an entry to the Store by hand. */
export function PutInDialog({ api, material, close }: SheetParts) {
  const { records, display, today } = contextNow(api);
  const [wishes, setWishes] = useState(asksOf(material ?? storedGoods(records)[0]?.value ?? ''));
  const [wrong, setWrong] = useState<string>();
  const put = () => {
    const typed = putInTyped(records, wishes, { display, today });
    const refused = typed.ok ? api.doAct('putIn', typed.value) : typed.fault;
    setWrong(refused);
    if (refused !== undefined) return false;
    location.hash = writeRoute('store', wishes.material);
    return true;
  };
  return (
    <AskDialog title="Put into the Store" does="Put it in" run={put} wrong={wrong} close={close}>
      {(enter) => (
        <Wishes wishes={wishes} records={records} change={(some) => setWishes({ ...wishes, ...some })} enter={enter} />
      )}
    </AskDialog>
  );
}

interface WishesParts {
  readonly wishes: PutInWishes;
  readonly records: Records;
  readonly change: (some: Partial<PutInWishes>) => void;
  readonly enter: () => void;
}

function Wishes({ wishes, records, change, enter }: WishesParts) {
  const unit = unitOfGoods(wishes.material, records) ?? 'each';
  return (
    <Fields look="wide">
      <ChoiceField
        label={headingOf('stockEntry', 'material')}
        value={wishes.material}
        options={storedGoods(records)}
        choose={(id) => change({ material: id })}
      />
      <TextField
        label={calledOf('stockEntry', 'amount')}
        unit={unit === 'each' ? '' : unit}
        figure
        text={wishes.amount}
        typing={(amount) => change({ amount })}
        enter={enter}
      />
      <Checkbox label={headingOf('stockEntry', 'sealed')} on={wishes.sealed} turn={(sealed) => change({ sealed })} />
      <ChoiceField
        label={headingOf('stockEntry', 'reservedFor')}
        value={wishes.job}
        options={jobOptions(records, 'nobody')}
        choose={(job) => change({ job })}
      />
      {fields.map((key) => (
        <TextField
          key={key}
          label={headingOf('stockEntry', key)}
          text={wishes[key]}
          typing={(text) => change({ [key]: text })}
          enter={enter}
        />
      ))}
    </Fields>
  );
}

/** What the Store can hold: all materials except those cut to size, and tanks. */
function storedGoods({ material, tank }: Pick<Records, 'material' | 'tank'>): readonly Option[] {
  const materials = [...material.values()].filter(({ sale }) => sale !== 'cut');
  return [...materials, ...tank.values()].map(({ id, label }) => ({ value: id, label: `${id} ${label}` }));
}
