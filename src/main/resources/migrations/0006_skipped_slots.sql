-- Why a slot is skipped. Which slots are skipped stands in publishing.skip.
CREATE TABLE skipped (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "date" TEXT NOT NULL UNIQUE CHECK ("date" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "reason" TEXT NOT NULL CHECK (length("reason") <= 300)
) STRICT;
