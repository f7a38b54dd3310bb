-- Staff chats, and own chats of staff, that could not be reached when last tried, and since when.
CREATE TABLE lost_chat (
    chat_id INTEGER PRIMARY KEY,
    since TEXT NOT NULL,
    why TEXT NOT NULL
);
