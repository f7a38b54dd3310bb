-- name: observation_add
INSERT INTO observation (patient_id, at, day, about, value, body, source, person_id, author,
  event)
VALUES (:patient_id, :at, :day, :about, :value, :body, :source, :person_id, :author, :event);

-- name: observations
SELECT id, at, day, body, source, person_id FROM observation
WHERE patient_id = :patient_id AND state = 'stands' ORDER BY at, id;

-- name: observation_retract
UPDATE observation SET state = :state
WHERE patient_id = :patient_id AND source = :source AND state = 'stands';

-- name: cases_of
SELECT id, patient_id, matter, urgency, state, opened_at, deadline_at, pages, policy, body,
  acknowledged_by
FROM case_file WHERE patient_id = :patient_id AND state <> 'closed' ORDER BY opened_at;

-- name: cases_closed
SELECT id, matter, urgency, closed_at FROM case_file
WHERE patient_id = :patient_id AND state = 'closed' AND closed_by <> 'bot' AND closed_at > :since
ORDER BY closed_at, id;

-- name: cases_open
SELECT id, patient_id, matter, urgency, state, opened_at, deadline_at, pages, policy, body,
  acknowledged_by
FROM case_file WHERE state <> 'closed' ORDER BY deadline_at;

-- Open cases, or the one of this id: whether they have reached nobody stands in the body.
-- name: cases_waiting
SELECT id, body FROM case_file
WHERE state IN ('open', 'acknowledged') AND (:id IS NULL OR id = :id);

-- name: case_level
SELECT patient_id, urgency, state FROM case_file WHERE id = :id;

-- name: case_body
UPDATE case_file SET body = :body WHERE id = :id;

-- name: cases_count
SELECT count(*) AS n FROM case_file WHERE patient_id = :patient_id;

-- name: case_patient
SELECT patient_id FROM case_file WHERE id = :id;

-- name: case_put
INSERT INTO case_file
  (id, patient_id, matter, urgency, state, opened_at, deadline_at, pages, policy, body)
VALUES (:id, :patient_id, :matter, :urgency, :state, :opened_at, :deadline_at, :pages, :policy,
  :body)
ON CONFLICT (id) DO UPDATE SET urgency = excluded.urgency, state = excluded.state,
  deadline_at = excluded.deadline_at,
  pages = excluded.pages, policy = excluded.policy, body = excluded.body;

-- name: case_acknowledged
UPDATE case_file SET acknowledged_at = coalesce(acknowledged_at, :now), acknowledged_by = :by
WHERE id = :id;

-- name: case_answered
UPDATE case_file SET answered_at = coalesce(answered_at, :now),
  answered_by = coalesce(answered_by, :by),
  acknowledged_at = coalesce(acknowledged_at, :now),
  acknowledged_by = coalesce(acknowledged_by, :by)
WHERE id = :id;

-- name: case_closed
UPDATE case_file SET closed_at = :now, closed_by = :by, outcome = :outcome WHERE id = :id;

-- name: case_note
UPDATE case_file SET note = :note WHERE id = :id;

-- name: log_add
INSERT INTO log
  (id, patient_id, at, kind, author, text, data, salt, digest, prev_hash, hash,
  event, person_id, member_id)
VALUES (:id, :patient_id, :at, :kind, :author, :text, :data, :salt, :digest, :prev, :hash,
  :event, :person_id, :member_id);

-- name: log_of
SELECT id, at, kind, author, text, data, event, person_id, member_id FROM log WHERE patient_id = :patient_id ORDER BY id;

-- name: log_tail
SELECT id, at, kind, author, text, data, event, person_id, member_id FROM (
  SELECT id, at, kind, author, text, data, event, person_id, member_id FROM log
  WHERE patient_id = :patient_id ORDER BY id DESC LIMIT :most) AS tail
ORDER BY id;

-- name: log_nobody
SELECT id, at, kind, author, text, data, event, person_id, member_id FROM log WHERE patient_id IS NULL ORDER BY id;

-- Whether trouble was told of already.
-- Whether an entry is of an update, or tells of its failure.
-- name: log_of_update
SELECT 1 AS there FROM log WHERE event IN (:event, :failed) LIMIT 1;

-- name: log_told
SELECT 1 AS there FROM log WHERE event = :event AND kind = 'failed' LIMIT 1;

-- name: log_written
SELECT at, patient_id, kind, text, data FROM log
WHERE kind IN ('staff', 'note', 'plan', 'hold', 'release', 'ended', 'left', 'link', 'desk')
  AND at >= :since AND source = :source
ORDER BY at, id;

-- name: cases_silence
UPDATE case_file SET state = 'closed', closed_at = :now, closed_by = 'bot', outcome = 'ended'
WHERE patient_id = :patient_id AND state <> 'closed';

-- name: wound_put
INSERT INTO wound_check (patient_id, day, asked_at, told, told_at, person_id, drafts)
VALUES (:patient_id, :day, :asked_at, :told, :told_at, :person_id, :drafts)
ON CONFLICT (patient_id, day) DO UPDATE SET told = excluded.told, told_at = excluded.told_at,
  person_id = excluded.person_id, drafts = excluded.drafts;

-- name: wounds_of
SELECT day, asked_at, told, told_at, person_id, drafts FROM wound_check
WHERE patient_id = :patient_id ORDER BY day;

-- name: hold_put
INSERT INTO hold (id, patient_id, body, since, event)
VALUES (:id, :patient_id, :body, :since, :event)
ON CONFLICT (id) DO UPDATE SET body = excluded.body, since = excluded.since,
  ended_at = NULL, ended_by_member = NULL, ended_by = NULL;

-- name: hold_end
UPDATE hold SET ended_at = :now, ended_by_member = :member, ended_by = :by
WHERE id = :id AND patient_id = :patient_id AND ended_at IS NULL;

-- name: holds_standing
SELECT patient_id, body FROM hold WHERE ended_at IS NULL ORDER BY since, id;

-- name: holds_of
SELECT body FROM hold WHERE patient_id = :patient_id AND ended_at IS NULL ORDER BY since, id;

-- name: holds_released
SELECT body, ended_at FROM hold
WHERE patient_id = :patient_id AND ended_at IS NOT NULL AND ended_by_member IS NOT NULL
ORDER BY ended_at, id;
