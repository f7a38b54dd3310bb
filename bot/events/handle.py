"""One event in, its effects out. This is the one door of the pure core."""

from __future__ import annotations

from bot.context.contexts import AtDesk, AtHome, FellDue
from bot.desk.desk import on_desk
from bot.household.owner import on_owner
from bot.model.effects import Effects

from .bind import bind
from .due import on_due


def handle(context: AtHome | AtDesk | FellDue) -> Effects:
    """What the event leads to, in order, as plain values."""
    match context:
        case AtHome():
            out = on_owner(context)
            out.person = context.person.id if context.person else None
        case AtDesk():
            out = on_desk(context)
            out.member = context.actor.id if context.actor else None
        case FellDue():
            out = on_due(context)
    return bind(context, out)
