-- name: whole_patient
SELECT id, plan, protocol, state, enrolled_at, last_heard_at, ended_at
FROM patient WHERE id = :id;

-- name: whole_carers
SELECT p.id, p.name, p.lang, p.reachable, c.joined_at, c.left_at
FROM caregiver AS c JOIN person AS p ON p.id = c.person_id
WHERE c.patient_id = :patient_id ORDER BY c.joined_at, p.id;

-- name: whole_observations
SELECT id, at, day, body, source, person_id, author, state, event FROM observation
WHERE patient_id = :patient_id ORDER BY at, id;

-- name: whole_entries
SELECT i.id, i.body, i.state, i.choice, i.by_name, i.at, p.due_at, p.day, p.sent_at
FROM item AS i JOIN prompt AS p ON p.id = i.prompt_id
WHERE i.patient_id = :patient_id ORDER BY p.due_at, i.id;

-- name: whole_cases
SELECT id, patient_id, matter, urgency, state, opened_at, deadline_at, acknowledged_at,
  acknowledged_by, answered_at, answered_by, closed_at, closed_by, outcome, note, pages, body
FROM case_file WHERE patient_id = :patient_id ORDER BY opened_at, id;

-- name: cohort_patient
SELECT plan, ended_at, last_heard_at FROM patient WHERE id = :id;

-- name: cohort_use
SELECT day, body FROM observation
WHERE patient_id = :patient_id AND about = 'weight_bearing' AND state = 'stands'
ORDER BY at, id;

-- name: cohort_items
SELECT i.item_id, i.kind, i.med, i.state, i.choice, p.day
FROM item AS i JOIN prompt AS p ON p.id = i.prompt_id
WHERE i.patient_id = :patient_id AND p.sent_at IS NOT NULL AND i.kind <> 'notice';

-- name: patients_after
SELECT patient_id AS id FROM log WHERE id > :after AND patient_id IS NOT NULL
UNION SELECT patient_id FROM case_file WHERE state <> 'closed';

-- name: whole_pictures
SELECT id, kind, at, day, caption, state, sha256, source FROM media
WHERE patient_id = :patient_id ORDER BY at, id;
