"""The demo's web page: the chats of home and clinic side by side, the clock, the log."""

from .page import Page, Sample
from .seats import Seat

__all__ = ["Page", "Sample", "Seat"]
