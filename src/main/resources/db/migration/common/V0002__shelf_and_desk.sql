-- Timers, readings, files, holds, burn tests, settings, plan runs, orders; and the customers, who
-- stand outside the ledger and can be erased.

CREATE TABLE timer (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  label TEXT NOT NULL CHECK (label <> ''),
  subject_kind TEXT NOT NULL,
  subject_id TEXT NOT NULL,
  due_ms ${whole} NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX timer_subject ON timer (subject_kind, subject_id, id);
CREATE INDEX timer_deed ON timer (deed_id);

CREATE TABLE timer_answer (
  timer_id ${whole} NOT NULL REFERENCES timer (id),
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  PRIMARY KEY (timer_id, deed_id)
) ${strict};
CREATE INDEX timer_answer_deed ON timer_answer (deed_id);

CREATE TABLE reading (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  subject_kind TEXT NOT NULL,
  subject_id TEXT NOT NULL,
  quantity TEXT NOT NULL CHECK (quantity <> ''),
  value ${real} NOT NULL,
  taken_ms ${whole} NOT NULL,
  instrument TEXT,
  note TEXT NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX reading_subject ON reading (subject_kind, subject_id, quantity, taken_ms);
CREATE INDEX reading_quantity ON reading (quantity, id);
CREATE INDEX reading_deed ON reading (deed_id);

CREATE TABLE attachment (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  subject_kind TEXT NOT NULL,
  subject_id TEXT NOT NULL,
  sha256 TEXT NOT NULL CHECK (length(sha256) = 64),
  bytes ${whole} NOT NULL CHECK (bytes >= 0),
  media_type TEXT NOT NULL,
  name TEXT NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX attachment_subject ON attachment (subject_kind, subject_id, id);
CREATE INDEX attachment_deed ON attachment (deed_id);

CREATE TABLE hold (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  subject_kind TEXT NOT NULL CHECK (subject_kind IN ('LOT', 'CARD', 'PIECE')),
  subject_id TEXT NOT NULL,
  reason TEXT NOT NULL CHECK (reason <> ''),
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX hold_subject ON hold (subject_kind, subject_id);
CREATE INDEX hold_deed ON hold (deed_id);

CREATE TABLE hold_lift (
  hold_id ${whole} NOT NULL REFERENCES hold (id),
  name TEXT NOT NULL CHECK (length(name) >= 3),
  reason TEXT NOT NULL CHECK (reason <> ''),
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  PRIMARY KEY (hold_id, deed_id)
) ${strict};
CREATE INDEX hold_lift_deed ON hold_lift (deed_id);

CREATE TABLE burn_test (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  candle TEXT NOT NULL CHECK (candle <> ''),
  candle_version ${whole} NOT NULL,
  rules TEXT NOT NULL,
  purpose TEXT NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX burn_test_candle ON burn_test (candle, id);
CREATE INDEX burn_test_deed ON burn_test (deed_id);

CREATE TABLE burn_test_close (
  test_id ${whole} NOT NULL REFERENCES burn_test (id),
  verdict TEXT NOT NULL CHECK (verdict IN ('pass', 'fail', 'not_enough_evidence')),
  reasons TEXT NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  PRIMARY KEY (test_id, deed_id)
) ${strict};
CREATE INDEX burn_test_close_deed ON burn_test_close (deed_id);

CREATE TABLE burn_sample (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  test_id ${whole} NOT NULL REFERENCES burn_test (id),
  label TEXT NOT NULL,
  piece_id ${whole} REFERENCES piece (id),
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX burn_sample_test ON burn_sample (test_id, id);
CREATE INDEX burn_sample_piece ON burn_sample (piece_id);
CREATE INDEX burn_sample_deed ON burn_sample (deed_id);

CREATE TABLE burn_cycle (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  sample_id ${whole} NOT NULL REFERENCES burn_sample (id),
  number ${whole} NOT NULL CHECK (number > 0),
  lit_ms ${whole} NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX burn_cycle_sample ON burn_cycle (sample_id, id);
CREATE INDEX burn_cycle_deed ON burn_cycle (deed_id);

CREATE TABLE burn_cycle_end (
  cycle_id ${whole} NOT NULL REFERENCES burn_cycle (id),
  how TEXT NOT NULL,
  ended_ms ${whole} NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  PRIMARY KEY (cycle_id, deed_id)
) ${strict};
CREATE INDEX burn_cycle_end_deed ON burn_cycle_end (deed_id);

CREATE TABLE burn_look (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  cycle_id ${whole} NOT NULL REFERENCES burn_cycle (id),
  minute ${real} NOT NULL CHECK (minute >= 0),
  mass_g ${real},
  flame_height_mm ${real},
  pool_length_mm ${real},
  pool_width_mm ${real},
  pool_depth_mm ${real},
  wall_c ${real},
  base_c ${real},
  soot TEXT,
  mushroom TEXT,
  secondary_ignition_s ${real},
  after_smoke_s ${real},
  crack ${whole} CHECK (crack IN (0, 1)),
  seep ${whole} CHECK (seep IN (0, 1)),
  smoke ${whole} CHECK (smoke IN (0, 1)),
  note TEXT NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX burn_look_cycle ON burn_look (cycle_id, minute, id);
CREATE INDEX burn_look_deed ON burn_look (deed_id);

CREATE TABLE candle_proof (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  candle TEXT NOT NULL CHECK (candle <> ''),
  candle_version ${whole} NOT NULL,
  test_id ${whole} REFERENCES burn_test (id),
  proved ${whole} NOT NULL CHECK (proved IN (0, 1)),
  statement TEXT NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX candle_proof_candle ON candle_proof (candle, candle_version, id);
CREATE INDEX candle_proof_deed ON candle_proof (deed_id);

CREATE TABLE setting (
  key TEXT NOT NULL CHECK (key <> ''),
  value TEXT NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  PRIMARY KEY (key, deed_id)
) ${strict};
CREATE INDEX setting_deed ON setting (deed_id);

CREATE TABLE plan_run (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  problem_hash TEXT NOT NULL,
  seed ${whole} NOT NULL,
  status TEXT NOT NULL,
  objective ${real},
  bound ${real},
  millis ${whole} NOT NULL,
  body TEXT NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX plan_run_deed ON plan_run (deed_id);

-- The newest terms of a line count: quantity 0 takes the line off the order.
CREATE TABLE order_terms (
  line_id ${whole} NOT NULL REFERENCES order_line (id),
  quantity ${whole} NOT NULL CHECK (quantity >= 0),
  due_on TEXT CHECK (length(due_on) = 10),
  note TEXT,
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  PRIMARY KEY (line_id, deed_id)
) ${strict};
CREATE INDEX order_terms_deed ON order_terms (deed_id);

-- The newest fact of an order counts.
CREATE TABLE order_fact (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  order_number TEXT NOT NULL CHECK (order_number <> ''),
  channel TEXT NOT NULL,
  customer TEXT,
  state TEXT NOT NULL CHECK (state IN ('OPEN', 'PICKED', 'SENT', 'CANCELLED')),
  deed_id ${whole} NOT NULL REFERENCES deed (id)
) ${strict};
CREATE INDEX order_fact_number ON order_fact (order_number, id);
CREATE INDEX order_fact_deed ON order_fact (deed_id);

-- Kept for speed, worked out from order_fact: how an order stands.
CREATE TABLE order_now (
  order_number TEXT PRIMARY KEY CHECK (order_number <> ''),
  channel TEXT NOT NULL,
  customer TEXT,
  state TEXT NOT NULL,
  first_fact ${whole} NOT NULL REFERENCES order_fact (id)
) ${strict};
CREATE INDEX order_now_state ON order_now (state, first_fact);
CREATE INDEX order_now_first ON order_now (first_fact);

CREATE TABLE order_file (
  fingerprint TEXT NOT NULL,
  name TEXT NOT NULL,
  lines ${whole} NOT NULL CHECK (lines >= 0),
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  PRIMARY KEY (fingerprint, deed_id)
) ${strict};
CREATE INDEX order_file_deed ON order_file (deed_id);

-- Not part of the ledger: rows are edited and erased at the customer's wish.
CREATE TABLE customer (
  ref TEXT PRIMARY KEY CHECK (ref <> ''),
  name TEXT NOT NULL,
  address TEXT NOT NULL,
  email TEXT NOT NULL,
  phone TEXT NOT NULL,
  note TEXT NOT NULL
) ${strict};
CREATE INDEX customer_name ON customer (name);
