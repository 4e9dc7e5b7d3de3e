-- Whether the forecast learns of deliveries that are late together (rule 137); nothing said means yes.
ALTER TABLE model ADD COLUMN "late_together" INTEGER CHECK ("late_together" IN (0, 1));
