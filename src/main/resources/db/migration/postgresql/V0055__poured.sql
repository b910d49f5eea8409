-- Of each candle the pours, the newest found first: how many since one was last burnt.
CREATE INDEX piece_event_poured ON piece_event (design, at_ms, batch_id) WHERE step = 'POURED';
