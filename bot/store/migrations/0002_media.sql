-- Pictures and films. The file lies beside the database, under path, named by its sha256.
CREATE TABLE media (
    id INTEGER PRIMARY KEY,
    patient_id INTEGER NOT NULL REFERENCES patient (id),
    source TEXT NOT NULL,
    kind TEXT NOT NULL,
    file_id TEXT NOT NULL,
    file_unique TEXT NOT NULL,
    album TEXT,
    day INTEGER NOT NULL,
    at TEXT NOT NULL,
    caption TEXT NOT NULL DEFAULT '',
    person_id INTEGER NOT NULL,
    line_id INTEGER,
    state TEXT NOT NULL DEFAULT 'waiting' CHECK (state IN ('waiting', 'kept', 'failed')),
    path TEXT,
    sha256 TEXT,
    bytes INTEGER,
    width INTEGER,
    height INTEGER,
    verdict TEXT NOT NULL DEFAULT '{}',
    retake INTEGER NOT NULL DEFAULT 0,
    attempts INTEGER NOT NULL DEFAULT 0,
    error TEXT,
    UNIQUE (patient_id, file_unique)
);
CREATE INDEX media_patient ON media (patient_id, at);

-- A recheck shown to the clinician with buttons; its id is that of the picture shown.
CREATE TABLE review (
    id INTEGER PRIMARY KEY REFERENCES media (id),
    patient_id INTEGER NOT NULL REFERENCES patient (id),
    line_id INTEGER NOT NULL,
    shown_at TEXT NOT NULL,
    body TEXT NOT NULL
);
CREATE INDEX review_patient ON review (patient_id);
CREATE INDEX due_media ON due (due_at) WHERE state = 'waiting' AND kind IN ('media', 'review');
