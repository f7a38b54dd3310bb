-- Rows that carry facts are sealed: see bot/store/sealed_rows.py. touched: what the transaction
-- under way has changed; what is found there before one was touched by another hand (strange),
-- and is never sealed as ours. A trigger is one line each: statements end where a
-- line ends with a semicolon. Rows from before are sealed in steps.py.
CREATE TABLE touched (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    key TEXT NOT NULL,
    strange INTEGER NOT NULL DEFAULT 0
);
CREATE TABLE sealed_row (
    name TEXT NOT NULL,
    key TEXT NOT NULL,
    salt TEXT NOT NULL,
    digest TEXT NOT NULL,
    PRIMARY KEY (name, key)
) WITHOUT ROWID;
CREATE TABLE sealed_sum (
    name TEXT PRIMARY KEY,
    sum TEXT NOT NULL
) WITHOUT ROWID;
CREATE TRIGGER person_touched_insert AFTER INSERT ON person
  BEGIN INSERT INTO touched (name, key) VALUES ('person', new.id); END;
CREATE TRIGGER person_touched_update AFTER UPDATE ON person
  BEGIN INSERT INTO touched (name, key) VALUES ('person', old.id), ('person', new.id); END;
CREATE TRIGGER person_touched_delete AFTER DELETE ON person
  BEGIN INSERT INTO touched (name, key) VALUES ('person', old.id); END;
CREATE TRIGGER staff_touched_insert AFTER INSERT ON staff
  BEGIN INSERT INTO touched (name, key) VALUES ('staff', new.id); END;
CREATE TRIGGER staff_touched_update AFTER UPDATE ON staff
  BEGIN INSERT INTO touched (name, key) VALUES ('staff', old.id), ('staff', new.id); END;
CREATE TRIGGER staff_touched_delete AFTER DELETE ON staff
  BEGIN INSERT INTO touched (name, key) VALUES ('staff', old.id); END;
CREATE TRIGGER patient_touched_insert AFTER INSERT ON patient
  BEGIN INSERT INTO touched (name, key) VALUES ('patient', new.id); END;
CREATE TRIGGER patient_touched_update AFTER UPDATE ON patient
  BEGIN INSERT INTO touched (name, key) VALUES ('patient', old.id), ('patient', new.id); END;
CREATE TRIGGER patient_touched_delete AFTER DELETE ON patient
  BEGIN INSERT INTO touched (name, key) VALUES ('patient', old.id); END;
CREATE TRIGGER prompt_touched_insert AFTER INSERT ON prompt
  BEGIN INSERT INTO touched (name, key) VALUES ('prompt', new.id); END;
CREATE TRIGGER prompt_touched_update AFTER UPDATE ON prompt
  BEGIN INSERT INTO touched (name, key) VALUES ('prompt', old.id), ('prompt', new.id); END;
CREATE TRIGGER prompt_touched_delete AFTER DELETE ON prompt
  BEGIN INSERT INTO touched (name, key) VALUES ('prompt', old.id); END;
CREATE TRIGGER item_touched_insert AFTER INSERT ON item
  BEGIN INSERT INTO touched (name, key) VALUES ('item', new.id); END;
CREATE TRIGGER item_touched_update AFTER UPDATE ON item
  BEGIN INSERT INTO touched (name, key) VALUES ('item', old.id), ('item', new.id); END;
CREATE TRIGGER item_touched_delete AFTER DELETE ON item
  BEGIN INSERT INTO touched (name, key) VALUES ('item', old.id); END;
CREATE TRIGGER observation_touched_insert AFTER INSERT ON observation
  BEGIN INSERT INTO touched (name, key) VALUES ('observation', new.id); END;
CREATE TRIGGER observation_touched_update AFTER UPDATE ON observation
  BEGIN INSERT INTO touched (name, key) VALUES ('observation', old.id), ('observation', new.id); END;
CREATE TRIGGER observation_touched_delete AFTER DELETE ON observation
  BEGIN INSERT INTO touched (name, key) VALUES ('observation', old.id); END;
CREATE TRIGGER case_file_touched_insert AFTER INSERT ON case_file
  BEGIN INSERT INTO touched (name, key) VALUES ('case_file', new.id); END;
CREATE TRIGGER case_file_touched_update AFTER UPDATE ON case_file
  BEGIN INSERT INTO touched (name, key) VALUES ('case_file', old.id), ('case_file', new.id); END;
CREATE TRIGGER case_file_touched_delete AFTER DELETE ON case_file
  BEGIN INSERT INTO touched (name, key) VALUES ('case_file', old.id); END;
CREATE TRIGGER media_touched_insert AFTER INSERT ON media
  BEGIN INSERT INTO touched (name, key) VALUES ('media', new.id); END;
CREATE TRIGGER media_touched_update AFTER UPDATE ON media
  BEGIN INSERT INTO touched (name, key) VALUES ('media', old.id), ('media', new.id); END;
CREATE TRIGGER media_touched_delete AFTER DELETE ON media
  BEGIN INSERT INTO touched (name, key) VALUES ('media', old.id); END;
CREATE TRIGGER review_touched_insert AFTER INSERT ON review
  BEGIN INSERT INTO touched (name, key) VALUES ('review', new.id); END;
CREATE TRIGGER review_touched_update AFTER UPDATE ON review
  BEGIN INSERT INTO touched (name, key) VALUES ('review', old.id), ('review', new.id); END;
CREATE TRIGGER review_touched_delete AFTER DELETE ON review
  BEGIN INSERT INTO touched (name, key) VALUES ('review', old.id); END;
CREATE TRIGGER hold_touched_insert AFTER INSERT ON hold
  BEGIN INSERT INTO touched (name, key) VALUES ('hold', new.id); END;
CREATE TRIGGER hold_touched_update AFTER UPDATE ON hold
  BEGIN INSERT INTO touched (name, key) VALUES ('hold', old.id), ('hold', new.id); END;
CREATE TRIGGER hold_touched_delete AFTER DELETE ON hold
  BEGIN INSERT INTO touched (name, key) VALUES ('hold', old.id); END;
CREATE TRIGGER outbox_touched_insert AFTER INSERT ON outbox
  BEGIN INSERT INTO touched (name, key) VALUES ('outbox', new.id); END;
CREATE TRIGGER outbox_touched_update AFTER UPDATE ON outbox
  BEGIN INSERT INTO touched (name, key) VALUES ('outbox', old.id), ('outbox', new.id); END;
CREATE TRIGGER outbox_touched_delete AFTER DELETE ON outbox
  BEGIN INSERT INTO touched (name, key) VALUES ('outbox', old.id); END;
CREATE TRIGGER desk_touched_insert AFTER INSERT ON desk
  BEGIN INSERT INTO touched (name, key) VALUES ('desk', new.chat_id); END;
CREATE TRIGGER desk_touched_update AFTER UPDATE ON desk
  BEGIN INSERT INTO touched (name, key) VALUES ('desk', old.chat_id), ('desk', new.chat_id); END;
CREATE TRIGGER desk_touched_delete AFTER DELETE ON desk
  BEGIN INSERT INTO touched (name, key) VALUES ('desk', old.chat_id); END;
CREATE TRIGGER lost_chat_touched_insert AFTER INSERT ON lost_chat
  BEGIN INSERT INTO touched (name, key) VALUES ('lost_chat', new.chat_id); END;
CREATE TRIGGER lost_chat_touched_update AFTER UPDATE ON lost_chat
  BEGIN INSERT INTO touched (name, key) VALUES ('lost_chat', old.chat_id), ('lost_chat', new.chat_id); END;
CREATE TRIGGER lost_chat_touched_delete AFTER DELETE ON lost_chat
  BEGIN INSERT INTO touched (name, key) VALUES ('lost_chat', old.chat_id); END;
CREATE TRIGGER chat_moved_touched_insert AFTER INSERT ON chat_moved
  BEGIN INSERT INTO touched (name, key) VALUES ('chat_moved', new.old); END;
CREATE TRIGGER chat_moved_touched_update AFTER UPDATE ON chat_moved
  BEGIN INSERT INTO touched (name, key) VALUES ('chat_moved', old.old), ('chat_moved', new.old); END;
CREATE TRIGGER chat_moved_touched_delete AFTER DELETE ON chat_moved
  BEGIN INSERT INTO touched (name, key) VALUES ('chat_moved', old.old); END;
CREATE TRIGGER due_touched_insert AFTER INSERT ON due
  BEGIN INSERT INTO touched (name, key) VALUES ('due', new.key); END;
CREATE TRIGGER due_touched_update AFTER UPDATE ON due
  BEGIN INSERT INTO touched (name, key) VALUES ('due', old.key), ('due', new.key); END;
CREATE TRIGGER due_touched_delete AFTER DELETE ON due
  BEGIN INSERT INTO touched (name, key) VALUES ('due', old.key); END;
CREATE TRIGGER invitation_touched_insert AFTER INSERT ON invitation
  BEGIN INSERT INTO touched (name, key) VALUES ('invitation', new.digest); END;
CREATE TRIGGER invitation_touched_update AFTER UPDATE ON invitation
  BEGIN INSERT INTO touched (name, key) VALUES ('invitation', old.digest), ('invitation', new.digest); END;
CREATE TRIGGER invitation_touched_delete AFTER DELETE ON invitation
  BEGIN INSERT INTO touched (name, key) VALUES ('invitation', old.digest); END;
CREATE TRIGGER review_session_touched_insert AFTER INSERT ON review_session
  BEGIN INSERT INTO touched (name, key) VALUES ('review_session', new.digest); END;
CREATE TRIGGER review_session_touched_update AFTER UPDATE ON review_session
  BEGIN INSERT INTO touched (name, key) VALUES ('review_session', old.digest), ('review_session', new.digest); END;
CREATE TRIGGER review_session_touched_delete AFTER DELETE ON review_session
  BEGIN INSERT INTO touched (name, key) VALUES ('review_session', old.digest); END;
CREATE TRIGGER caregiver_touched_insert AFTER INSERT ON caregiver
  BEGIN INSERT INTO touched (name, key) VALUES ('caregiver', new.patient_id || ':' || new.person_id); END;
CREATE TRIGGER caregiver_touched_update AFTER UPDATE ON caregiver
  BEGIN INSERT INTO touched (name, key) VALUES ('caregiver', old.patient_id || ':' || old.person_id), ('caregiver', new.patient_id || ':' || new.person_id); END;
CREATE TRIGGER caregiver_touched_delete AFTER DELETE ON caregiver
  BEGIN INSERT INTO touched (name, key) VALUES ('caregiver', old.patient_id || ':' || old.person_id); END;
CREATE TRIGGER wound_check_touched_insert AFTER INSERT ON wound_check
  BEGIN INSERT INTO touched (name, key) VALUES ('wound_check', new.patient_id || ':' || new.day); END;
CREATE TRIGGER wound_check_touched_update AFTER UPDATE ON wound_check
  BEGIN INSERT INTO touched (name, key) VALUES ('wound_check', old.patient_id || ':' || old.day), ('wound_check', new.patient_id || ':' || new.day); END;
CREATE TRIGGER wound_check_touched_delete AFTER DELETE ON wound_check
  BEGIN INSERT INTO touched (name, key) VALUES ('wound_check', old.patient_id || ':' || old.day); END;
