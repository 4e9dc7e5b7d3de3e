-- The whole store of one project. Never edited once landed: later changes are migrations of their own.
-- Dates are ISO 8601 local dates of the project's zone, instants UTC text, money whole minor units, working time whole
-- minutes, other decimals exact text. "row" gives the stored order; "version" rises with every change of a row.
-- "reference" columns are checked at commit, so that one transaction may write in any order.

CREATE TABLE crew (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "name" TEXT NOT NULL CHECK (length("name") <= 200),
    "trades" TEXT NOT NULL,
    "mon" INTEGER CHECK ("mon" BETWEEN 0 AND 1440),
    "tue" INTEGER CHECK ("tue" BETWEEN 0 AND 1440),
    "wed" INTEGER CHECK ("wed" BETWEEN 0 AND 1440),
    "thu" INTEGER CHECK ("thu" BETWEEN 0 AND 1440),
    "fri" INTEGER CHECK ("fri" BETWEEN 0 AND 1440),
    "sat" INTEGER CHECK ("sat" BETWEEN 0 AND 1440),
    "sun" INTEGER CHECK ("sun" BETWEEN 0 AND 1440),
    "pay" INTEGER CHECK ("pay" >= 0),
    "from" TEXT CHECK ("from" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "to" TEXT CHECK ("to" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "access" TEXT CHECK ("access" IN ('crew', 'helper')),
    "not_for" TEXT NOT NULL,
    "public_name" TEXT NOT NULL CHECK (length("public_name") <= 200)
) STRICT;

CREATE TABLE crew_hours (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "crew" TEXT NOT NULL COLLATE NOCASE CHECK (length("crew") BETWEEN 1 AND 40) REFERENCES crew ("id") DEFERRABLE INITIALLY DEFERRED,
    "from" TEXT CHECK ("from" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "to" TEXT CHECK ("to" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "mon" INTEGER CHECK ("mon" BETWEEN 0 AND 1440),
    "tue" INTEGER CHECK ("tue" BETWEEN 0 AND 1440),
    "wed" INTEGER CHECK ("wed" BETWEEN 0 AND 1440),
    "thu" INTEGER CHECK ("thu" BETWEEN 0 AND 1440),
    "fri" INTEGER CHECK ("fri" BETWEEN 0 AND 1440),
    "sat" INTEGER CHECK ("sat" BETWEEN 0 AND 1440),
    "sun" INTEGER CHECK ("sun" BETWEEN 0 AND 1440)
) STRICT;
CREATE INDEX crew_hours_crew ON crew_hours ("crew");

CREATE TABLE days_off (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "crew" TEXT COLLATE NOCASE CHECK (length("crew") BETWEEN 1 AND 40) REFERENCES crew ("id") DEFERRABLE INITIALLY DEFERRED,
    "from" TEXT NOT NULL CHECK ("from" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "to" TEXT NOT NULL CHECK ("to" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "hours" INTEGER CHECK ("hours" BETWEEN 0 AND 1440),
    "reason" TEXT NOT NULL CHECK (length("reason") <= 200)
) STRICT;
CREATE INDEX days_off_crew ON days_off ("crew");

CREATE TABLE stages (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "name" TEXT NOT NULL CHECK (length("name") <= 200),
    "order" INTEGER CHECK ("order" BETWEEN 0 AND 100000),
    "weight" TEXT CHECK (CAST("weight" AS REAL) >= 0 AND CAST("weight" AS REAL) <= 1000),
    "side" INTEGER NOT NULL CHECK ("side" IN (0, 1)),
    "rough_low" INTEGER CHECK ("rough_low" >= 0),
    "rough_likely" INTEGER CHECK ("rough_likely" >= 0),
    "rough_high" INTEGER CHECK ("rough_high" >= 0),
    "rough_cost" INTEGER CHECK ("rough_cost" >= 0),
    "description" TEXT NOT NULL CHECK (length("description") <= 20000)
) STRICT;

CREATE TABLE tasks (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "stage" TEXT NOT NULL COLLATE NOCASE CHECK (length("stage") BETWEEN 1 AND 40) REFERENCES stages ("id") DEFERRABLE INITIALLY DEFERRED,
    "title" TEXT NOT NULL CHECK (length("title") <= 200),
    "kind" TEXT NOT NULL CHECK ("kind" IN ('work', 'wait')),
    "low" TEXT CHECK (CAST("low" AS REAL) >= 0 AND CAST("low" AS REAL) <= 100000),
    "likely" TEXT CHECK (CAST("likely" AS REAL) >= 0 AND CAST("likely" AS REAL) <= 100000),
    "high" TEXT CHECK (CAST("high" AS REAL) >= 0 AND CAST("high" AS REAL) <= 100000),
    "pieces" INTEGER CHECK ("pieces" BETWEEN 1 AND 100000),
    "learning" TEXT CHECK (CAST("learning" AS REAL) >= 1 AND CAST("learning" AS REAL) <= 100),
    "hands" INTEGER CHECK ("hands" BETWEEN 1 AND 100),
    "least_hands" INTEGER CHECK ("least_hands" BETWEEN 1 AND 100),
    "trades" TEXT NOT NULL,
    "company" TEXT CHECK ("company" IN ('alone', 'call', 'by')),
    "company_reason" TEXT NOT NULL CHECK (length("company_reason") <= 200),
    "equipment" TEXT NOT NULL,
    "without" TEXT CHECK (CAST("without" AS REAL) >= 0 AND CAST("without" AS REAL) <= 1000),
    "outdoors" INTEGER NOT NULL CHECK ("outdoors" IN (0, 1)),
    "season_from" TEXT CHECK ("season_from" GLOB '[0-9][0-9]-[0-9][0-9]'),
    "season_to" TEXT CHECK ("season_to" GLOB '[0-9][0-9]-[0-9][0-9]'),
    "not_before" TEXT CHECK ("not_before" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "booked" TEXT CHECK ("booked" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "rebook_low" TEXT CHECK (CAST("rebook_low" AS REAL) >= 0 AND CAST("rebook_low" AS REAL) <= 3650),
    "rebook_likely" TEXT CHECK (CAST("rebook_likely" AS REAL) >= 0 AND CAST("rebook_likely" AS REAL) <= 3650),
    "rebook_high" TEXT CHECK (CAST("rebook_high" AS REAL) >= 0 AND CAST("rebook_high" AS REAL) <= 3650),
    "one_go" INTEGER NOT NULL CHECK ("one_go" IN (0, 1)),
    "priority" INTEGER CHECK ("priority" BETWEEN -1000 AND 1000),
    "fill" INTEGER NOT NULL CHECK ("fill" IN (0, 1)),
    "camera" TEXT CHECK ("camera" IN ('none', 'fixed', 'operator', 'once')),
    "camera_extra" TEXT CHECK (CAST("camera_extra" AS REAL) >= 0 AND CAST("camera_extra" AS REAL) <= 1000),
    "story_minutes" TEXT CHECK (CAST("story_minutes" AS REAL) >= 0 AND CAST("story_minutes" AS REAL) <= 10000),
    "story_told" INTEGER NOT NULL CHECK ("story_told" IN (0, 1)),
    "hazards" TEXT NOT NULL,
    "fail" TEXT CHECK (CAST("fail" AS REAL) >= 0 AND CAST("fail" AS REAL) <= 100),
    "redo" TEXT CHECK (CAST("redo" AS REAL) >= 0 AND CAST("redo" AS REAL) <= 100),
    "redo_of" TEXT COLLATE NOCASE CHECK (length("redo_of") BETWEEN 1 AND 40) REFERENCES tasks ("id") DEFERRABLE INITIALLY DEFERRED,
    "left" INTEGER CHECK ("left" >= 0),
    "left_on" TEXT CHECK ("left_on" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "aside_until" TEXT CHECK ("aside_until" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "added" TEXT CHECK ("added" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "started" TEXT CHECK ("started" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "done" TEXT CHECK ("done" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "dropped" TEXT CHECK ("dropped" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
) STRICT;
CREATE INDEX tasks_stage ON tasks ("stage");
CREATE INDEX tasks_redo_of ON tasks ("redo_of");

CREATE TABLE equipment (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "name" TEXT NOT NULL CHECK (length("name") <= 200),
    "quantity" INTEGER CHECK ("quantity" BETWEEN 1 AND 10000),
    "hazards" TEXT NOT NULL,
    "kept" INTEGER NOT NULL CHECK ("kept" IN (0, 1)),
    "ready_after" TEXT COLLATE NOCASE CHECK (length("ready_after") BETWEEN 1 AND 40) REFERENCES tasks ("id") DEFERRABLE INITIALLY DEFERRED,
    "down_from" TEXT CHECK ("down_from" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "back_low" TEXT CHECK (CAST("back_low" AS REAL) >= 0 AND CAST("back_low" AS REAL) <= 3650),
    "back_likely" TEXT CHECK (CAST("back_likely" AS REAL) >= 0 AND CAST("back_likely" AS REAL) <= 3650),
    "back_high" TEXT CHECK (CAST("back_high" AS REAL) >= 0 AND CAST("back_high" AS REAL) <= 3650),
    "inspect_by" TEXT CHECK ("inspect_by" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "value" INTEGER CHECK ("value" >= 0)
) STRICT;
CREATE INDEX equipment_ready_after ON equipment ("ready_after");

CREATE TABLE stopped (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "date" TEXT NOT NULL CHECK ("date" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "crew" TEXT COLLATE NOCASE CHECK (length("crew") BETWEEN 1 AND 40) REFERENCES crew ("id") DEFERRABLE INITIALLY DEFERRED,
    "hours" INTEGER CHECK ("hours" BETWEEN 0 AND 1440),
    "reason" TEXT NOT NULL CHECK ("reason" IN ('ill', 'weather', 'material', 'machine', 'company', 'away', 'visitors', 'other')),
    "task" TEXT COLLATE NOCASE CHECK (length("task") BETWEEN 1 AND 40) REFERENCES tasks ("id") DEFERRABLE INITIALLY DEFERRED,
    "equipment" TEXT COLLATE NOCASE CHECK (length("equipment") BETWEEN 1 AND 40) REFERENCES equipment ("id") DEFERRABLE INITIALLY DEFERRED,
    "note" TEXT NOT NULL CHECK (length("note") <= 2000)
) STRICT;
CREATE INDEX stopped_crew ON stopped ("crew");
CREATE INDEX stopped_task ON stopped ("task");
CREATE INDEX stopped_equipment ON stopped ("equipment");

CREATE TABLE links (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "task" TEXT NOT NULL COLLATE NOCASE CHECK (length("task") BETWEEN 1 AND 40) REFERENCES tasks ("id") DEFERRABLE INITIALLY DEFERRED,
    "after" TEXT NOT NULL COLLATE NOCASE CHECK (length("after") BETWEEN 1 AND 40) REFERENCES tasks ("id") DEFERRABLE INITIALLY DEFERRED,
    "share" TEXT CHECK (CAST("share" AS REAL) >= 0 AND CAST("share" AS REAL) <= 1),
    "wait_low" TEXT CHECK (CAST("wait_low" AS REAL) >= 0 AND CAST("wait_low" AS REAL) <= 3650),
    "wait_likely" TEXT CHECK (CAST("wait_likely" AS REAL) >= 0 AND CAST("wait_likely" AS REAL) <= 3650),
    "wait_high" TEXT CHECK (CAST("wait_high" AS REAL) >= 0 AND CAST("wait_high" AS REAL) <= 3650),
    UNIQUE ("task", "after"),
    CHECK ("task" <> "after")
) STRICT;
CREATE INDEX links_after ON links ("after");

CREATE TABLE episodes (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "number" INTEGER CHECK ("number" BETWEEN 0 AND 100000),
    "slot" TEXT CHECK ("slot" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "title" TEXT NOT NULL CHECK (length("title") <= 200),
    "kind" TEXT CHECK ("kind" IN ('build', 'side', 'standby')),
    "minutes" TEXT CHECK (CAST("minutes" AS REAL) >= 0 AND CAST("minutes" AS REAL) <= 1000),
    "edit_low" INTEGER CHECK ("edit_low" >= 0),
    "edit_likely" INTEGER CHECK ("edit_likely" >= 0),
    "edit_high" INTEGER CHECK ("edit_high" >= 0),
    "editor" TEXT COLLATE NOCASE CHECK (length("editor") BETWEEN 1 AND 40) REFERENCES crew ("id") DEFERRABLE INITIALLY DEFERRED,
    "footage_complete" TEXT CHECK ("footage_complete" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "rough_cut" TEXT CHECK ("rough_cut" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "picture_lock" TEXT CHECK ("picture_lock" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "sound" TEXT CHECK ("sound" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "cut" TEXT CHECK ("cut" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "published" TEXT CHECK ("published" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "address" TEXT NOT NULL CHECK (length("address") <= 500),
    "views" INTEGER CHECK ("views" >= 0),
    "held_back" TEXT NOT NULL CHECK (length("held_back") <= 500)
) STRICT;
CREATE INDEX episodes_editor ON episodes ("editor");

CREATE TABLE tells (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "episode" TEXT NOT NULL COLLATE NOCASE CHECK (length("episode") BETWEEN 1 AND 40) REFERENCES episodes ("id") DEFERRABLE INITIALLY DEFERRED,
    "task" TEXT NOT NULL COLLATE NOCASE CHECK (length("task") BETWEEN 1 AND 40) REFERENCES tasks ("id") DEFERRABLE INITIALLY DEFERRED,
    "share" TEXT CHECK (CAST("share" AS REAL) >= 0 AND CAST("share" AS REAL) <= 1),
    UNIQUE ("episode", "task")
) STRICT;
CREATE INDEX tells_task ON tells ("task");

CREATE TABLE shots (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "episode" TEXT COLLATE NOCASE CHECK (length("episode") BETWEEN 1 AND 40) REFERENCES episodes ("id") DEFERRABLE INITIALLY DEFERRED,
    "task" TEXT COLLATE NOCASE CHECK (length("task") BETWEEN 1 AND 40) REFERENCES tasks ("id") DEFERRABLE INITIALLY DEFERRED,
    "what" TEXT NOT NULL CHECK (length("what") <= 500),
    "size" TEXT CHECK ("size" IN ('wide', 'medium', 'close', 'insert', 'time-lapse')),
    "must" INTEGER NOT NULL CHECK ("must" IN (0, 1)),
    "once" INTEGER NOT NULL CHECK ("once" IN (0, 1)),
    "captured" TEXT CHECK ("captured" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "clip" TEXT NOT NULL CHECK (length("clip") <= 200),
    "called_off" INTEGER NOT NULL CHECK ("called_off" IN (0, 1))
) STRICT;
CREATE INDEX shots_episode ON shots ("episode");
CREATE INDEX shots_task ON shots ("task");

CREATE TABLE clips (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "date" TEXT NOT NULL CHECK ("date" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "card" TEXT NOT NULL CHECK (length("card") <= 200),
    "clip" TEXT NOT NULL CHECK (length("clip") <= 200),
    "task" TEXT COLLATE NOCASE CHECK (length("task") BETWEEN 1 AND 40) REFERENCES tasks ("id") DEFERRABLE INITIALLY DEFERRED,
    "minutes" TEXT CHECK (CAST("minutes" AS REAL) >= 0 AND CAST("minutes" AS REAL) <= 10000),
    "size" TEXT NOT NULL CHECK (length("size") <= 200),
    "who" TEXT COLLATE NOCASE CHECK (length("who") BETWEEN 1 AND 40) REFERENCES crew ("id") DEFERRABLE INITIALLY DEFERRED,
    "rating" INTEGER CHECK ("rating" BETWEEN 1 AND 5),
    "remarks" TEXT NOT NULL CHECK (length("remarks") <= 2000)
) STRICT;
CREATE INDEX clips_task ON clips ("task");
CREATE INDEX clips_who ON clips ("who");

CREATE TABLE hours (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "date" TEXT NOT NULL CHECK ("date" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "crew" TEXT NOT NULL COLLATE NOCASE CHECK (length("crew") BETWEEN 1 AND 40) REFERENCES crew ("id") DEFERRABLE INITIALLY DEFERRED,
    "people" INTEGER CHECK ("people" BETWEEN 1 AND 100),
    "task" TEXT COLLATE NOCASE CHECK (length("task") BETWEEN 1 AND 40) REFERENCES tasks ("id") DEFERRABLE INITIALLY DEFERRED,
    "episode" TEXT COLLATE NOCASE CHECK (length("episode") BETWEEN 1 AND 40) REFERENCES episodes ("id") DEFERRABLE INITIALLY DEFERRED,
    "as" TEXT CHECK ("as" IN ('hands', 'camera', 'edit', 'shop', 'office')),
    "hours" INTEGER NOT NULL CHECK ("hours" BETWEEN 1 AND 1440),
    "pieces" INTEGER CHECK ("pieces" BETWEEN 0 AND 100000),
    "spoiled" INTEGER CHECK ("spoiled" BETWEEN 0 AND 100000),
    "filmed" INTEGER NOT NULL CHECK ("filmed" IN (0, 1)),
    "footage_minutes" TEXT CHECK (CAST("footage_minutes" AS REAL) >= 0 AND CAST("footage_minutes" AS REAL) <= 100000),
    "note" TEXT NOT NULL CHECK (length("note") <= 2000)
) STRICT;
CREATE INDEX hours_crew ON hours ("crew");
CREATE INDEX hours_task ON hours ("task");
CREATE INDEX hours_episode ON hours ("episode");
CREATE INDEX hours_date ON hours ("date");

CREATE TABLE week (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "date" TEXT NOT NULL CHECK ("date" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "crew" TEXT COLLATE NOCASE CHECK (length("crew") BETWEEN 1 AND 40) REFERENCES crew ("id") DEFERRABLE INITIALLY DEFERRED,
    "task" TEXT COLLATE NOCASE CHECK (length("task") BETWEEN 1 AND 40) REFERENCES tasks ("id") DEFERRABLE INITIALLY DEFERRED,
    "episode" TEXT COLLATE NOCASE CHECK (length("episode") BETWEEN 1 AND 40) REFERENCES episodes ("id") DEFERRABLE INITIALLY DEFERRED,
    "kind" TEXT CHECK ("kind" IN ('work', 'film', 'edit', 'errand', 'care', 'rest')),
    "hours" INTEGER CHECK ("hours" BETWEEN 0 AND 1440),
    "from" TEXT CHECK ("from" GLOB '[0-9][0-9]:[0-9][0-9]'),
    "to" TEXT CHECK ("to" GLOB '[0-9][0-9]:[0-9][0-9]'),
    "text" TEXT NOT NULL CHECK (length("text") <= 2000),
    "done" INTEGER NOT NULL CHECK ("done" IN (0, 1))
) STRICT;
CREATE INDEX week_crew ON week ("crew");
CREATE INDEX week_task ON week ("task");
CREATE INDEX week_episode ON week ("episode");
CREATE INDEX week_date ON week ("date");

CREATE TABLE gatherings (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "date" TEXT NOT NULL CHECK ("date" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "hands" INTEGER NOT NULL CHECK ("hands" BETWEEN 1 AND 1000),
    "hours" INTEGER NOT NULL CHECK ("hours" BETWEEN 1 AND 1440),
    "come_share" TEXT CHECK (CAST("come_share" AS REAL) >= 0 AND CAST("come_share" AS REAL) <= 1),
    "cost" INTEGER CHECK ("cost" >= 0),
    "note" TEXT NOT NULL CHECK (length("note") <= 2000)
) STRICT;

CREATE TABLE stock (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "item" TEXT NOT NULL CHECK (length("item") <= 200),
    "species" TEXT NOT NULL CHECK (length("species") <= 200),
    "quantity" TEXT CHECK (CAST("quantity" AS REAL) >= 0),
    "unit" TEXT NOT NULL CHECK (length("unit") <= 200),
    "place" TEXT NOT NULL CHECK (length("place") <= 200),
    "since" TEXT CHECK ("since" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "source" TEXT CHECK ("source" IN ('bought', 'given', 'salvaged', 'own')),
    "from" TEXT NOT NULL CHECK (length("from") <= 200),
    "value" INTEGER CHECK ("value" >= 0),
    "ready_low" TEXT CHECK (CAST("ready_low" AS REAL) >= 0 AND CAST("ready_low" AS REAL) <= 7300),
    "ready_likely" TEXT CHECK (CAST("ready_likely" AS REAL) >= 0 AND CAST("ready_likely" AS REAL) <= 7300),
    "ready_high" TEXT CHECK (CAST("ready_high" AS REAL) >= 0 AND CAST("ready_high" AS REAL) <= 7300),
    "credit" TEXT NOT NULL CHECK (length("credit") <= 200),
    "note" TEXT NOT NULL CHECK (length("note") <= 2000)
) STRICT;

CREATE TABLE materials (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "task" TEXT NOT NULL COLLATE NOCASE CHECK (length("task") BETWEEN 1 AND 40) REFERENCES tasks ("id") DEFERRABLE INITIALLY DEFERRED,
    "lot" TEXT NOT NULL CHECK (length("lot") <= 200),
    "item" TEXT NOT NULL CHECK (length("item") <= 200),
    "quantity" TEXT CHECK (CAST("quantity" AS REAL) >= 0.0001),
    "unit" TEXT NOT NULL CHECK (length("unit") <= 200),
    "waste" TEXT CHECK (CAST("waste" AS REAL) >= 0 AND CAST("waste" AS REAL) <= 100),
    "price_low" TEXT CHECK (CAST("price_low" AS REAL) >= 0),
    "price_likely" TEXT CHECK (CAST("price_likely" AS REAL) >= 0),
    "price_high" TEXT CHECK (CAST("price_high" AS REAL) >= 0),
    "source" TEXT CHECK ("source" IN ('bought', 'given', 'salvaged', 'own')),
    "stock" TEXT COLLATE NOCASE CHECK (length("stock") BETWEEN 1 AND 40) REFERENCES stock ("id") DEFERRABLE INITIALLY DEFERRED,
    "supplier" TEXT NOT NULL CHECK (length("supplier") <= 200),
    "at_share" TEXT CHECK (CAST("at_share" AS REAL) >= 0 AND CAST("at_share" AS REAL) <= 1),
    "lead_low" TEXT CHECK (CAST("lead_low" AS REAL) >= 0 AND CAST("lead_low" AS REAL) <= 3650),
    "lead_likely" TEXT CHECK (CAST("lead_likely" AS REAL) >= 0 AND CAST("lead_likely" AS REAL) <= 3650),
    "lead_high" TEXT CHECK (CAST("lead_high" AS REAL) >= 0 AND CAST("lead_high" AS REAL) <= 3650),
    "deposit" TEXT CHECK (CAST("deposit" AS REAL) >= 0 AND CAST("deposit" AS REAL) <= 100),
    "cancel_by" TEXT CHECK ("cancel_by" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "ordered" TEXT CHECK ("ordered" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "promised" TEXT CHECK ("promised" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "received" TEXT CHECK ("received" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "value" INTEGER CHECK ("value" >= 0),
    "credit" TEXT NOT NULL CHECK (length("credit") <= 200)
) STRICT;
CREATE INDEX materials_task ON materials ("task");
CREATE INDEX materials_stock ON materials ("stock");

CREATE TABLE ledger (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "date" TEXT NOT NULL CHECK ("date" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "amount" INTEGER NOT NULL,
    "kind" TEXT NOT NULL CHECK ("kind" IN ('payout', 'other-income', 'material', 'equipment', 'wages', 'regular', 'other-cost', 'drawings', 'own-money', 'loan', 'tax', 'refund', 'transfer', 'counted')),
    "account" TEXT NOT NULL CHECK (length("account") <= 200),
    "gross" INTEGER,
    "fee" INTEGER,
    "once" INTEGER NOT NULL CHECK ("once" IN (0, 1)),
    "stage" TEXT COLLATE NOCASE CHECK (length("stage") BETWEEN 1 AND 40) REFERENCES stages ("id") DEFERRABLE INITIALLY DEFERRED,
    "task" TEXT COLLATE NOCASE CHECK (length("task") BETWEEN 1 AND 40) REFERENCES tasks ("id") DEFERRABLE INITIALLY DEFERRED,
    "material" TEXT COLLATE NOCASE CHECK (length("material") BETWEEN 1 AND 40) REFERENCES materials ("id") DEFERRABLE INITIALLY DEFERRED,
    "payee" TEXT NOT NULL CHECK (length("payee") <= 200),
    "foreign_amount" TEXT,
    "foreign_currency" TEXT NOT NULL CHECK (length("foreign_currency") <= 200),
    "rate" TEXT CHECK (CAST("rate" AS REAL) >= 0),
    "receipt" TEXT NOT NULL CHECK (length("receipt") <= 200),
    "note" TEXT NOT NULL CHECK (length("note") <= 2000)
) STRICT;
CREATE INDEX ledger_stage ON ledger ("stage");
CREATE INDEX ledger_task ON ledger ("task");
CREATE INDEX ledger_material ON ledger ("material");
CREATE INDEX ledger_date ON ledger ("date");

CREATE TABLE regular (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "name" TEXT NOT NULL CHECK (length("name") <= 200),
    "amount" INTEGER NOT NULL,
    "spread" TEXT CHECK (CAST("spread" AS REAL) >= 0 AND CAST("spread" AS REAL) <= 1000),
    "every" TEXT NOT NULL CHECK ("every" IN ('month', 'week', 'year', 'episode')),
    "from" TEXT CHECK ("from" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "to" TEXT CHECK ("to" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
) STRICT;

CREATE TABLE pledge_levels (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "name" TEXT NOT NULL CHECK (length("name") <= 200),
    "amount" INTEGER NOT NULL CHECK ("amount" >= 0),
    "charged" TEXT NOT NULL CHECK ("charged" IN ('month', 'episode')),
    "fee_percent" TEXT CHECK (CAST("fee_percent" AS REAL) >= 0 AND CAST("fee_percent" AS REAL) <= 100),
    "fee_fixed" INTEGER CHECK ("fee_fixed" >= 0),
    "declined" TEXT CHECK (CAST("declined" AS REAL) >= 0 AND CAST("declined" AS REAL) <= 100),
    "payout_days" INTEGER CHECK ("payout_days" BETWEEN 0 AND 366)
) STRICT;

CREATE TABLE supporters (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "month" TEXT NOT NULL CHECK ("month" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]'),
    "level" TEXT NOT NULL COLLATE NOCASE CHECK (length("level") BETWEEN 1 AND 40) REFERENCES pledge_levels ("id") DEFERRABLE INITIALLY DEFERRED,
    "start" INTEGER NOT NULL CHECK ("start" >= 0),
    "joined" INTEGER CHECK ("joined" >= 0),
    "left" INTEGER CHECK ("left" >= 0),
    "surge" INTEGER NOT NULL CHECK ("surge" IN (0, 1)),
    UNIQUE ("month", "level")
) STRICT;
CREATE INDEX supporters_level ON supporters ("level");

CREATE TABLE incidents (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "date" TEXT NOT NULL CHECK ("date" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "who" TEXT NOT NULL CHECK (length("who") <= 200),
    "what" TEXT NOT NULL CHECK (length("what") <= 5000),
    "hurt" INTEGER NOT NULL CHECK ("hurt" IN (0, 1)),
    "near_miss" INTEGER NOT NULL CHECK ("near_miss" IN (0, 1)),
    "changed" TEXT NOT NULL CHECK (length("changed") <= 5000)
) STRICT;

CREATE TABLE cautions (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "hazard" TEXT NOT NULL CHECK (length("hazard") <= 200),
    "for" TEXT NOT NULL CHECK ("for" IN ('hands', 'camera')),
    "text" TEXT NOT NULL CHECK (length("text") <= 500)
) STRICT;

CREATE TABLE notes (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "id" TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length("id") BETWEEN 1 AND 40),
    "title" TEXT NOT NULL CHECK (length("title") <= 200),
    "date" TEXT NOT NULL CHECK ("date" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "author" TEXT COLLATE NOCASE CHECK (length("author") BETWEEN 1 AND 40) REFERENCES crew ("id") DEFERRABLE INITIALLY DEFERRED,
    "stage" TEXT COLLATE NOCASE CHECK (length("stage") BETWEEN 1 AND 40) REFERENCES stages ("id") DEFERRABLE INITIALLY DEFERRED,
    "episode" TEXT COLLATE NOCASE CHECK (length("episode") BETWEEN 1 AND 40) REFERENCES episodes ("id") DEFERRABLE INITIALLY DEFERRED,
    "tasks" TEXT NOT NULL,
    "visible" TEXT CHECK ("visible" IN ('crew', 'supporters', 'everyone')),
    "visible_from" TEXT CHECK ("visible_from" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "text" TEXT NOT NULL CHECK (length("text") <= 200000)
) STRICT;
CREATE INDEX notes_author ON notes ("author");
CREATE INDEX notes_stage ON notes ("stage");
CREATE INDEX notes_episode ON notes ("episode");
CREATE INDEX notes_date ON notes ("date");

CREATE TABLE photos (
    "row" INTEGER PRIMARY KEY AUTOINCREMENT,
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "note" TEXT NOT NULL COLLATE NOCASE CHECK (length("note") BETWEEN 1 AND 40) REFERENCES notes ("id") DEFERRABLE INITIALLY DEFERRED,
    "file" TEXT NOT NULL CHECK (length("file") <= 200),
    "caption" TEXT NOT NULL CHECK (length("caption") <= 500),
    "alternative" TEXT NOT NULL CHECK (length("alternative") <= 1000),
    UNIQUE ("note", "file")
) STRICT;

CREATE TABLE project (
    "row" INTEGER PRIMARY KEY CHECK ("row" = 1),
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "name" TEXT NOT NULL CHECK (length("name") <= 200),
    "started" TEXT NOT NULL CHECK ("started" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "currency" TEXT NOT NULL CHECK (length("currency") <= 200),
    "units" TEXT CHECK ("units" IN ('metric', 'imperial')),
    "zone" TEXT NOT NULL CHECK (length("zone") <= 200),
    "reserve" INTEGER CHECK ("reserve" >= 0),
    "opening_date" TEXT CHECK ("opening_date" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "opening_cash" INTEGER,
    "horizon_months" INTEGER CHECK ("horizon_months" BETWEEN 1 AND 240)
) STRICT;

CREATE TABLE publishing (
    "row" INTEGER PRIMARY KEY CHECK ("row" = 1),
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "weekday" TEXT NOT NULL CHECK (length("weekday") <= 200),
    "time" TEXT CHECK ("time" GLOB '[0-9][0-9]:[0-9][0-9]'),
    "first" TEXT CHECK ("first" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "every_weeks" INTEGER CHECK ("every_weeks" BETWEEN 1 AND 52),
    "target_minutes" TEXT CHECK (CAST("target_minutes" AS REAL) >= 1 AND CAST("target_minutes" AS REAL) <= 1000),
    "early_days" INTEGER CHECK ("early_days" BETWEEN 0 AND 365),
    "edit_window_days" INTEGER CHECK ("edit_window_days" BETWEEN 0 AND 365),
    "edit_days" TEXT NOT NULL,
    "shoot_until" TEXT NOT NULL CHECK (length("shoot_until") <= 200),
    "bank_floor" TEXT CHECK (CAST("bank_floor" AS REAL) >= 0 AND CAST("bank_floor" AS REAL) <= 52),
    "edit_low" INTEGER CHECK ("edit_low" >= 0),
    "edit_likely" INTEGER CHECK ("edit_likely" >= 0),
    "edit_high" INTEGER CHECK ("edit_high" >= 0),
    "charges_a_month" INTEGER CHECK ("charges_a_month" BETWEEN 0 AND 31),
    "empty_leaving" TEXT CHECK (CAST("empty_leaving" AS REAL) >= 0 AND CAST("empty_leaving" AS REAL) <= 100),
    "skip" TEXT NOT NULL
) STRICT;

CREATE TABLE weather (
    "row" INTEGER PRIMARY KEY CHECK ("row" = 1),
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "lost" TEXT NOT NULL,
    "spell_days" TEXT CHECK (CAST("spell_days" AS REAL) >= 1 AND CAST("spell_days" AS REAL) <= 60)
) STRICT;

CREATE TABLE orders (
    "row" INTEGER PRIMARY KEY CHECK ("row" = 1),
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "margin_days" INTEGER CHECK ("margin_days" BETWEEN 0 AND 365),
    "small" INTEGER CHECK ("small" >= 0)
) STRICT;

CREATE TABLE money (
    "row" INTEGER PRIMARY KEY CHECK ("row" = 1),
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "put_by_percent" TEXT CHECK (CAST("put_by_percent" AS REAL) >= 0 AND CAST("put_by_percent" AS REAL) <= 100),
    "tax_month" INTEGER CHECK ("tax_month" BETWEEN 1 AND 12),
    "year_starts" TEXT CHECK ("year_starts" GLOB '[0-9][0-9]-[0-9][0-9]')
) STRICT;

CREATE TABLE emergency (
    "row" INTEGER PRIMARY KEY CHECK ("row" = 1),
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "number" TEXT NOT NULL CHECK (length("number") <= 200),
    "address" TEXT NOT NULL CHECK (length("address") <= 200),
    "way_in" TEXT NOT NULL CHECK (length("way_in") <= 200),
    "first_aider" TEXT NOT NULL CHECK (length("first_aider") <= 200),
    "kit" TEXT NOT NULL CHECK (length("kit") <= 200),
    "shut_offs" TEXT NOT NULL CHECK (length("shut_offs") <= 200)
) STRICT;

CREATE TABLE model (
    "row" INTEGER PRIMARY KEY CHECK ("row" = 1),
    "version" INTEGER NOT NULL DEFAULT 1 CHECK ("version" >= 1),
    "prior_ratio" TEXT CHECK (CAST("prior_ratio" AS REAL) >= 0.1 AND CAST("prior_ratio" AS REAL) <= 10),
    "effort_half_life" TEXT CHECK (CAST("effort_half_life" AS REAL) >= 0 AND CAST("effort_half_life" AS REAL) <= 1200),
    "supporters_half_life" TEXT CHECK (CAST("supporters_half_life" AS REAL) >= 0 AND CAST("supporters_half_life" AS REAL) <= 1200),
    "joining_drift" TEXT CHECK (CAST("joining_drift" AS REAL) >= 0 AND CAST("joining_drift" AS REAL) <= 10),
    "turnout" TEXT CHECK (CAST("turnout" AS REAL) >= 0 AND CAST("turnout" AS REAL) <= 10),
    "found_share" TEXT CHECK (CAST("found_share" AS REAL) >= 0 AND CAST("found_share" AS REAL) <= 10),
    "editing_first" INTEGER CHECK ("editing_first" IN (0, 1)),
    "camera_fixed" TEXT CHECK (CAST("camera_fixed" AS REAL) >= 0 AND CAST("camera_fixed" AS REAL) <= 1000),
    "camera_operator" TEXT CHECK (CAST("camera_operator" AS REAL) >= 0 AND CAST("camera_operator" AS REAL) <= 1000)
) STRICT;

-- One row: the version rises with every change of anything.
CREATE TABLE meta (
    "row" INTEGER PRIMARY KEY CHECK ("row" = 1),
    "project_version" INTEGER NOT NULL,
    "project_key" TEXT NOT NULL,
    "csrf_key" TEXT NOT NULL
) STRICT;

-- Who changed what, and when: written in the same transaction as the change.
CREATE TABLE change (
    "id" INTEGER PRIMARY KEY AUTOINCREMENT,
    "at" TEXT NOT NULL,
    "who" TEXT NOT NULL,
    "project_version" INTEGER NOT NULL,
    "thing" TEXT NOT NULL,
    "thing_row" INTEGER NOT NULL,
    "action" TEXT NOT NULL CHECK ("action" IN ('added', 'changed', 'removed')),
    "before" TEXT CHECK (json_valid("before")),
    "after" TEXT CHECK (json_valid("after"))
) STRICT;
CREATE INDEX change_thing ON change ("thing", "thing_row");
CREATE INDEX change_project_version ON change ("project_version");

-- The first answer to each form, for a post that comes twice.
CREATE TABLE answer (
    "key" TEXT PRIMARY KEY CHECK (length("key") BETWEEN 8 AND 80),
    "who" TEXT NOT NULL,
    "route" TEXT NOT NULL,
    "body_sha256" TEXT NOT NULL,
    "answer" TEXT NOT NULL,
    "at" TEXT NOT NULL
) STRICT;

CREATE TABLE saved_forecast (
    "id" INTEGER PRIMARY KEY AUTOINCREMENT,
    "day" TEXT NOT NULL CHECK ("day" GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    "made_at" TEXT NOT NULL,
    "seed" INTEGER NOT NULL,
    "trials" INTEGER NOT NULL CHECK ("trials" >= 1),
    "engine" TEXT NOT NULL,
    "project_version" INTEGER NOT NULL,
    "by_hand" INTEGER NOT NULL DEFAULT 0 CHECK ("by_hand" IN (0, 1)),
    "ranks" TEXT NOT NULL CHECK (json_valid("ranks")),
    "results" TEXT NOT NULL CHECK (json_valid("results")),
    "inputs" BLOB NOT NULL
) STRICT;
CREATE INDEX saved_forecast_day ON saved_forecast ("day");

-- Log-ins are kept apart from the crew and never exported. Secrets are stored as hashes only.
CREATE TABLE log_in (
    "crew" TEXT PRIMARY KEY COLLATE NOCASE REFERENCES crew ("id") DEFERRABLE INITIALLY DEFERRED,
    "passphrase" TEXT NOT NULL,
    "since" TEXT NOT NULL
) STRICT;
CREATE TABLE session (
    "token_sha256" TEXT PRIMARY KEY,
    "crew" TEXT NOT NULL COLLATE NOCASE REFERENCES crew ("id") DEFERRABLE INITIALLY DEFERRED,
    "since" TEXT NOT NULL,
    "last_seen" TEXT NOT NULL,
    "browser" TEXT NOT NULL CHECK (length("browser") <= 200)
) STRICT;
CREATE TABLE secret_link (
    "token_sha256" TEXT PRIMARY KEY,
    "purpose" TEXT NOT NULL CHECK ("purpose" IN ('supporters', 'calendar', 'week')),
    "crew" TEXT COLLATE NOCASE REFERENCES crew ("id") DEFERRABLE INITIALLY DEFERRED,
    "since" TEXT NOT NULL
) STRICT;
