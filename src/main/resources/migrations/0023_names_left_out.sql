-- A source whose rows name supporters: names and references of its files are not read.
ALTER TABLE bank_sources ADD COLUMN "people" INTEGER NOT NULL DEFAULT 0 CHECK ("people" IN (0, 1));
UPDATE bank_sources SET "people" = 1 WHERE "kind_in" = 'payout' AND ("gross" IS NOT NULL OR "fee" IS NOT NULL);

-- Files that wait stay in memory alone.
DROP TABLE waiting_file;
