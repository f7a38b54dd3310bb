"""What an event leads to: everything to keep and to send, as plain values, in order."""

from .course import CancelDue, Due, EndCourse, Hush, NewPatient, SetState
from .effects import Effect, Effects, Rows
from .messages import Ask, Say, Settle, Tell
from .people import (
    ChatMoved,
    Dismiss,
    Forget,
    Invite,
    Join,
    JoinDesk,
    JoinStaff,
    Leave,
    OwnSetting,
    Reachable,
    SetLanguage,
)
from .prompts import Mark, MoveLine, NewPlan, PromptSent, Reminded, Retext
from .staff_work import Card, CaseChange, CaseNote, EndHold, PutHold, ReviewChange
from .told import Correct, Entry, Heard, KeepMedia, Note, RetakeAsked, Retract, WoundPut

__all__ = [
    "Ask",
    "CancelDue",
    "Card",
    "CaseChange",
    "CaseNote",
    "ChatMoved",
    "Correct",
    "Dismiss",
    "Due",
    "Effect",
    "Effects",
    "EndCourse",
    "EndHold",
    "Entry",
    "Forget",
    "Heard",
    "Hush",
    "Invite",
    "Join",
    "JoinDesk",
    "JoinStaff",
    "KeepMedia",
    "Leave",
    "Mark",
    "MoveLine",
    "NewPatient",
    "NewPlan",
    "Note",
    "OwnSetting",
    "PromptSent",
    "PutHold",
    "Reachable",
    "Reminded",
    "RetakeAsked",
    "Retext",
    "Retract",
    "ReviewChange",
    "Rows",
    "Say",
    "SetLanguage",
    "SetState",
    "Settle",
    "Tell",
    "WoundPut",
]
