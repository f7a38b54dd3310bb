-- name: review_enter
INSERT INTO review_session (digest, member_id, began_at, expires_at)
VALUES (:digest, :member_id, :now, :expires_at);

-- name: review_member
SELECT s.id, s.user_id, s.name, s.role, s.chat_id
FROM review_session AS r JOIN staff AS s ON s.id = r.member_id
WHERE r.digest = :digest AND r.ended_at IS NULL AND r.expires_at > :now
  AND s.removed_at IS NULL;

-- name: review_leave
UPDATE review_session SET ended_at = :now WHERE digest = :digest AND ended_at IS NULL;

-- name: review_invited
SELECT i.expires_at, i.used_at, s.id, s.user_id, s.name, s.role, s.chat_id
FROM invitation AS i JOIN staff AS s ON s.id = i.member_id
WHERE i.digest = :digest AND i.kind = 'review' AND s.removed_at IS NULL;

-- name: review_patients
SELECT p.id, p.name, p.state, p.enrolled_at, p.last_heard_at,
  f.owner, f.procedure, f.clinician, f.zone, f.surgery
FROM patient AS p JOIN patient_facts AS f ON f.id = p.id
WHERE p.state <> 'ended' OR :ended = 1 OR p.id IN (SELECT patient_id FROM case_file WHERE state <> 'closed');

-- name: review_patient
SELECT p.id, p.name, p.state, p.enrolled_at, p.last_heard_at,
  f.owner, f.procedure, f.clinician, f.zone, f.surgery
FROM patient AS p JOIN patient_facts AS f ON f.id = p.id
WHERE p.id = :id AND (p.state <> 'ended' OR :ended = 1
  OR p.id IN (SELECT patient_id FROM case_file WHERE state <> 'closed'));

-- name: review_began
SELECT at FROM log WHERE patient_id = :patient_id ORDER BY id LIMIT 1;

-- name: review_count
SELECT count(*) AS n FROM patient;

-- name: review_cases
SELECT id, patient_id, matter, urgency, state, deadline_at, acknowledged_by
FROM case_file WHERE state <> 'closed' ORDER BY deadline_at, id;

-- name: review_last_said
SELECT id, at, author, text FROM log
WHERE patient_id = :patient_id AND kind = 'said' ORDER BY id DESC LIMIT 1;

-- name: review_last_about
SELECT day, body FROM observation
WHERE patient_id = :patient_id AND about = :about AND state = 'stands'
ORDER BY at DESC, id DESC LIMIT 1;

-- name: review_doses
SELECT count(*) AS due,
  coalesce(sum(CASE WHEN choice = 'given' THEN 1 ELSE 0 END), 0) AS given FROM item
WHERE patient_id = :patient_id AND kind = 'dose' AND slot_at <= :now
  AND state IN ('answered', 'unanswered');

-- name: review_seen
SELECT before, before_at, upto, at FROM review_seen
WHERE member_id = :member_id AND patient_id = :patient_id;

-- name: review_see
INSERT INTO review_seen (member_id, patient_id, before, before_at, upto, at)
VALUES (:member_id, :patient_id, :before, :before_at, :upto, :now)
ON CONFLICT (member_id, patient_id) DO UPDATE
SET before = excluded.before, before_at = excluded.before_at, upto = excluded.upto,
  at = excluded.at;

-- name: review_statement
SELECT id, at, day, body, source, person_id, author, state, event FROM observation
WHERE patient_id = :patient_id AND id = :id;

-- name: review_lines
SELECT id, kind, med, body FROM item WHERE patient_id = :patient_id AND source = :source;

-- name: review_sources
SELECT id, source FROM item WHERE patient_id = :patient_id AND source IS NOT NULL;

-- name: review_words_of
SELECT id, author, text FROM log_heard
WHERE patient_id = :patient_id AND source = :source ORDER BY id DESC LIMIT 1;

-- name: review_picture
SELECT path, kind, day FROM media
WHERE patient_id = :patient_id AND id = :id AND state = 'kept';

-- name: observation_correct
UPDATE observation SET state = 'corrected'
WHERE patient_id = :patient_id AND id = :id AND state = 'stands';
