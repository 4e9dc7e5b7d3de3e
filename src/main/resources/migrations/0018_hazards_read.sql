-- Who has read the cautions of a hazard, and when last.
CREATE TABLE hazards_read (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "hazard" TEXT NOT NULL COLLATE NOCASE CHECK (length("hazard") BETWEEN 1 AND 200),
    "crew" TEXT NOT NULL COLLATE NOCASE CHECK (length("crew") BETWEEN 1 AND 40) REFERENCES crew ("id") DEFERRABLE INITIALLY DEFERRED,
    "date" TEXT NOT NULL CHECK ("date" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    UNIQUE ("hazard", "crew")
) STRICT;
CREATE INDEX hazards_read_crew ON hazards_read ("crew");
