"""What the harness has of its own."""

from __future__ import annotations

import os
from random import SystemRandom

import pytest


@pytest.fixture
def seed() -> int:
    """Another one each time; printed, so that a failure can be played again: as HARNESS_SEED."""
    found = int(os.environ.get("HARNESS_SEED") or SystemRandom().randrange(10**6))
    print(f"seed {found}")
    return found
