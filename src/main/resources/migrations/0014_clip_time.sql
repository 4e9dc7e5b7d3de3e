-- The clock time at which a clip begins, by the camera's clock.
ALTER TABLE clips ADD COLUMN "time" TEXT CHECK ("time" GLOB '[0-2][0-9]:[0-5][0-9]');
