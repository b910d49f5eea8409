-- Few of the hundred thousands of facts scrap or grade a piece; these are found without the others.
CREATE INDEX piece_event_scrapped ON piece_event (piece_id) WHERE step = 'SCRAPPED';
CREATE INDEX piece_event_graded ON piece_event (piece_id, id) WHERE grade IS NOT NULL;

PRAGMA user_version = 10;
