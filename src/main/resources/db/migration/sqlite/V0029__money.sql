-- Money as it came and went, and prices that were agreed for an order line.

CREATE TABLE money (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  kind TEXT NOT NULL CHECK (kind <> ''),
  order_number TEXT,
  line_id ${whole} REFERENCES order_line (id),
  minor ${whole} NOT NULL CHECK (minor >= 0),
  currency TEXT NOT NULL CHECK (length(currency) = 3),
  on_day TEXT NOT NULL CHECK (length(on_day) = 10),
  words TEXT NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX money_order ON money (order_number, id);
CREATE INDEX money_line ON money (line_id, id);
CREATE INDEX money_deed ON money (deed_id);

CREATE TRIGGER money_no_update BEFORE UPDATE ON money
BEGIN SELECT RAISE(ABORT, 'money only grows: a mistake is corrected by a new deed'); END;
CREATE TRIGGER money_no_delete BEFORE DELETE ON money
BEGIN SELECT RAISE(ABORT, 'money only grows: a mistake is corrected by a new deed'); END;

PRAGMA user_version = 29;
