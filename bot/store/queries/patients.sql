-- name: patient
SELECT id, name, plan, protocol, coalesce(ended_why, state) AS state, enrolled_at, last_heard_at
FROM patient WHERE id = :id;

-- name: patient_listed
SELECT id, name, plan, protocol, coalesce(ended_why, state) AS state, enrolled_at, last_heard_at
FROM patient WHERE id = :id AND (state <> 'ended' OR :ended = 1);

-- The first of its columns: those behind them lie on further pages.
-- name: patient_names
SELECT id, name FROM patient ORDER BY id;

-- name: patients_named
SELECT id FROM patient WHERE lower(name) = :wanted OR CAST(id AS TEXT) = :wanted ORDER BY id;

-- name: patient_name
SELECT name FROM patient WHERE id = :id;

-- Where else their numbers stand.
-- name: patient_numbers
SELECT patient_id AS id FROM prompt UNION
SELECT patient_id FROM caregiver UNION
SELECT patient_id FROM invitation WHERE patient_id IS NOT NULL
ORDER BY 1;

-- name: patient_add
INSERT INTO patient (name, plan, protocol, enrolled_at, enrolled_by)
VALUES (:name, :plan, :protocol, :now, :by) RETURNING id;

-- name: patient_heard
UPDATE patient SET last_heard_at = :now WHERE id = :id;

-- name: patient_end
UPDATE patient SET state = 'ended', ended_at = coalesce(ended_at, :now),
  ended_why = coalesce(:why, ended_why)
WHERE id = :id;

-- name: patient_plan
UPDATE patient SET plan = :plan WHERE id = :id;

-- name: prompt_add
INSERT INTO prompt (patient_id, key, due_at, day, moved)
VALUES (:patient_id, :key, :due_at, :day, :moved)
ON CONFLICT (patient_id, key) DO UPDATE SET due_at = excluded.due_at
RETURNING id;

-- name: item_add
INSERT INTO item (patient_id, prompt_id, item_id, kind, med, slot_at, body)
VALUES (:patient_id, :prompt_id, :item_id, :kind, :med, :slot_at, :body)
ON CONFLICT (patient_id, item_id) DO UPDATE
SET prompt_id = excluded.prompt_id, slot_at = excluded.slot_at, body = excluded.body
WHERE item.state = 'planned';

-- name: prompts_near
SELECT id, key, due_at, day, sent_at, reminded_at FROM prompt
WHERE patient_id = :patient_id AND due_at >= :since AND due_at <= :until ORDER BY due_at, id;

-- name: prompt_of
SELECT id, key, due_at, day, sent_at, reminded_at FROM prompt
WHERE patient_id = :patient_id AND id = :id;

-- name: items_near
SELECT i.id, i.prompt_id, i.body, i.state, i.choice, i.by_name, i.at, i.source,
  i.person_id
FROM item AS i JOIN prompt AS p ON p.id = i.prompt_id
WHERE p.patient_id = :patient_id AND p.due_at >= :since AND p.due_at <= :until ORDER BY i.id;

-- name: items_of
SELECT id, prompt_id, body, state, choice, by_name, at, source, person_id FROM item
WHERE prompt_id = :prompt_id ORDER BY id;

-- name: doses_near
SELECT id, prompt_id, body, state, choice, by_name, at, source, person_id FROM item
WHERE patient_id = :patient_id AND kind = 'dose' AND slot_at >= :since AND slot_at <= :until
ORDER BY slot_at;

-- name: item_mark
UPDATE item SET state = :state, choice = :choice, by_name = :by_name, at = :at, source = :source,
  person_id = :person_id, event = :event
WHERE id = :id;

-- name: item_move
UPDATE item SET prompt_id = :prompt_id WHERE id = :id;

-- name: prompt_sent
UPDATE prompt SET sent_at = :now WHERE id = :id AND sent_at IS NULL;

-- name: prompt_reminded
UPDATE prompt SET reminded_at = :now WHERE id = :id;

-- name: prompts_drop_items
DELETE FROM item WHERE patient_id = :patient_id AND state = 'planned' AND prompt_id IN (
  SELECT id FROM prompt WHERE patient_id = :patient_id AND sent_at IS NULL AND due_at > :now
    AND moved = 0);

-- name: prompts_drop_due
DELETE FROM due WHERE kind = 'prompt' AND state = 'waiting' AND patient_id = :patient_id
  AND due_at > :now AND NOT EXISTS (
    SELECT 1 FROM prompt AS p WHERE p.patient_id = :patient_id AND p.moved = 1
      AND due.key = 'prompt:' || p.id);

-- name: prompts_drop
DELETE FROM prompt WHERE patient_id = :patient_id AND sent_at IS NULL AND due_at > :now
  AND NOT EXISTS (SELECT 1 FROM item WHERE item.prompt_id = prompt.id);

-- name: due_put
INSERT INTO due (key, patient_id, kind, due_at, data)
VALUES (:key, :patient_id, :kind, :due_at, :data)
ON CONFLICT (key) DO UPDATE SET due_at = excluded.due_at, data = excluded.data,
  state = 'waiting', attempts = 0;

-- Sooner than it stood there, or anew; what stands there for an earlier time stays.
-- name: due_put_sooner
INSERT INTO due (key, patient_id, kind, due_at, data)
VALUES (:key, :patient_id, :kind, :due_at, :data)
ON CONFLICT (key) DO UPDATE SET due_at = excluded.due_at, data = excluded.data,
  state = 'waiting', attempts = 0
WHERE due.state <> 'waiting' OR due.due_at > excluded.due_at;

-- While the clock is not believed only these kinds (a JSON list): what hangs on no hour of the
-- day.
-- name: due_next
SELECT key, patient_id, kind, due_at, data, attempts FROM due
WHERE state = 'waiting' AND due_at <= :now AND kind NOT IN ('media', 'review')
  AND (:only IS NULL OR kind IN (SELECT value FROM json_each(:only)))
ORDER BY due_at, key LIMIT 1;

-- name: due_is_there
SELECT key FROM due
WHERE patient_id = :patient_id AND state = 'waiting' AND kind = :kind AND due_at <= :now LIMIT 1;

-- name: due_mark
UPDATE due SET state = :state, attempts = attempts + 1, error = :error
WHERE key = :key AND due_at = :due_at;

-- name: due_again
UPDATE due SET attempts = :tries, error = :error, due_at = :again
WHERE key = :key AND due_at = :due_at;

-- Rows that an earlier version gave up.
-- name: due_given_up
UPDATE due SET state = 'waiting' WHERE state = 'failed' AND kind IN
  ('board', 'silence', 'end', 'wound', 'forget', 'deadline', 'page', 'pain');

-- name: due_begun
UPDATE due SET attempts = attempts + 1 WHERE key = :key AND due_at = :due_at;

-- name: due_cancel
UPDATE due SET state = 'done' WHERE key = :key AND state = 'waiting';

-- name: due_cancel_patient
UPDATE due SET state = 'done' WHERE patient_id = :patient_id AND state = 'waiting'
  AND kind IN ('prompt', 'remind', 'unanswered', 'silence', 'end');

-- name: due_cancel_wounds
UPDATE due SET state = 'done' WHERE patient_id = :patient_id AND state = 'waiting'
  AND kind = 'wound';

-- name: due_of_kind
SELECT data, due_at FROM due
WHERE patient_id = :patient_id AND kind = :kind AND state = 'waiting';

-- name: due_first
SELECT min(due_at) AS at FROM due WHERE state = 'waiting';

-- name: due_first_prompt
SELECT min(due_at) AS at FROM due
WHERE state = 'waiting' AND kind IN ('prompt', 'remind', 'end')
  AND (:patient_id IS NULL OR patient_id = :patient_id);

-- name: due_lost_cases
SELECT c.id, c.patient_id FROM case_file AS c
WHERE c.state = 'open' AND NOT EXISTS (
  SELECT 1 FROM due AS d WHERE d.key = 'page:' || c.id AND d.state = 'waiting');

-- name: patient_state
UPDATE patient SET state = :state, ended_at = NULL, ended_why = NULL WHERE id = :id;

-- name: due_silence
UPDATE due SET state = 'done' WHERE patient_id = :patient_id AND state = 'waiting';

-- name: due_first_board
INSERT INTO due (key, kind, due_at) VALUES ('board', 'board', :due_at)
ON CONFLICT (key) DO NOTHING;

-- name: item_text
UPDATE item SET body = :body WHERE id = :id;
