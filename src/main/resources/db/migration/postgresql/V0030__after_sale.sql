-- What came after a sale: the register of returns, complaints and incidents.

CREATE TABLE after_sale (
  id ${whole} PRIMARY KEY CHECK (id > 0),
  kind TEXT NOT NULL CHECK (kind <> ''),
  piece_id ${whole} REFERENCES piece (id),
  order_number TEXT,
  what TEXT NOT NULL,
  learned_on TEXT NOT NULL CHECK (length(learned_on) = 10),
  words TEXT NOT NULL,
  deed_id ${whole} NOT NULL REFERENCES deed (id),
  CHECK (piece_id IS NOT NULL OR order_number IS NOT NULL)
) ${strict};
CREATE INDEX after_sale_piece ON after_sale (piece_id);
CREATE INDEX after_sale_order ON after_sale (order_number);
CREATE INDEX after_sale_deed ON after_sale (deed_id);

CREATE TRIGGER after_sale_only_grows BEFORE UPDATE OR DELETE OR TRUNCATE ON after_sale
  FOR EACH STATEMENT EXECUTE FUNCTION only_grows();
