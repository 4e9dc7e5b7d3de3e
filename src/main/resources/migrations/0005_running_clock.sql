-- A clock that a person has started on a task: running, or stopped and its hours not yet saved. No plain-file data.
CREATE TABLE running_clock (
    "crew" TEXT NOT NULL COLLATE NOCASE REFERENCES crew ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    "task" TEXT NOT NULL COLLATE NOCASE REFERENCES tasks ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
    "started" TEXT NOT NULL,
    "stopped" TEXT,
    PRIMARY KEY ("crew", "task")
) STRICT;

CREATE UNIQUE INDEX running_clock_one ON running_clock ("crew") WHERE "stopped" IS NULL;
