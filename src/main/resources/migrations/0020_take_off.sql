-- What a quantity is built from, where a price was got, who was thanked; what timber is and what it is kept for.
ALTER TABLE materials ADD COLUMN "dimensions" TEXT CHECK (length("dimensions") BETWEEN 1 AND 600);
ALTER TABLE materials ADD COLUMN "price_from" TEXT NOT NULL DEFAULT '' CHECK (length("price_from") <= 200);
ALTER TABLE materials ADD COLUMN "price_on" TEXT CHECK ("price_on" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]');
ALTER TABLE materials ADD COLUMN "thanked" TEXT CHECK ("thanked" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]');
ALTER TABLE stock ADD COLUMN "moisture" TEXT CHECK ("moisture" IN ('wet', 'dry'));
ALTER TABLE stock ADD COLUMN "meant_for" TEXT NOT NULL DEFAULT '' CHECK (length("meant_for") <= 200);
ALTER TABLE stock ADD COLUMN "thanked" TEXT CHECK ("thanked" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]');
