-- The running order of an episode, its music, releases, who did which step, and the roll of supporters.
CREATE TABLE segments (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "episode" TEXT NOT NULL COLLATE NOCASE CHECK (length("episode") BETWEEN 1 AND 40) REFERENCES episodes ("id") DEFERRABLE INITIALLY DEFERRED,
    "place" INTEGER NOT NULL CHECK ("place" BETWEEN 1 AND 200),
    "title" TEXT NOT NULL CHECK (length("title") <= 200),
    "minutes" TEXT CHECK (CAST("minutes" AS REAL) >= 0 AND CAST("minutes" AS REAL) <= 1000)
) STRICT;
CREATE INDEX segments_episode ON segments ("episode");

CREATE TABLE music (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "episode" TEXT NOT NULL COLLATE NOCASE CHECK (length("episode") BETWEEN 1 AND 40) REFERENCES episodes ("id") DEFERRABLE INITIALLY DEFERRED,
    "title" TEXT NOT NULL CHECK (length("title") <= 200),
    "licence" TEXT NOT NULL CHECK (length("licence") <= 200),
    "source" TEXT NOT NULL CHECK (length("source") <= 500),
    "until" TEXT CHECK ("until" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
) STRICT;
CREATE INDEX music_episode ON music ("episode");

CREATE TABLE releases (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "episode" TEXT NOT NULL COLLATE NOCASE CHECK (length("episode") BETWEEN 1 AND 40) REFERENCES episodes ("id") DEFERRABLE INITIALLY DEFERRED,
    "who" TEXT NOT NULL CHECK (length("who") <= 200),
    "got" TEXT CHECK ("got" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "note" TEXT NOT NULL CHECK (length("note") <= 500)
) STRICT;
CREATE INDEX releases_episode ON releases ("episode");

CREATE TABLE step_by (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "episode" TEXT NOT NULL COLLATE NOCASE CHECK (length("episode") BETWEEN 1 AND 40) REFERENCES episodes ("id") DEFERRABLE INITIALLY DEFERRED,
    "step" TEXT NOT NULL CHECK ("step" IN ('footage-complete', 'rough-cut', 'picture-lock', 'sound', 'cut', 'published')),
    "crew" TEXT NOT NULL COLLATE NOCASE CHECK (length("crew") BETWEEN 1 AND 40) REFERENCES crew ("id") DEFERRABLE INITIALLY DEFERRED,
    UNIQUE ("episode", "step")
) STRICT;
CREATE INDEX step_by_crew ON step_by ("crew");

CREATE TABLE rolls (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "episode" TEXT NOT NULL COLLATE NOCASE CHECK (length("episode") BETWEEN 1 AND 40) REFERENCES episodes ("id") DEFERRABLE INITIALLY DEFERRED,
    "names" TEXT NOT NULL CHECK (length("names") <= 20000),
    UNIQUE ("episode")
) STRICT;

-- Mondays of which an episode was made by itself from the week before. They have no history.
CREATE TABLE made_weeks (
    "monday" TEXT PRIMARY KEY
) STRICT;
