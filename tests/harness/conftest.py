"""What the harness has of its own."""

from __future__ import annotations

import pytest


@pytest.fixture
def seed() -> int:
    """Another one each time; printed, so that a failure can be played again."""
    from random import SystemRandom

    found = SystemRandom().randrange(10**6)
    print(f"seed {found}")
    return found
