-- Times are UTC text of fixed width (2026-03-04T20:00:00.000000Z); JSON is text.

CREATE TABLE setting (
    key TEXT PRIMARY KEY,
    value TEXT NOT NULL
);

-- Updates as they came, kept before they are confirmed to the platform.
CREATE TABLE inbox (
    update_id INTEGER PRIMARY KEY,
    body TEXT NOT NULL,
    received_at TEXT NOT NULL,
    state TEXT NOT NULL DEFAULT 'waiting' CHECK (state IN ('waiting', 'done', 'failed')),
    attempts INTEGER NOT NULL DEFAULT 0,
    error TEXT
);
CREATE INDEX inbox_waiting ON inbox (update_id) WHERE state = 'waiting';

-- What is to be sent; written in the transaction of what caused it, sent afterwards.
CREATE TABLE outbox (
    id INTEGER PRIMARY KEY,
    dedupe TEXT NOT NULL UNIQUE,
    kind TEXT NOT NULL CHECK (kind IN ('send', 'edit', 'answer')),
    chat_id INTEGER NOT NULL,
    body TEXT NOT NULL,
    topic TEXT NOT NULL DEFAULT '',
    patient_id INTEGER,
    urgent INTEGER NOT NULL DEFAULT 0,
    due_at TEXT NOT NULL,
    state TEXT NOT NULL DEFAULT 'waiting'
        CHECK (state IN ('waiting', 'sending', 'sent', 'gone', 'refused')),
    attempts INTEGER NOT NULL DEFAULT 0,
    uncertain INTEGER NOT NULL DEFAULT 0,
    message_id INTEGER,
    error TEXT,
    created_at TEXT NOT NULL,
    sent_at TEXT
);
CREATE INDEX outbox_waiting ON outbox (urgent DESC, due_at, id) WHERE state = 'waiting';
CREATE INDEX outbox_order ON outbox (chat_id, id) WHERE state IN ('waiting', 'sending');
CREATE INDEX outbox_message ON outbox (chat_id, message_id) WHERE message_id IS NOT NULL;

CREATE TABLE person (
    id INTEGER PRIMARY KEY,
    user_id INTEGER NOT NULL UNIQUE,
    chat_id INTEGER NOT NULL,
    name TEXT NOT NULL,
    lang TEXT NOT NULL,
    reachable INTEGER NOT NULL DEFAULT 1,
    joined_at TEXT NOT NULL
);

-- Staff chats in the order in which they are paged; rank 0 is the clinic's own chat.
CREATE TABLE desk (
    chat_id INTEGER PRIMARY KEY,
    rank INTEGER NOT NULL,
    name TEXT NOT NULL,
    joined_at TEXT NOT NULL
);

-- People of the practice. Who is not here may not act in a staff chat.
CREATE TABLE staff (
    id INTEGER PRIMARY KEY,
    user_id INTEGER NOT NULL UNIQUE,
    chat_id INTEGER,
    name TEXT NOT NULL,
    role TEXT NOT NULL CHECK (role IN ('staff', 'clinician', 'administrator')),
    joined_at TEXT NOT NULL,
    removed_at TEXT
);

CREATE TABLE patient (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    plan TEXT NOT NULL,
    protocol TEXT NOT NULL,
    state TEXT NOT NULL DEFAULT 'active' CHECK (state IN ('active', 'paused', 'ended')),
    enrolled_at TEXT NOT NULL,
    enrolled_by TEXT NOT NULL,
    last_heard_at TEXT,
    ended_at TEXT
);

CREATE TABLE caregiver (
    patient_id INTEGER NOT NULL REFERENCES patient (id),
    person_id INTEGER NOT NULL REFERENCES person (id),
    joined_at TEXT NOT NULL,
    left_at TEXT,
    hours TEXT,
    wants TEXT,
    PRIMARY KEY (patient_id, person_id)
);
CREATE INDEX caregiver_person ON caregiver (person_id);

-- One-time links; only a digest of the code is kept.
CREATE TABLE invitation (
    digest TEXT PRIMARY KEY,
    kind TEXT NOT NULL CHECK (kind IN ('owner', 'desk', 'staff', 'review')),
    patient_id INTEGER REFERENCES patient (id),
    rank INTEGER,
    name TEXT,
    role TEXT,
    made_at TEXT NOT NULL,
    made_by TEXT NOT NULL,
    expires_at TEXT NOT NULL,
    used_at TEXT,
    used_by INTEGER
);

CREATE TABLE prompt (
    id INTEGER PRIMARY KEY,
    patient_id INTEGER NOT NULL REFERENCES patient (id),
    key TEXT NOT NULL,
    due_at TEXT NOT NULL,
    day INTEGER NOT NULL,
    sent_at TEXT,
    reminded_at TEXT,
    UNIQUE (patient_id, key)
);

-- One line of a prompt, and what became of it.
CREATE TABLE item (
    id INTEGER PRIMARY KEY,
    patient_id INTEGER NOT NULL REFERENCES patient (id),
    prompt_id INTEGER NOT NULL REFERENCES prompt (id),
    item_id TEXT NOT NULL,
    kind TEXT NOT NULL,
    med TEXT,
    slot_at TEXT,
    body TEXT NOT NULL,
    state TEXT NOT NULL DEFAULT 'planned'
        CHECK (state IN ('planned', 'open', 'answered', 'unanswered', 'held')),
    choice TEXT,
    by_name TEXT,
    at TEXT,
    source TEXT,
    UNIQUE (patient_id, item_id)
);
CREATE INDEX item_prompt ON item (prompt_id);
CREATE INDEX item_dose ON item (patient_id, slot_at) WHERE kind = 'dose';

-- What falls due: prompts, reminders, pages, silence; the tick claims from here.
CREATE TABLE due (
    key TEXT PRIMARY KEY,
    patient_id INTEGER,
    kind TEXT NOT NULL,
    due_at TEXT NOT NULL,
    data TEXT NOT NULL DEFAULT '{}',
    state TEXT NOT NULL DEFAULT 'waiting' CHECK (state IN ('waiting', 'done', 'failed')),
    attempts INTEGER NOT NULL DEFAULT 0,
    error TEXT
);
CREATE INDEX due_waiting ON due (due_at) WHERE state = 'waiting';
CREATE INDEX due_patient ON due (patient_id) WHERE state = 'waiting';

CREATE TABLE observation (
    id INTEGER PRIMARY KEY,
    patient_id INTEGER NOT NULL REFERENCES patient (id),
    at TEXT NOT NULL,
    day INTEGER NOT NULL,
    about TEXT NOT NULL,
    value TEXT NOT NULL,
    body TEXT NOT NULL,
    source TEXT NOT NULL,
    person_id INTEGER,
    author TEXT NOT NULL,
    state TEXT NOT NULL DEFAULT 'stands' CHECK (state IN ('stands', 'corrected', 'undone'))
);
CREATE INDEX observation_patient ON observation (patient_id, at);
CREATE INDEX observation_source ON observation (patient_id, source);

CREATE TABLE case_file (
    id TEXT PRIMARY KEY,
    patient_id INTEGER NOT NULL REFERENCES patient (id),
    matter TEXT NOT NULL,
    urgency INTEGER NOT NULL,
    state TEXT NOT NULL DEFAULT 'open'
        CHECK (state IN ('open', 'acknowledged', 'answered', 'closed')),
    opened_at TEXT NOT NULL,
    deadline_at TEXT NOT NULL,
    acknowledged_at TEXT,
    acknowledged_by TEXT,
    answered_at TEXT,
    answered_by TEXT,
    closed_at TEXT,
    closed_by TEXT,
    outcome TEXT,
    note TEXT,
    pages INTEGER NOT NULL DEFAULT 0,
    policy TEXT NOT NULL,
    body TEXT NOT NULL
);
CREATE INDEX case_patient ON case_file (patient_id);
CREATE INDEX case_open ON case_file (state) WHERE state <> 'closed';

-- A group that was upgraded: its former ids, for buttons that were made for them.
CREATE TABLE chat_moved (
    old INTEGER PRIMARY KEY,
    new INTEGER NOT NULL
);

-- What a chat is in the middle of, so that a restart does not forget it.
CREATE TABLE thread (
    chat_id INTEGER PRIMARY KEY,
    body TEXT NOT NULL,
    at TEXT NOT NULL
);

-- Everything said and decided, in order; rows are only ever added.
CREATE TABLE log (
    id INTEGER PRIMARY KEY,
    patient_id INTEGER,
    at TEXT NOT NULL,
    kind TEXT NOT NULL,
    author TEXT NOT NULL,
    text TEXT NOT NULL,
    data TEXT NOT NULL DEFAULT '{}'
);
CREATE INDEX log_patient ON log (patient_id, id);
