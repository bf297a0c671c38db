import type { Migration } from './migration.ts';

/** The need line that stands for a class of plants, by its use, and so the material at the price of the class. */
const classMaterial = `(SELECT line."material" FROM line WHERE line."use" = CASE plant."class"
  WHEN 'ground' THEN 'groundNeed' WHEN 'mid' THEN 'midNeed' WHEN 'feature' THEN 'featureNeed'
  WHEN 'climber' THEN 'climberNeed' ELSE 'epiphyteNeed' END ORDER BY line."recipe" LIMIT 1)`;

const tables = `
ALTER TABLE pack ADD COLUMN "supplier" TEXT REFERENCES supplier DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE pack ADD COLUMN "article" TEXT;
CREATE INDEX pack_by_supplier ON pack ("supplier");
ALTER TABLE line ADD COLUMN "who" TEXT REFERENCES rate DEFERRABLE INITIALLY DEFERRED;
CREATE INDEX line_by_who ON line ("who");
ALTER TABLE quote_line ADD COLUMN "size" TEXT REFERENCES size DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE quote_line ADD COLUMN "supplier" TEXT REFERENCES supplier DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE quote_line ADD COLUMN "lead_days" INTEGER;
CREATE INDEX quote_line_by_size ON quote_line ("size");
CREATE INDEX quote_line_by_supplier ON quote_line ("supplier");
ALTER TABLE pack_choice ADD COLUMN "supplier" TEXT;
`;

/** Each pack is sold by whoever its material or tank is bought from. */
const packSuppliers = `
UPDATE pack SET "supplier" = coalesce(
  (SELECT material."supplier" FROM material WHERE material."id" = pack."material"),
  (SELECT tank."supplier" FROM tank WHERE tank."id" = pack."material"));
`;

/**
 * A plant is bought by the piece, as a tank is, from whom its class is bought. The day of its price was never kept:
 * the first day of its class's price, else of any price. 0 was no price.
 */
const plantPacks = `
UPDATE plant SET "id" = "id" || '-plant' WHERE "id" IN (SELECT "id" FROM material UNION SELECT "id" FROM tank);
CREATE TEMP TABLE plant_pack AS SELECT plant."id" AS plant, "price_coins", ${classMaterial} AS class_material,
  CASE WHEN plant."id" || '-1' IN (SELECT "id" FROM pack) THEN plant."id" || '-plant-1' ELSE plant."id" || '-1' END AS pack
  FROM plant;
INSERT INTO pack ("id", "material", "amount", "supplier")
  SELECT pack, plant, 1, (SELECT material."supplier" FROM material WHERE material."id" = class_material) FROM plant_pack;
INSERT INTO pack_price ("id", "pack", "from", "price_coins")
  SELECT pack || '@start', pack, coalesce(
    (SELECT min(pack_price."from") FROM pack_price JOIN pack AS of_class ON of_class."id" = pack_price."pack"
      WHERE of_class."material" = class_material),
    (SELECT min("from") FROM pack_price), '2000-01-01'), "price_coins"
  FROM plant_pack WHERE "price_coins" > 0;
DROP TABLE plant_pack;
ALTER TABLE plant DROP COLUMN "price_coins";
`;

/** The van is a material: its rate was read by nothing. */
const van = `
DELETE FROM rate WHERE "id" = 'R-van'
  AND NOT EXISTS (SELECT 1 FROM done WHERE done."who" = 'R-van')
  AND NOT EXISTS (SELECT 1 FROM placement WHERE placement."who" = 'R-van');
`;

/** Several suppliers for one material, plants at their own price, and whose hour a line of work is. */
export const offers: Migration = {
  version: 17,
  name: 'offers',
  up: (db) => db.exec([tables, packSuppliers, plantPacks, van].join('\n')),
};
