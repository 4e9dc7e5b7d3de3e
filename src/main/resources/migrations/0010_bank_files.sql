-- How the files of a bank or of a pay-out service are read; columns by number, from 1.
CREATE TABLE bank_sources (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "name" TEXT NOT NULL CHECK (length("name") <= 200),
    "account" TEXT NOT NULL CHECK (length("account") <= 200),
    "encoding" TEXT NOT NULL CHECK ("encoding" IN ('utf-8', 'utf-16', 'windows-1252', 'by-line')),
    "divider" TEXT NOT NULL CHECK ("divider" IN ('comma', 'semicolon', 'tab', 'bar')),
    "skip" INTEGER NOT NULL CHECK ("skip" BETWEEN 0 AND 200),
    "date_order" TEXT NOT NULL CHECK ("date_order" IN ('ymd', 'dmy', 'mdy')),
    "decimals" TEXT NOT NULL CHECK ("decimals" IN ('point', 'comma')),
    "date" INTEGER NOT NULL CHECK ("date" BETWEEN 1 AND 200),
    "payee" INTEGER CHECK ("payee" BETWEEN 1 AND 200),
    "reference" INTEGER CHECK ("reference" BETWEEN 1 AND 200),
    "amount" INTEGER CHECK ("amount" BETWEEN 1 AND 200),
    "way" INTEGER CHECK ("way" BETWEEN 1 AND 200),
    "out" INTEGER CHECK ("out" BETWEEN 1 AND 200),
    "in" INTEGER CHECK ("in" BETWEEN 1 AND 200),
    "balance" INTEGER CHECK ("balance" BETWEEN 1 AND 200),
    "currency" INTEGER CHECK ("currency" BETWEEN 1 AND 200),
    "gross" INTEGER CHECK ("gross" BETWEEN 1 AND 200),
    "fee" INTEGER CHECK ("fee" BETWEEN 1 AND 200),
    "kind_in" TEXT NOT NULL,
    "kind_out" TEXT NOT NULL
) STRICT;

-- Files that were read into the books.
CREATE TABLE bank_files (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "source" TEXT NOT NULL COLLATE NOCASE REFERENCES bank_sources ("id") DEFERRABLE INITIALLY DEFERRED,
    "name" TEXT NOT NULL CHECK (length("name") <= 200),
    "date" TEXT NOT NULL CHECK ("date" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "from" TEXT NOT NULL CHECK ("from" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "to" TEXT NOT NULL CHECK ("to" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "entered" INTEGER NOT NULL CHECK ("entered" BETWEEN 0 AND 200000),
    "left_out" INTEGER NOT NULL CHECK ("left_out" BETWEEN 0 AND 200000)
) STRICT;

-- Files that were sent and are not in the books: gone once they are entered, thrown away, or old. They have no history.
CREATE TABLE waiting_file (
    "key" TEXT PRIMARY KEY,
    "name" TEXT NOT NULL,
    "bytes" BLOB NOT NULL,
    "source" TEXT NOT NULL DEFAULT '',
    "at" TEXT NOT NULL
) STRICT;
