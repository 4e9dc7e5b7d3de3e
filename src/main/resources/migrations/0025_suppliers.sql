-- Who is rung up for what is to be bought; a take-off line names one by its name.
CREATE TABLE suppliers (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "name" TEXT NOT NULL CHECK (length("name") <= 200),
    "telephone" TEXT NOT NULL CHECK (length("telephone") <= 40),
    "email" TEXT NOT NULL CHECK (length("email") <= 200),
    "remarks" TEXT NOT NULL CHECK (length("remarks") <= 2000)
) STRICT;
