-- For thousands of patients (measured by tests/bench/many_patients.py).
-- A burst of rows due at one moment is taken in order without sorting it for each.
DROP INDEX due_waiting;
CREATE INDEX due_waiting ON due (due_at, key) WHERE state = 'waiting';
-- Who has this chat: asked for every message that is sent.
CREATE INDEX person_chat ON person (chat_id);
-- What was under way when the bot stopped: asked at every start.
CREATE INDEX outbox_sending ON outbox (id) WHERE state = 'sending';
-- The prompts around a moment, of the hundred and more of a course.
CREATE INDEX prompt_near ON prompt (patient_id, due_at);
-- The list of patients, without going over the protocol that each of them carries (60 kB).
CREATE INDEX patient_listed ON patient (state, name, enrolled_at, last_heard_at, plan);
-- Whether a rule spoke at a message: asked for each that a search by urgency looks at.
CREATE INDEX log_finding ON log (patient_id, id) WHERE kind = 'finding';
