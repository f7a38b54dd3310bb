"""The pages on which a clinician reads what came from home, and corrects a wrong reading."""

from .app import review_app

__all__ = ["review_app"]
