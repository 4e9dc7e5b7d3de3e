-- More of what the public build log may show; off until it is switched on.
ALTER TABLE build_log ADD COLUMN "moved" INTEGER CHECK ("moved" IN (0, 1));
ALTER TABLE build_log ADD COLUMN "rung" INTEGER CHECK ("rung" IN (0, 1));
ALTER TABLE build_log ADD COLUMN "pledge" INTEGER CHECK ("pledge" IN (0, 1));
-- Why the newest forecast's dates differ from those of a week before, in whole days by cause. A result, as saved_forecast is.
CREATE TABLE moved_stage (
    "stage" TEXT NOT NULL,
    "since" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "work" INTEGER NOT NULL,
    "estimates" INTEGER NOT NULL,
    "plan" INTEGER NOT NULL,
    "materials" INTEGER NOT NULL,
    "money" INTEGER NOT NULL
) STRICT;
