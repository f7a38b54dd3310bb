"""A strict stand-in for the chat platform's Bot API, on loopback."""

from .chats import Clock
from .faults import Fault, FaultKind, Limits
from .standin import TOKEN, Standin
from .values import Chat, File, FileKind, Message, User

__all__ = [
    "TOKEN",
    "Chat",
    "Clock",
    "Fault",
    "FaultKind",
    "File",
    "FileKind",
    "Limits",
    "Message",
    "Standin",
    "User",
]
