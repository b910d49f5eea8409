-- What was left of one pour and went into another: the trace goes through it, and its share of the
-- cost goes along.

CREATE TABLE batch_carry (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  from_batch ${whole} NOT NULL REFERENCES batch (id),
  to_batch ${whole} NOT NULL REFERENCES batch (id),
  units ${whole} NOT NULL CHECK (units > 0),
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  CHECK (from_batch <> to_batch)
) ${strict};
CREATE INDEX batch_carry_from ON batch_carry (from_batch, to_batch);
CREATE INDEX batch_carry_to ON batch_carry (to_batch, from_batch);
CREATE INDEX batch_carry_deed ON batch_carry (deed_id);

CREATE TRIGGER batch_carry_only_grows BEFORE UPDATE OR DELETE OR TRUNCATE ON batch_carry
  FOR EACH STATEMENT EXECUTE FUNCTION only_grows();
