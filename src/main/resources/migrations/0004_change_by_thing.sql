-- The newest change of a table is asked for with every page.
CREATE INDEX change_newest ON change ("thing", "id");
