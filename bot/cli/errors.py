"""What a sub-command raises when it cannot go on."""

from __future__ import annotations


class CommandError(Exception):
    """Something that the user can mend. The message is shown as it is: what is wrong,
    and what to do."""
