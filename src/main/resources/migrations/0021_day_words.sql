-- What the crew writes on the day sheet of a task.
CREATE TABLE day_words (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "task" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("task") BETWEEN 1 AND 40) REFERENCES tasks ("id") DEFERRABLE INITIALLY DEFERRED,
    "begins" TEXT CHECK ("begins" GLOB '[0-9][0-9]:[0-9][0-9]*'),
    "stop_word" TEXT NOT NULL CHECK (length("stop_word") <= 40),
    "fallback" TEXT NOT NULL CHECK (length("fallback") <= 160),
    "permits" TEXT NOT NULL CHECK (length("permits") <= 300),
    "running" TEXT NOT NULL CHECK (length("running") <= 3000),
    "places" TEXT NOT NULL CHECK (length("places") <= 2000),
    "cameras" TEXT NOT NULL CHECK (length("cameras") <= 1000)
) STRICT;
