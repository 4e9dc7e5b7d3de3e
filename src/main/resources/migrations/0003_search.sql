-- What can be looked for: a row for each thing, kept by triggers. Its rowid is the thing's row times 16 and the number of its
-- kind, so that a change finds it at once. Letters are folded: case and accents do not matter.
CREATE VIRTUAL TABLE search USING fts5 (
    "title", "text", "id" UNINDEXED, tokenize = "unicode61 remove_diacritics 2", prefix = '2 3'
);

INSERT INTO search (rowid, "title", "text", "id") SELECT "row" * 16 + 1, "title", "id", "id" FROM tasks;
CREATE TRIGGER search_tasks_added AFTER INSERT ON tasks BEGIN
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 1, new."title", new."id", new."id");
END;
CREATE TRIGGER search_tasks_changed AFTER UPDATE OF "id", "title" ON tasks BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 1;
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 1, new."title", new."id", new."id");
END;
CREATE TRIGGER search_tasks_removed AFTER DELETE ON tasks BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 1;
END;

INSERT INTO search (rowid, "title", "text", "id") SELECT "row" * 16 + 2, "name", "id" || ' ' || "description", "id" FROM stages;
CREATE TRIGGER search_stages_added AFTER INSERT ON stages BEGIN
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 2, new."name", new."id" || ' ' || new."description", new."id");
END;
CREATE TRIGGER search_stages_changed AFTER UPDATE OF "id", "name", "description" ON stages BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 2;
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 2, new."name", new."id" || ' ' || new."description", new."id");
END;
CREATE TRIGGER search_stages_removed AFTER DELETE ON stages BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 2;
END;

INSERT INTO search (rowid, "title", "text", "id") SELECT "row" * 16 + 3, "title", "text", "id" FROM notes;
CREATE TRIGGER search_notes_added AFTER INSERT ON notes BEGIN
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 3, new."title", new."text", new."id");
END;
CREATE TRIGGER search_notes_changed AFTER UPDATE OF "id", "title", "text" ON notes BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 3;
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 3, new."title", new."text", new."id");
END;
CREATE TRIGGER search_notes_removed AFTER DELETE ON notes BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 3;
END;

INSERT INTO search (rowid, "title", "text", "id") SELECT "row" * 16 + 4, "item", "supplier" || ' ' || "credit", "id" FROM materials;
CREATE TRIGGER search_materials_added AFTER INSERT ON materials BEGIN
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 4, new."item", new."supplier" || ' ' || new."credit", new."id");
END;
CREATE TRIGGER search_materials_changed AFTER UPDATE OF "id", "item", "supplier", "credit" ON materials BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 4;
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 4, new."item", new."supplier" || ' ' || new."credit", new."id");
END;
CREATE TRIGGER search_materials_removed AFTER DELETE ON materials BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 4;
END;

INSERT INTO search (rowid, "title", "text", "id") SELECT "row" * 16 + 5, "item", "species" || ' ' || "place" || ' ' || "from" || ' ' || "note", "id" FROM stock;
CREATE TRIGGER search_stock_added AFTER INSERT ON stock BEGIN
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 5, new."item", new."species" || ' ' || new."place" || ' ' || new."from" || ' ' || new."note", new."id");
END;
CREATE TRIGGER search_stock_changed AFTER UPDATE OF "id", "item", "species", "place", "from", "note" ON stock BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 5;
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 5, new."item", new."species" || ' ' || new."place" || ' ' || new."from" || ' ' || new."note", new."id");
END;
CREATE TRIGGER search_stock_removed AFTER DELETE ON stock BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 5;
END;

INSERT INTO search (rowid, "title", "text", "id") SELECT "row" * 16 + 6, "title", coalesce("number", '') || ' ' || "held_back", "id" FROM episodes;
CREATE TRIGGER search_episodes_added AFTER INSERT ON episodes BEGIN
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 6, new."title", coalesce(new."number", '') || ' ' || new."held_back", new."id");
END;
CREATE TRIGGER search_episodes_changed AFTER UPDATE OF "id", "title", "number", "held_back" ON episodes BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 6;
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 6, new."title", coalesce(new."number", '') || ' ' || new."held_back", new."id");
END;
CREATE TRIGGER search_episodes_removed AFTER DELETE ON episodes BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 6;
END;

INSERT INTO search (rowid, "title", "text", "id") SELECT "row" * 16 + 7, "payee", "note" || ' ' || "account", "id" FROM ledger;
CREATE TRIGGER search_ledger_added AFTER INSERT ON ledger BEGIN
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 7, new."payee", new."note" || ' ' || new."account", new."id");
END;
CREATE TRIGGER search_ledger_changed AFTER UPDATE OF "id", "payee", "note", "account" ON ledger BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 7;
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 7, new."payee", new."note" || ' ' || new."account", new."id");
END;
CREATE TRIGGER search_ledger_removed AFTER DELETE ON ledger BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 7;
END;

INSERT INTO search (rowid, "title", "text", "id") SELECT "row" * 16 + 8, "name", "trades", "id" FROM crew;
CREATE TRIGGER search_crew_added AFTER INSERT ON crew BEGIN
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 8, new."name", new."trades", new."id");
END;
CREATE TRIGGER search_crew_changed AFTER UPDATE OF "id", "name", "trades" ON crew BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 8;
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 8, new."name", new."trades", new."id");
END;
CREATE TRIGGER search_crew_removed AFTER DELETE ON crew BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 8;
END;

INSERT INTO search (rowid, "title", "text", "id") SELECT "row" * 16 + 9, "name", "id", "id" FROM equipment;
CREATE TRIGGER search_equipment_added AFTER INSERT ON equipment BEGIN
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 9, new."name", new."id", new."id");
END;
CREATE TRIGGER search_equipment_changed AFTER UPDATE OF "id", "name" ON equipment BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 9;
    INSERT INTO search (rowid, "title", "text", "id") VALUES (new."row" * 16 + 9, new."name", new."id", new."id");
END;
CREATE TRIGGER search_equipment_removed AFTER DELETE ON equipment BEGIN
    DELETE FROM search WHERE rowid = old."row" * 16 + 9;
END;
