-- Rows that were put in as an example, as they were put in: what is unchanged can be taken out again as a whole.
CREATE TABLE example_row (
    "thing" TEXT NOT NULL,
    "row" INTEGER NOT NULL,
    "version" INTEGER NOT NULL,
    PRIMARY KEY ("thing", "row")
) STRICT;
