-- What calendars outside were told, so that the number of an entry rises when it changes. No part of the project.
CREATE TABLE calendar_entry (
    "uid" TEXT PRIMARY KEY CHECK (length("uid") <= 200),
    "day" TEXT NOT NULL CHECK ("day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "text" TEXT NOT NULL,
    "sequence" INTEGER NOT NULL CHECK ("sequence" >= 0),
    "changed" TEXT NOT NULL
) STRICT;
