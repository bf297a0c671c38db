/** The tables of what the house knows, as in the first release. */
export const firstHouseTables = `
CREATE TABLE workshop (
  "id" TEXT PRIMARY KEY NOT NULL,
  "name" TEXT NOT NULL,
  "place" TEXT NOT NULL,
  "letterhead" TEXT NOT NULL,
  "terms" TEXT NOT NULL,
  "payment" TEXT NOT NULL,
  "currency" TEXT NOT NULL,
  "coin_decimals" INTEGER NOT NULL,
  "altitude_m" REAL NOT NULL,
  "units_shown" TEXT NOT NULL CHECK (json_valid("units_shown")),
  "decimal_comma" INTEGER NOT NULL CHECK ("decimal_comma" IN (0, 1)),
  "old_price_days" INTEGER NOT NULL,
  "open_weekdays" TEXT NOT NULL CHECK (json_valid("open_weekdays")),
  "deposit_share" REAL NOT NULL,
  "deposit_step_coins" INTEGER NOT NULL,
  "quote_valid_days" INTEGER NOT NULL,
  "contingency_share" REAL NOT NULL,
  "warranty_share" REAL NOT NULL,
  "plant_loss_share" REAL NOT NULL,
  "discount_share" REAL NOT NULL,
  "price_step_coins" INTEGER NOT NULL,
  "pressure_kpa" REAL NOT NULL
) STRICT;

CREATE TABLE supplier (
  "id" TEXT PRIMARY KEY NOT NULL,
  "name" TEXT NOT NULL,
  "sells" TEXT NOT NULL,
  "lead_days" INTEGER NOT NULL,
  "tank_lead_days" INTEGER,
  "carriage_coins" INTEGER NOT NULL,
  "free_from_coins" INTEGER,
  "minimum_coins" INTEGER,
  "delivery_weekdays" TEXT CHECK (json_valid("delivery_weekdays")),
  "note" TEXT NOT NULL
) STRICT;

CREATE TABLE tank (
  "id" TEXT PRIMARY KEY NOT NULL,
  "label" TEXT NOT NULL,
  "shape" TEXT NOT NULL,
  "inside_length_mm" REAL,
  "inside_depth_mm" REAL,
  "inside_height_mm" REAL,
  "front_bow_mm" REAL,
  "side_return_mm" REAL,
  "dam_height_mm" REAL,
  "front_vent_mm" REAL,
  "glass_mm" REAL,
  "base_glass_mm" REAL,
  "supplier" TEXT REFERENCES supplier DEFERRABLE INITIALLY DEFERRED,
  "clients_own" INTEGER NOT NULL CHECK ("clients_own" IN (0, 1)),
  "note" TEXT NOT NULL
) STRICT;
CREATE INDEX tank_by_supplier ON tank ("supplier");

CREATE TABLE material (
  "id" TEXT PRIMARY KEY NOT NULL,
  "label" TEXT NOT NULL,
  "unit" TEXT NOT NULL,
  "supplier" TEXT REFERENCES supplier DEFERRABLE INITIALLY DEFERRED,
  "sale" TEXT NOT NULL,
  "keeps" INTEGER NOT NULL CHECK ("keeps" IN (0, 1)),
  "lead_days" INTEGER,
  "note" TEXT NOT NULL
) STRICT;
CREATE INDEX material_by_supplier ON material ("supplier");

CREATE TABLE pack (
  "id" TEXT PRIMARY KEY NOT NULL,
  "material" TEXT NOT NULL,
  "amount" REAL NOT NULL
) STRICT;

CREATE TABLE pack_price (
  "id" TEXT PRIMARY KEY NOT NULL,
  "pack" TEXT NOT NULL REFERENCES pack DEFERRABLE INITIALLY DEFERRED,
  "from" TEXT NOT NULL,
  "price_coins" INTEGER NOT NULL
) STRICT;
CREATE INDEX pack_price_by_pack ON pack_price ("pack");

CREATE TABLE plant (
  "id" TEXT PRIMARY KEY NOT NULL,
  "name" TEXT NOT NULL,
  "class" TEXT NOT NULL,
  "width_now_cm" REAL NOT NULL,
  "width_later_cm" REAL NOT NULL,
  "light_low" REAL NOT NULL,
  "light_high" REAL NOT NULL,
  "price_coins" INTEGER NOT NULL,
  "dry" INTEGER NOT NULL CHECK ("dry" IN (0, 1)),
  "harm" TEXT NOT NULL,
  "least_floor_m2" REAL NOT NULL,
  "note" TEXT NOT NULL
) STRICT;

CREATE TABLE culture_kind (
  "id" TEXT PRIMARY KEY NOT NULL,
  "label" TEXT NOT NULL,
  "breeding" TEXT NOT NULL,
  "rate_per_day" REAL,
  "tub_l" REAL NOT NULL,
  "capacity" INTEGER NOT NULL,
  "harvest_share" REAL NOT NULL,
  "harvest_every_days" INTEGER NOT NULL,
  "yield" INTEGER NOT NULL,
  "first_harvest_days" INTEGER NOT NULL,
  "productive_days" INTEGER,
  "lowest_c" REAL NOT NULL,
  "highest_c" REAL NOT NULL,
  "founders" INTEGER NOT NULL,
  "founders_new_line" INTEGER NOT NULL,
  "note" TEXT NOT NULL
) STRICT;

CREATE TABLE rate (
  "id" TEXT PRIMARY KEY NOT NULL,
  "label" TEXT NOT NULL,
  "coins" INTEGER NOT NULL,
  "per" TEXT NOT NULL
) STRICT;

CREATE TABLE tax_class (
  "id" TEXT PRIMARY KEY NOT NULL,
  "label" TEXT NOT NULL,
  "share" REAL NOT NULL
) STRICT;

CREATE TABLE margin (
  "id" TEXT PRIMARY KEY NOT NULL,
  "label" TEXT NOT NULL,
  "share" REAL NOT NULL,
  "tax_class" TEXT NOT NULL REFERENCES tax_class DEFERRABLE INITIALLY DEFERRED,
  "order" INTEGER NOT NULL
) STRICT;
CREATE INDEX margin_by_tax_class ON margin ("tax_class");

CREATE TABLE closed_day (
  "id" TEXT PRIMARY KEY NOT NULL,
  "from" TEXT NOT NULL,
  "to" TEXT NOT NULL,
  "label" TEXT NOT NULL
) STRICT;
`;
