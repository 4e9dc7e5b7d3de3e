-- Levers kept under a name.
CREATE TABLE levers (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "name" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("name") <= 80),
    "pulled" TEXT NOT NULL CHECK (length("pulled") <= 2000)
) STRICT;
