-- name: inbox_keep
INSERT INTO inbox (update_id, body, received_at, lane, turn, urgent)
VALUES (:update_id, :body, :now, :lane, :turn, :urgent)
ON CONFLICT (update_id) DO NOTHING;

-- The last number that waits, and the last of all.
-- name: inbox_last
SELECT
  (SELECT max(update_id) FROM inbox WHERE state = 'waiting' AND update_id < :end) AS waits,
  (SELECT max(update_id) FROM inbox WHERE update_id < :end) AS most;

-- name: inbox_turns
SELECT (SELECT min(turn) FROM inbox WHERE state = 'waiting') AS now,
  (SELECT max(turn) FROM inbox WHERE state = 'waiting' AND lane = :lane) AS mine;

-- The household to which a chat belongs: its first patient's number, and whether an
-- emergency of any patient of theirs is open.
-- name: inbox_home
SELECT min(c.patient_id) AS home, max(CASE WHEN f.id IS NULL THEN 0 ELSE 1 END) AS urgent
FROM person AS p
JOIN caregiver AS c ON c.person_id = p.id AND c.left_at IS NULL
LEFT JOIN case_file AS f ON f.patient_id = c.patient_id AND f.state <> 'closed'
  AND f.urgency = :emergency
WHERE p.chat_id = :chat_id;

-- The lane whose turn it is, an urgent one first; of it the oldest.
-- name: inbox_next
SELECT update_id, body, received_at, attempts, urgent, lane FROM inbox
WHERE state = 'waiting' AND lane = (
  SELECT lane FROM inbox WHERE state = 'waiting' ORDER BY urgent DESC, turn, update_id LIMIT 1)
ORDER BY update_id LIMIT 1;

-- What is done needs no lane any more: it may name a chat.
-- name: inbox_mark
UPDATE inbox SET state = :state, attempts = attempts + 1, error = :error, strange = :strange,
  lane = CASE WHEN :state = 'waiting' THEN lane ELSE '' END
WHERE update_id = :update_id;

-- name: inbox_calm
UPDATE inbox SET urgent = 0 WHERE update_id = :update_id;

-- name: inbox_strange
UPDATE inbox SET strange = 1 WHERE update_id = :update_id;

-- name: inbox_strange_past
SELECT update_id, body FROM inbox
WHERE strange = 1 AND state <> 'waiting' AND received_at < :before
ORDER BY received_at LIMIT :most;

-- name: inbox_stays
UPDATE inbox SET body = :body, error = NULL, strange = 0 WHERE update_id = :update_id;

-- name: inbox_drop
DELETE FROM inbox WHERE update_id = :update_id;

-- Whether an account is or was of somebody at home or of the practice.
-- name: account_known
SELECT 1 AS there FROM person WHERE user_id = :user_id
UNION SELECT 1 FROM staff WHERE user_id = :user_id LIMIT 1;

-- name: begun_put
INSERT INTO begun (key, tries, since) VALUES (:key, 1, :now)
ON CONFLICT (key) DO UPDATE SET tries = begun.tries + 1
RETURNING tries, since;

-- name: begun_ended
DELETE FROM begun WHERE key = :key;

-- name: begun_clear
DELETE FROM begun;

-- name: inbox_words
UPDATE inbox SET body = :body WHERE update_id = :update_id;

-- name: inbox_waiting
SELECT body, received_at FROM inbox WHERE state = 'waiting' ORDER BY update_id LIMIT :most;

-- name: inbox_counts
SELECT state, count(*) AS n FROM inbox GROUP BY state;

-- name: outbox_add
INSERT INTO outbox
  (dedupe, kind, chat_id, body, topic, patient_id, urgent, staff, due_at, created_at, event)
VALUES (:dedupe, :kind, :chat_id, :body, :topic, :patient_id, :urgent, :staff, :now, :now, :event)
ON CONFLICT (dedupe) DO NOTHING;

-- What was never tried waits for no hour: the clock may have been wrong when it was put there.
-- Of each lane one, in order; what has failed three times lets the others go past, so that one
-- message that never gets through stops no other, and so on with each further three tries.
-- name: outbox_ready
SELECT id, chat_id, urgent FROM outbox AS o
WHERE state = 'waiting' AND (due_at <= :now OR attempts = 0)
  AND NOT EXISTS (
    SELECT 1 FROM outbox AS other
    WHERE other.chat_id = o.chat_id AND other.id <> o.id
      AND other.state IN ('waiting', 'sending') AND other.urgent >= o.urgent
      AND (other.state = 'sending' OR other.attempts / 3 < o.attempts / 3
        OR (other.attempts / 3 = o.attempts / 3 AND other.id < o.id))
  )
ORDER BY urgent DESC, due_at, id LIMIT :most;

-- name: urgent_waits
SELECT 1 FROM inbox WHERE state = 'waiting' AND urgent = 1
UNION ALL
SELECT 1 FROM outbox
WHERE state = 'waiting' AND urgent = 1 AND (due_at <= :now OR attempts = 0)
LIMIT 1;

-- name: outbox_claim
UPDATE outbox SET state = 'sending', attempts = attempts + 1
WHERE id = :id AND state = 'waiting'
RETURNING id, dedupe, kind, chat_id, body, topic, patient_id, attempts, uncertain, event, urgent,
  staff, created_at;

-- name: outbox_message_of
SELECT id, chat_id, message_id, state FROM outbox WHERE dedupe = :dedupe;

-- name: outbox_arrived
SELECT chat_id, message_id FROM outbox WHERE dedupe = :dedupe AND message_id IS NOT NULL;

-- name: outbox_known
SELECT 1 AS there FROM outbox WHERE dedupe = :dedupe;

-- How the message that is changed, by its key or its number, went to a chat of staff.
-- name: outbox_as_staff
SELECT max(staff) AS staff FROM outbox
WHERE (:dedupe <> '' AND dedupe = :dedupe)
  OR (chat_id = :chat_id AND message_id = :message_id AND kind = 'send');

-- What stands in a chat that was one of staff, the latest first.
-- name: outbox_left_behind
SELECT message_id FROM outbox
WHERE chat_id = :chat_id AND message_id IS NOT NULL AND staff > 0 AND kind = 'send'
  AND state = 'sent' AND sent_at >= :since
ORDER BY message_id DESC LIMIT :most;

-- name: outbox_topic
SELECT topic FROM outbox
WHERE chat_id = :chat_id AND message_id = :message_id AND topic <> '' ORDER BY id DESC LIMIT 1;

-- name: outbox_done
UPDATE outbox SET state = :state, message_id = coalesce(:message_id, message_id),
  error = :error, sent_at = :now
WHERE id = :id;

-- name: outbox_words
UPDATE outbox SET body = :body WHERE id = :id;

-- name: outbox_retry
UPDATE outbox SET state = 'waiting', due_at = :due_at, error = :error,
  uncertain = uncertain + :uncertain
WHERE id = :id;

-- name: outbox_held
UPDATE outbox SET held_at = :now WHERE id = :id;

-- name: outbox_due_soon
UPDATE outbox SET due_at = :now WHERE state = 'waiting' AND due_at > :latest;

-- name: outbox_recover
UPDATE outbox SET state = 'waiting', uncertain = uncertain + 1, error = :error
WHERE state = 'sending';

-- name: outbox_suspect
SELECT id, attempts FROM outbox WHERE state = 'sending' AND attempts >= :lives;

-- name: outbox_move_chat
UPDATE outbox SET chat_id = :new, body = :body WHERE id = :id;

-- name: outbox_of_chat
SELECT id, body FROM outbox WHERE chat_id = :chat_id AND state IN ('waiting', 'sending');

-- name: outbox_next_due
SELECT min(due_at) AS at FROM outbox AS o
WHERE state = 'waiting'
  AND NOT EXISTS (
    SELECT 1 FROM outbox AS other
    WHERE other.chat_id = o.chat_id AND other.id <> o.id
      AND other.state IN ('waiting', 'sending') AND other.urgent >= o.urgent
      AND (other.state = 'sending' OR other.attempts / 3 < o.attempts / 3
        OR (other.attempts / 3 = o.attempts / 3 AND other.id < o.id))
  );

-- What waits to be sent and was not found late yet; the oldest first.
-- name: outbox_waits
SELECT id, dedupe, chat_id, topic, patient_id, urgent, staff, event, created_at, held_at, error,
  body
FROM outbox
WHERE state IN ('waiting', 'sending') AND kind = 'send' AND late_at IS NULL
  AND (created_at <= :before OR created_at > :ahead)
ORDER BY urgent DESC, id LIMIT :most;

-- name: outbox_late
UPDATE outbox SET late_at = :now WHERE id = :id;

-- name: outbox_counts
SELECT state, count(*) AS n FROM outbox GROUP BY state;

-- name: thread
SELECT body, at FROM thread WHERE chat_id = :chat_id;

-- name: thread_set
INSERT INTO thread (chat_id, body, at) VALUES (:chat_id, :body, :now)
ON CONFLICT (chat_id) DO UPDATE SET body = excluded.body, at = excluded.at;

-- name: thread_move
UPDATE thread SET chat_id = :new WHERE chat_id = :old;

-- name: chat_moved_add
INSERT INTO chat_moved (old, new) VALUES (:old, :new)
ON CONFLICT (old) DO UPDATE SET new = excluded.new;

-- name: chat_former
SELECT old FROM chat_moved WHERE new = :chat_id;

-- What is under way may yet arrive, but is not tried again.
-- name: outbox_silence
UPDATE outbox SET state = 'refused', error = 'the patient died', sent_at = :now
WHERE patient_id = :patient_id AND state IN ('waiting', 'sending');

-- name: outbox_silenced
SELECT 1 AS there FROM outbox WHERE id = :id AND state <> 'sending';

-- Those to whom a prompt has come: its keys lie between ``first`` and ``last``.
-- name: outbox_prompt_arrived
SELECT chat_id FROM outbox
WHERE dedupe > :first AND dedupe < :last AND kind = 'send' AND message_id IS NOT NULL;

-- Prompts of a patient that are ready and have not left.
-- name: outbox_prompts_waiting
SELECT dedupe FROM outbox
WHERE patient_id = :patient_id AND kind = 'send' AND state IN ('waiting', 'sending')
  AND dedupe > 'prompt:' AND dedupe < 'prompt;';

-- name: outbox_key
UPDATE outbox SET dedupe = :dedupe WHERE id = :id;

-- name: outbox_case_open
SELECT 1 AS there FROM case_file WHERE id = :id AND state = 'open';

-- All that was said to staff of one case.
-- name: outbox_about
SELECT chat_id, dedupe, event, state, error, created_at, late_at FROM outbox
WHERE topic = :topic AND topic <> '' AND kind = 'send' AND staff > 0 ORDER BY id;

-- Where else staff were told something of the same event.
-- name: outbox_asked
SELECT DISTINCT chat_id FROM outbox
WHERE event = :event AND event <> '' AND staff > 0 AND kind = 'send' AND chat_id <> :chat_id;

-- name: outbox_first
SELECT id, chat_id, topic, patient_id, staff FROM outbox WHERE id = :id;

-- Whether a later change of the same message has come already.
-- name: outbox_edited_since
SELECT 1 AS there FROM outbox
WHERE chat_id = :chat_id AND message_id = :message_id AND kind = 'edit' AND id > :id
  AND state = 'sent' LIMIT 1;

-- name: outbox_case_lives
SELECT 1 AS there FROM case_file WHERE id = :id AND state <> 'closed';

-- Whether one chat is among those to whom one event tells of one case.
-- name: outbox_told
SELECT 1 AS there FROM outbox
WHERE event = :event AND topic = :topic AND topic <> '' AND kind = 'send'
  AND chat_id = :chat_id LIMIT 1;

-- name: outbox_numbers
SELECT message_id, sent_at FROM outbox
WHERE chat_id = :chat_id AND message_id IS NOT NULL AND kind = 'send'
ORDER BY message_id DESC LIMIT 200;

-- Of how many tries in a chat nobody knows whether they came, of messages not known then.
-- name: outbox_unknown
SELECT coalesce(sum(uncertain), 0) AS tries FROM outbox
WHERE chat_id = :chat_id AND kind = 'send' AND (sent_at IS NULL OR sent_at > :since);

-- name: outbox_state
SELECT dedupe, state, message_id, error, attempts FROM outbox WHERE dedupe = :dedupe;

-- Must be empty: called sent, but no message of the platform's is known.
-- name: outbox_unproved
SELECT dedupe FROM outbox WHERE state = 'sent' AND kind = 'send' AND message_id IS NULL;
