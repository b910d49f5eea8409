-- When a step was really done, where that is not when it was written down: a paper sheet that is
-- entered the day after. Empty: the moment of its deed.
ALTER TABLE batch_step ADD COLUMN at_ms INTEGER;

PRAGMA user_version = 70;
