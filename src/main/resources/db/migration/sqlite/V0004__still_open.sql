-- Kept for speed, worked out from the facts: batches not finished, timers not answered, cycles that
-- burn. Every page asks for these, and must not read the years for it.

-- The latest pieces of a design.
CREATE INDEX piece_now_latest ON piece_now (design, piece_id, state);

CREATE TABLE still_open (
  kind TEXT NOT NULL CHECK (kind IN ('BATCH', 'TIMER', 'CYCLE')),
  id ${whole} NOT NULL CHECK (id > 0),
  PRIMARY KEY (kind, id)
) ${strict};

INSERT INTO still_open (kind, id)
SELECT 'BATCH', b.id FROM batch b
WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = b.deed_id)
  AND NOT EXISTS (SELECT 1 FROM batch_finish f WHERE f.batch_id = b.id
    AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = f.deed_id));
INSERT INTO still_open (kind, id)
SELECT 'TIMER', t.id FROM timer t
WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = t.deed_id)
  AND NOT EXISTS (SELECT 1 FROM timer_answer a WHERE a.timer_id = t.id
    AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = a.deed_id));
INSERT INTO still_open (kind, id)
SELECT 'CYCLE', c.id FROM burn_cycle c
WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = c.deed_id)
  AND NOT EXISTS (SELECT 1 FROM burn_cycle_end e WHERE e.cycle_id = c.id
    AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id));

PRAGMA user_version = 4;
