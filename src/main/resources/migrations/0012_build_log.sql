-- What the public build log shows ([build_log] in project.toml). One row; everything is off until it is switched on.
CREATE TABLE build_log (
    "row" INTEGER PRIMARY KEY CHECK ("row" = 1),
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "open" INTEGER CHECK ("open" IN (0, 1)),
    "address" TEXT NOT NULL CHECK (length("address") <= 200),
    "lead" TEXT NOT NULL CHECK (length("lead") <= 500),
    "stages" INTEGER CHECK ("stages" IN (0, 1)),
    "landing" INTEGER CHECK ("landing" IN (0, 1)),
    "episodes" INTEGER CHECK ("episodes" IN (0, 1)),
    "thanks" INTEGER CHECK ("thanks" IN (0, 1)),
    "drawing" INTEGER CHECK ("drawing" IN (0, 1))
) STRICT;
INSERT INTO build_log ("row", "address", "lead") SELECT 1, '', '' FROM project;
-- The one secret link under which supporters read their notes. Kept as it is: the crew hands it on whenever somebody joins,
-- and whoever reads this table reads the notes as well.
CREATE TABLE supporters_link (
    "row" INTEGER PRIMARY KEY CHECK ("row" = 1),
    "token" TEXT NOT NULL,
    "since" TEXT NOT NULL
) STRICT;
