-- The secret address of a person's own week, stored as a hash; a new one replaces the old. No plain-file data.
CREATE TABLE week_link (
    "crew" TEXT PRIMARY KEY COLLATE NOCASE REFERENCES crew ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    "token_sha256" TEXT NOT NULL UNIQUE,
    "since" TEXT NOT NULL
) STRICT;
