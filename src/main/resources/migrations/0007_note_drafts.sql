-- What somebody has typed of a build note and not yet saved; the note is empty for a new one. No plain-file data.
CREATE TABLE note_draft (
    "crew" TEXT NOT NULL COLLATE NOCASE REFERENCES crew ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    "note" TEXT NOT NULL COLLATE NOCASE,
    "at" TEXT NOT NULL,
    "version" INTEGER NOT NULL,
    "fields" TEXT NOT NULL CHECK (length("fields") <= 1000000),
    PRIMARY KEY ("crew", "note")
) STRICT;
