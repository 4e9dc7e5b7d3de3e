-- What was noted when a shot was taken, and what was said where a task was done without it.
ALTER TABLE shots ADD COLUMN "minutes" TEXT CHECK (CAST("minutes" AS REAL) >= 0 AND CAST("minutes" AS REAL) <= 10000);
ALTER TABLE shots ADD COLUMN "takes" TEXT NOT NULL DEFAULT '' CHECK (length("takes") <= 2000);
ALTER TABLE shots ADD COLUMN "missed" TEXT NOT NULL DEFAULT '' CHECK (length("missed") <= 500);
