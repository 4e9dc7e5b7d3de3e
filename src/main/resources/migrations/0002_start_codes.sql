-- A code that the crew hands to somebody, with which that person sets a first passphrase; used once, stored as a hash.
CREATE TABLE start_code (
    "crew" TEXT PRIMARY KEY COLLATE NOCASE REFERENCES crew ("id") DEFERRABLE INITIALLY DEFERRED,
    "code_sha256" TEXT NOT NULL,
    "until" TEXT NOT NULL
) STRICT;
