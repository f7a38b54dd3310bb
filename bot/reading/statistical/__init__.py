"""The statistical reader: how likely a reply tells an alarm, and which. See CARD.md."""

from .model import Suspicion, shipped

__all__ = ["Suspicion", "shipped"]
