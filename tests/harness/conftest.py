"""One nest for all that the harness does here."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from tests.harness.bots import Nest


@pytest.fixture(scope="session")
def nest() -> Iterator[Nest]:
    """Where bots come from."""
    with Nest() as found:
        yield found


@pytest.fixture
def seed() -> int:
    """Another one each time; printed, so that a failure can be played again."""
    from random import SystemRandom

    found = SystemRandom().randrange(10**6)
    print(f"seed {found}")
    return found
