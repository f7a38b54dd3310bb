-- What is held back from a patient. body: the hold as JSON (bot/model/hold.py), as it stood last.
CREATE TABLE hold (
    id TEXT PRIMARY KEY,
    patient_id INTEGER NOT NULL REFERENCES patient (id),
    body TEXT NOT NULL,
    since TEXT NOT NULL,
    ended_at TEXT,
    ended_by_member INTEGER REFERENCES staff (id),
    ended_by TEXT,
    event TEXT
);
CREATE INDEX hold_standing ON hold (patient_id, since) WHERE ended_at IS NULL;
CREATE INDEX hold_patient ON hold (patient_id);

-- A course that ended with a death is told from one that is over.
ALTER TABLE patient ADD COLUMN ended_why TEXT CHECK (ended_why IN ('died'));
UPDATE patient SET ended_why = 'died' WHERE state = 'ended' AND EXISTS (
  SELECT 1 FROM log AS l WHERE l.patient_id = patient.id AND l.kind = 'plan'
    AND json_extract(l.data, '$.change') = 'died');

-- The event (bot/model/ids.py) that wrote a row, and who caused it. Rows from before have none:
-- nothing is guessed from their times.
ALTER TABLE observation ADD COLUMN event TEXT;
ALTER TABLE outbox ADD COLUMN event TEXT;
ALTER TABLE item ADD COLUMN event TEXT;
ALTER TABLE log ADD COLUMN event TEXT;
ALTER TABLE log ADD COLUMN person_id INTEGER;
ALTER TABLE log ADD COLUMN member_id INTEGER;
CREATE INDEX log_event ON log (event) WHERE event IS NOT NULL;

-- The message or button that an entry comes from: as its data say, never apart from them.
ALTER TABLE log ADD COLUMN source TEXT GENERATED ALWAYS AS
  (CASE WHEN json_valid(data) THEN json_extract(data, '$.source') END) VIRTUAL;
CREATE INDEX log_source ON log (source) WHERE source IS NOT NULL;
DROP INDEX log_written;
DROP VIEW log_heard;
CREATE VIEW log_heard AS
  SELECT id, patient_id, author, text, source FROM log WHERE kind IN ('said', 'tapped', 'picture');

-- Who answered a line. Of old rows where the name says it: one of that name at home, and
-- nobody of the practice is called the same.
ALTER TABLE item ADD COLUMN person_id INTEGER REFERENCES person (id);
UPDATE item SET person_id = (
  SELECT min(p.id) FROM caregiver AS c JOIN person AS p ON p.id = c.person_id
  WHERE c.patient_id = item.patient_id AND p.name = item.by_name HAVING count(*) = 1)
WHERE by_name IS NOT NULL AND NOT EXISTS (SELECT 1 FROM staff AS s WHERE s.name = item.by_name);

-- A prompt of its own for a dose that was moved: a changed plan leaves it alone.
ALTER TABLE prompt ADD COLUMN moved INTEGER NOT NULL DEFAULT 0;
UPDATE prompt SET moved = 1 WHERE key LIKE 'later:%';
