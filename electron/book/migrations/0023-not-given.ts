import type { Migration } from './migration.ts';

/** What was 0 or invented where a workshop had not said it: each may be empty now. Prices may be guesses. */
export const notGiven: Migration = {
  version: 23,
  name: 'figures not given',
  up: (db) => {
    for (const [table, columns] of Object.entries(mayBeEmpty)) {
      for (const column of columns) db.exec(`ALTER TABLE ${table} ALTER COLUMN "${column}" DROP NOT NULL`);
    }
    db.exec('ALTER TABLE pack_price ADD COLUMN "guess" INTEGER CHECK ("guess" IN (0, 1))');
  },
};

const mayBeEmpty = {
  rate: ['coins'],
  margin: ['share'],
  tax_class: ['share'],
  workshop: [
    'altitude_m',
    'deposit_share',
    'deposit_step_coins',
    'quote_valid_days',
    'contingency_share',
    'warranty_share',
    'plant_loss_share',
    'pressure_kpa',
  ],
};
