-- name: erase_patient
SELECT id, name, plan, state, enrolled_at FROM patient WHERE id = :id;

-- name: erase_people
SELECT id, user_id, chat_id, name FROM person WHERE chat_id <> 0 ORDER BY id;

-- name: erase_staff
SELECT id, user_id, chat_id, name, removed_at FROM staff ORDER BY id;

-- How a member was called in what they did.
-- name: erase_member_names
SELECT DISTINCT author FROM log WHERE member_id = :id AND kind IN ('staff', 'note');

-- name: erase_staff_put
UPDATE staff SET user_id = -id, chat_id = NULL, name = :name WHERE id = :id;

-- name: erase_person
SELECT id, user_id, chat_id, name FROM person WHERE id = :id;

-- How a person was called in what they did.
-- name: erase_authors
SELECT DISTINCT author FROM log
WHERE person_id = :id AND kind IN ('said', 'tapped', 'picture', 'joined', 'left');

-- name: erase_carers
SELECT person_id, left_at FROM caregiver WHERE patient_id = :patient_id ORDER BY person_id;

-- name: erase_patients
SELECT c.patient_id, c.left_at, p.name, p.state FROM caregiver AS c
JOIN patient AS p ON p.id = c.patient_id WHERE c.person_id = :person_id ORDER BY c.patient_id;

-- name: erase_last
SELECT max(at) AS at FROM log WHERE patient_id = :patient_id
  AND kind NOT IN ('erased', 'viewed', 'entered', 'refused');

-- name: erase_log
SELECT id, kind, author, text, data, event, person_id, member_id FROM log WHERE patient_id = :patient_id ORDER BY id;

-- What says which rows changed, or what was erased, holds no words, and proves what it says.
-- name: erase_log_nobody
SELECT id, kind, author, text, data, event, person_id, member_id FROM log
WHERE id > :after AND patient_id IS NULL AND kind NOT IN ('erased', 'rows')
ORDER BY id LIMIT :most;

-- name: erase_log_put
UPDATE log SET author = :author, text = :text, data = :data, salt = :salt, event = :event,
  erased_in = :erased_in WHERE id = :id;

-- name: erase_inbox
SELECT update_id, body FROM inbox WHERE update_id > :after AND state <> 'waiting'
ORDER BY update_id LIMIT :most;

-- name: erase_inbox_put
UPDATE inbox SET body = :body, error = NULL WHERE update_id = :update_id;

-- name: erase_outbox
SELECT id, dedupe, topic, chat_id, patient_id, body, event FROM outbox
WHERE id > :after AND state NOT IN ('waiting', 'sending') ORDER BY id LIMIT :most;

-- Whether anything is still to be sent to a person, about a patient of theirs, or about nobody
-- in particular (the board): once it is sent, the log would have its words anew.
-- name: erase_waits
SELECT 1 AS there FROM outbox
WHERE state IN ('waiting', 'sending') AND kind = 'send' AND (patient_id IS NULL
  OR chat_id = (SELECT chat_id FROM person WHERE id = :person)
  OR patient_id IN (SELECT patient_id FROM caregiver WHERE person_id = :person))
LIMIT 1;

-- name: erase_under_way
SELECT body FROM outbox WHERE state IN ('waiting', 'sending')
UNION ALL SELECT body FROM inbox WHERE state = 'waiting';

-- name: erase_outbox_put
UPDATE outbox SET dedupe = :dedupe, topic = :topic, chat_id = :chat_id, body = :body,
  event = :event, error = NULL WHERE id = :id;

-- name: erase_person_put
UPDATE person SET user_id = -id, chat_id = 0, reachable = 0, name = :name WHERE id = :id;

-- name: erase_carer_put
UPDATE caregiver SET left_at = coalesce(left_at, :now), hours = NULL, wants = NULL
WHERE person_id = :person_id;

-- What another hand has touched stays known as that, by a key that names nobody; what was sealed
-- of it can be guessed no more.
-- name: erase_strange
SELECT DISTINCT name, key FROM touched WHERE strange = 1;

-- name: erase_strange_put
UPDATE touched SET key = :new WHERE name = :name AND key = :key AND strange = 1;

-- name: erase_strange_seal
UPDATE sealed_row SET key = :new, salt = '' WHERE name = :name AND key = :key;

-- name: erase_threads
SELECT chat_id, body FROM thread ORDER BY chat_id;

-- name: erase_thread_put
UPDATE thread SET body = :body WHERE chat_id = :chat_id;

-- name: erase_patient_put
UPDATE patient SET name = :name, plan = :plan WHERE id = :id;

-- name: erase_rows_media
SELECT id, person_id, source, file_id, file_unique, caption, path FROM media WHERE patient_id = :patient_id;

-- name: erase_media_put
UPDATE media SET source = :source, file_id = :file_id, file_unique = :file_unique,
  caption = :caption
WHERE id = :id;

-- name: erase_media_gone
UPDATE media SET source = :source, file_id = '', file_unique = :file_unique, caption = '',
  state = 'failed', path = NULL, sha256 = NULL, verdict = '{}', error = 'erased' WHERE id = :id;
