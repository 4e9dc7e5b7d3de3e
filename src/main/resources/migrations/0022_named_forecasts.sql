-- What a forecast that was kept by hand is called; '' for those that are kept by themselves.
ALTER TABLE saved_forecast ADD COLUMN "name" TEXT NOT NULL DEFAULT '' CHECK (length("name") <= 80);
