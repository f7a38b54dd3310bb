-- The review pages: who is inside, what each has seen, and the words of the log to search.
ALTER TABLE invitation ADD COLUMN member_id INTEGER REFERENCES staff (id);

-- Only a digest of what the browser holds is kept.
CREATE TABLE review_session (
    digest TEXT PRIMARY KEY,
    member_id INTEGER NOT NULL REFERENCES staff (id),
    began_at TEXT NOT NULL,
    expires_at TEXT NOT NULL,
    ended_at TEXT
);

-- before: the last entry of the log that earlier visits showed; upto: that this one showed.
CREATE TABLE review_seen (
    member_id INTEGER NOT NULL REFERENCES staff (id),
    patient_id INTEGER NOT NULL REFERENCES patient (id),
    before INTEGER NOT NULL,
    before_at TEXT,
    upto INTEGER NOT NULL,
    at TEXT NOT NULL,
    PRIMARY KEY (member_id, patient_id)
);

CREATE INDEX log_said ON log (patient_id, id) WHERE kind = 'said';
CREATE INDEX log_said_all ON log (id) WHERE kind = 'said';
CREATE INDEX observation_topic ON observation (patient_id, about, at);
CREATE INDEX item_source ON item (patient_id, source) WHERE source IS NOT NULL;

-- What statements of both back ends may ask for by name.
CREATE VIEW patient_facts AS
  SELECT id, json_extract(plan, '$.owner') AS owner, json_extract(plan, '$.procedure') AS procedure,
    json_extract(plan, '$.clinician') AS clinician, json_extract(plan, '$.zone') AS zone,
    json_extract(plan, '$.surgery') AS surgery
  FROM patient;
CREATE VIEW log_heard AS
  SELECT id, patient_id, author, text, json_extract(data, '$.source') AS source
  FROM log WHERE kind IN ('said', 'tapped', 'picture');

-- The words of conversations, case and accents put aside. The text itself stays in log.
-- A trigger is one line each: statements end where a line ends with a semicolon.
CREATE VIRTUAL TABLE log_words USING fts5
  (text, content = 'log', content_rowid = 'id', tokenize = 'unicode61 remove_diacritics 2');
INSERT INTO log_words (rowid, text) SELECT id, text FROM log
  WHERE kind IN ('said', 'picture', 'staff', 'note')
    OR (kind = 'sent' AND coalesce(json_extract(data, '$.staff'), 0) = 0);
CREATE TRIGGER log_words_added AFTER INSERT ON log
  WHEN new.kind IN ('said', 'picture', 'staff', 'note')
    OR (new.kind = 'sent' AND coalesce(json_extract(new.data, '$.staff'), 0) = 0)
  BEGIN INSERT INTO log_words (rowid, text) VALUES (new.id, new.text); END;
CREATE TRIGGER log_words_gone AFTER DELETE ON log
  WHEN old.kind IN ('said', 'picture', 'staff', 'note')
    OR (old.kind = 'sent' AND coalesce(json_extract(old.data, '$.staff'), 0) = 0)
  BEGIN INSERT INTO log_words (log_words, rowid, text) VALUES ('delete', old.id, old.text); END;
CREATE TRIGGER log_words_left BEFORE UPDATE OF text, kind, data ON log
  WHEN old.kind IN ('said', 'picture', 'staff', 'note')
    OR (old.kind = 'sent' AND coalesce(json_extract(old.data, '$.staff'), 0) = 0)
  BEGIN INSERT INTO log_words (log_words, rowid, text) VALUES ('delete', old.id, old.text); END;
CREATE TRIGGER log_words_came AFTER UPDATE OF text, kind, data ON log
  WHEN new.kind IN ('said', 'picture', 'staff', 'note')
    OR (new.kind = 'sent' AND coalesce(json_extract(new.data, '$.staff'), 0) = 0)
  BEGIN INSERT INTO log_words (rowid, text) VALUES (new.id, new.text); END;
