-- Months that were closed, and their statements as they were said then.
CREATE TABLE closed_months (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "month" TEXT NOT NULL UNIQUE CHECK ("month" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]'),
    "closed" TEXT NOT NULL CHECK ("closed" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "who" TEXT NOT NULL CHECK (length("who") <= 200)
) STRICT;
CREATE TABLE statements (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "month" TEXT NOT NULL CHECK ("month" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]'),
    "part" TEXT NOT NULL CHECK ("part" IN ('income', 'cost', 'stage', 'apart', 'balance', 'hours', 'figure', 'missing')),
    "name" TEXT NOT NULL CHECK (length("name") <= 500),
    "amount" INTEGER,
    "gross" INTEGER CHECK ("gross" >= 0),
    "fee" INTEGER CHECK ("fee" >= 0),
    "hours" INTEGER CHECK ("hours" >= 0),
    "count" INTEGER CHECK ("count" BETWEEN 0 AND 1000000)
) STRICT;
CREATE INDEX statements_month ON statements ("month");
