-- How the wound healed, as the household tells it: asked on day 30, with an implant on day 90.
-- told: the answers (JSON); drafts: what each person has ticked and not sent yet, by their id.
CREATE TABLE wound_check (
    patient_id INTEGER NOT NULL REFERENCES patient (id),
    day INTEGER NOT NULL,
    asked_at TEXT NOT NULL,
    told TEXT,
    told_at TEXT,
    person_id INTEGER,
    drafts TEXT NOT NULL DEFAULT '{}',
    PRIMARY KEY (patient_id, day)
);
