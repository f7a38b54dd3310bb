-- name: inbox_keep
INSERT INTO inbox (update_id, body, received_at) VALUES (:update_id, :body, :now)
ON CONFLICT (update_id) DO NOTHING;

-- name: inbox_next
SELECT update_id, body, received_at, attempts FROM inbox
WHERE state = 'waiting' ORDER BY update_id LIMIT 1;

-- name: inbox_mark
UPDATE inbox SET state = :state, attempts = attempts + 1, error = :error
WHERE update_id = :update_id;

-- name: inbox_counts
SELECT state, count(*) AS n FROM inbox GROUP BY state;

-- name: outbox_add
INSERT INTO outbox
  (dedupe, kind, chat_id, body, topic, patient_id, urgent, due_at, created_at, event)
VALUES (:dedupe, :kind, :chat_id, :body, :topic, :patient_id, :urgent, :now, :now, :event)
ON CONFLICT (dedupe) DO NOTHING;

-- name: outbox_ready
SELECT id, chat_id, urgent FROM outbox AS o
WHERE state = 'waiting' AND due_at <= :now
  AND NOT EXISTS (
    SELECT 1 FROM outbox AS earlier
    WHERE earlier.chat_id = o.chat_id AND earlier.id < o.id
      AND earlier.state IN ('waiting', 'sending') AND earlier.urgent >= o.urgent
  )
ORDER BY urgent DESC, due_at, id LIMIT :most;

-- name: outbox_claim
UPDATE outbox SET state = 'sending', attempts = attempts + 1
WHERE id = :id AND state = 'waiting'
RETURNING id, dedupe, kind, chat_id, body, attempts, uncertain, event;

-- name: outbox_message_of
SELECT message_id, state FROM outbox WHERE dedupe = :dedupe;

-- name: outbox_arrived
SELECT chat_id, message_id FROM outbox WHERE dedupe = :dedupe AND message_id IS NOT NULL;

-- name: outbox_known
SELECT 1 AS there FROM outbox WHERE dedupe = :dedupe;

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

-- name: outbox_recover
UPDATE outbox SET state = 'waiting', uncertain = uncertain + 1,
  error = 'stopped while it was being sent'
WHERE state = 'sending';

-- name: outbox_move_chat
UPDATE outbox SET chat_id = :new, body = :body WHERE id = :id;

-- name: outbox_of_chat
SELECT id, body FROM outbox WHERE chat_id = :chat_id AND state IN ('waiting', 'sending');

-- name: outbox_next_due
SELECT min(due_at) AS at FROM outbox WHERE state = 'waiting';

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

-- name: outbox_silence
UPDATE outbox SET state = 'refused', error = 'the patient died', sent_at = :now
WHERE patient_id = :patient_id AND state = 'waiting';
