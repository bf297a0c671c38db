import { z } from 'zod';
import { workshop as workshopFields } from '#shared-calc/fields/workshop.ts';
import { recordKinds } from '#shared-calc/records/records.ts';
import { ok } from '#shared-calc/result.ts';
import { act } from './act.ts';
import { recordChanged, withFields } from './record-changes.ts';

const { shape } = recordKinds.workshop;
const WriteWorkshop = z.strictObject({
  fields: recordKinds.workshop
    .omit({ id: true, coinDecimals: true })
    .extend({
      electricityPerKwh: shape.electricityPerKwh.nullable(),
      waterPerL: shape.waterPerL.nullable(),
    })
    .partial(),
});

export type WorkshopFields = z.infer<typeof WriteWorkshop>['fields'];

export const writeWorkshop = act<z.infer<typeof WriteWorkshop>>({
  name: 'writeWorkshop',
  says: 'Rewrites what holds for the whole house: letterhead, money, days, units; null takes a figure away.',
  input: WriteWorkshop,
  run: ({ workshop }, { fields }) => {
    const headings = new Map(Object.entries(workshopFields).map(([key, { heading }]) => [key, heading.toLowerCase()]));
    const said = Object.keys(fields).map((key) => headings.get(key) ?? key);
    const label = `${said.join(', ')} of the workshop`;
    return ok(recordChanged(label, 'workshop', { from: workshop, to: withFields(workshop, fields) }));
  },
});
