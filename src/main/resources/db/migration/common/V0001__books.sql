-- The books of the studio. One text for both databases: ${whole} is a 64-bit whole number, ${real} a
-- double, ${strict} makes SQLite keep its types. Times are milliseconds since 1970 (UTC), days are
-- ISO dates as text. docs/data.md says what each table is for and who writes it.

CREATE TABLE deed (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  at_ms ${whole} NOT NULL,
  by_whom TEXT NOT NULL CHECK (by_whom <> ''),
  verb TEXT NOT NULL CHECK (verb <> ''),
  subject_kind TEXT NOT NULL,
  subject_id TEXT NOT NULL,
  request_key TEXT NOT NULL UNIQUE,
  undoes ${whole} REFERENCES deed (id),
  note TEXT NOT NULL,
  CHECK (undoes IS NULL OR undoes < id)
) ${strict};
CREATE INDEX deed_subject ON deed (subject_kind, subject_id, id);
CREATE INDEX deed_undoes ON deed (undoes);

-- Kept for speed, worked out from deed.undoes: deeds whose facts do not count now.
CREATE TABLE undone (
  deed_id ${whole} PRIMARY KEY REFERENCES deed (id)
) ${strict};

CREATE TABLE card (
  kind TEXT NOT NULL CHECK (kind <> ''),
  code TEXT NOT NULL CHECK (code <> ''),
  version ${whole} NOT NULL CHECK (version > 0),
  body TEXT NOT NULL,
  retired ${whole} NOT NULL CHECK (retired IN (0, 1)),
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  PRIMARY KEY (kind, code, version)
) ${strict};
CREATE INDEX card_deed ON card (deed_id);

CREATE TABLE mark (
  number ${whole} PRIMARY KEY CHECK (number > 0),
  subject_kind TEXT NOT NULL CHECK (subject_kind IN ('BATCH', 'PIECE')),
  subject_id ${whole} NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX mark_deed ON mark (deed_id);

CREATE TABLE lot (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  material TEXT NOT NULL CHECK (material <> ''),
  code TEXT NOT NULL CHECK (code <> ''),
  unit_kind TEXT NOT NULL CHECK (unit_kind IN ('MASS', 'VOLUME', 'COUNT')),
  supplier TEXT,
  received_on TEXT NOT NULL CHECK (length(received_on) = 10),
  expires_on TEXT CHECK (length(expires_on) = 10),
  price_minor ${whole} CHECK (price_minor >= 0),
  currency TEXT CHECK (length(currency) = 3),
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  CHECK ((price_minor IS NULL) = (currency IS NULL))
) ${strict};
CREATE INDEX lot_material ON lot (material, id);
CREATE INDEX lot_deed ON lot (deed_id);

CREATE TABLE lot_opening (
  lot_id ${whole} NOT NULL REFERENCES lot (id),
  opened_on TEXT NOT NULL CHECK (length(opened_on) = 10),
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  PRIMARY KEY (lot_id, deed_id)
) ${strict};
CREATE INDEX lot_opening_deed ON lot_opening (deed_id);

CREATE TABLE batch (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  kind TEXT NOT NULL CHECK (kind IN ('CAST', 'POUR')),
  mark ${whole} NOT NULL UNIQUE REFERENCES mark (number),
  card TEXT NOT NULL,
  card_version ${whole} NOT NULL,
  plan TEXT NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX batch_deed ON batch (deed_id);
CREATE INDEX batch_kind ON batch (kind, id);

CREATE TABLE batch_finish (
  batch_id ${whole} NOT NULL REFERENCES batch (id),
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  PRIMARY KEY (batch_id, deed_id)
) ${strict};
CREATE INDEX batch_finish_deed ON batch_finish (deed_id);

CREATE TABLE batch_step (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  batch_id ${whole} NOT NULL REFERENCES batch (id),
  step_key TEXT NOT NULL CHECK (step_key <> ''),
  temperature_c ${real},
  note TEXT NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX batch_step_batch ON batch_step (batch_id, id);
CREATE INDEX batch_step_deed ON batch_step (deed_id);

-- lot_id is empty for what was used though the ledger did not have it.
CREATE TABLE batch_step_amount (
  step_id ${whole} NOT NULL REFERENCES batch_step (id),
  line ${whole} NOT NULL CHECK (line > 0),
  material TEXT NOT NULL CHECK (material <> ''),
  lot_id ${whole} REFERENCES lot (id),
  unit_kind TEXT NOT NULL CHECK (unit_kind IN ('MASS', 'VOLUME', 'COUNT')),
  units ${whole} NOT NULL CHECK (units > 0),
  PRIMARY KEY (step_id, line)
) ${strict};
CREATE INDEX batch_step_amount_lot ON batch_step_amount (lot_id);

CREATE TABLE movement (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  lot_id ${whole} NOT NULL REFERENCES lot (id),
  units ${whole} NOT NULL CHECK (units <> 0),
  cause TEXT NOT NULL CHECK (cause IN
    ('RECEIVED', 'DRAWN', 'RETURNED', 'COUNTED', 'WASTE', 'TEST', 'GIFT', 'SOLD', 'REVERSED')),
  batch_id ${whole} REFERENCES batch (id),
  reverses ${whole} REFERENCES movement (id),
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  CHECK ((reverses IS NULL) = (cause <> 'REVERSED'))
) ${strict};
CREATE INDEX movement_lot ON movement (lot_id, id, units);
CREATE INDEX movement_batch ON movement (batch_id, lot_id, units);
CREATE INDEX movement_deed ON movement (deed_id);
CREATE INDEX movement_reverses ON movement (reverses);

-- Kept for speed, worked out from movement by a trigger: what is left of a lot, never below zero.
CREATE TABLE lot_balance (
  lot_id ${whole} PRIMARY KEY REFERENCES lot (id),
  units ${whole} NOT NULL CHECK (units >= 0)
) ${strict};

CREATE TABLE piece (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  mark ${whole} NOT NULL UNIQUE REFERENCES mark (number),
  vessel_design TEXT NOT NULL CHECK (vessel_design <> ''),
  made_in ${whole} NOT NULL REFERENCES batch (id),
  vessel_lot ${whole} REFERENCES lot (id),
  refill_of ${whole} REFERENCES piece (id),
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX piece_made_in ON piece (made_in, id);
CREATE INDEX piece_vessel_lot ON piece (vessel_lot);
CREATE INDEX piece_refill ON piece (refill_of);
CREATE INDEX piece_deed ON piece (deed_id);

CREATE TABLE order_line (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  order_number TEXT NOT NULL CHECK (order_number <> ''),
  design TEXT NOT NULL CHECK (design <> ''),
  nth ${whole} NOT NULL CHECK (nth > 0),
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX order_line_key ON order_line (order_number, design, nth);
CREATE INDEX order_line_deed ON order_line (deed_id);

CREATE TABLE piece_event (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  piece_id ${whole} NOT NULL REFERENCES piece (id),
  step TEXT NOT NULL CHECK (step <> ''),
  at_ms ${whole} NOT NULL,
  batch_id ${whole} REFERENCES batch (id),
  order_line_id ${whole} REFERENCES order_line (id),
  grade TEXT CHECK (grade IN ('FIRST', 'SECOND', 'PLANTER', 'SCRAP')),
  design TEXT,
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX piece_event_piece ON piece_event (piece_id, id);
CREATE INDEX piece_event_batch ON piece_event (batch_id, piece_id);
CREATE INDEX piece_event_order_line ON piece_event (order_line_id, piece_id);
CREATE INDEX piece_event_deed ON piece_event (deed_id);

-- Kept for speed, worked out from piece_event: where a piece stands.
CREATE TABLE piece_now (
  piece_id ${whole} PRIMARY KEY REFERENCES piece (id),
  design TEXT NOT NULL,
  state TEXT NOT NULL,
  vessel_design TEXT NOT NULL,
  held_wax ${whole} NOT NULL CHECK (held_wax IN (0, 1)),
  order_line_id ${whole}
) ${strict};
CREATE INDEX piece_now_design ON piece_now (design, state, piece_id);
CREATE INDEX piece_now_state ON piece_now (state, piece_id);
CREATE INDEX piece_now_tight ON piece_now (vessel_design, held_wax);
CREATE INDEX piece_now_order_line ON piece_now (order_line_id);

CREATE TABLE tray (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  label TEXT NOT NULL CHECK (label <> ''),
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX tray_deed ON tray (deed_id);

CREATE TABLE tray_piece (
  tray_id ${whole} NOT NULL REFERENCES tray (id),
  piece_id ${whole} NOT NULL REFERENCES piece (id),
  PRIMARY KEY (tray_id, piece_id)
) ${strict};
CREATE INDEX tray_piece_piece ON tray_piece (piece_id, tray_id);

CREATE TABLE tray_mixed (
  tray_id ${whole} NOT NULL REFERENCES tray (id),
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  PRIMARY KEY (tray_id, deed_id)
) ${strict};
CREATE INDEX tray_mixed_deed ON tray_mixed (deed_id);
