-- What was typed into a long form and not kept yet, one of each form on each device. Outside the
-- ledger: rows are written over while she types and go when the form is kept.

CREATE TABLE draft (
  device TEXT NOT NULL CHECK (device <> ''),
  form TEXT NOT NULL CHECK (form LIKE '/%' AND length(form) <= 200),
  request_key TEXT NOT NULL CHECK (request_key <> ''),
  typed TEXT NOT NULL CHECK (length(typed) BETWEEN 1 AND 100000),
  at_ms ${whole} NOT NULL CHECK (at_ms > 0),
  PRIMARY KEY (device, form)
) ${strict};
CREATE INDEX draft_at ON draft (at_ms);
