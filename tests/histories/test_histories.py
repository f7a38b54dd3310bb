"""A hundred short random histories hold what the model beside the product demands; the long
measure is ``python tests/histories/run.py``."""

from __future__ import annotations

from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from .acts import GAPS, KINDS, SCENES, Act, History, play
from .telling import told

ACTS = st.builds(
    Act, st.sampled_from(GAPS), st.sampled_from(KINDS), st.integers(0, 1), st.integers(0, 996)
)
HISTORIES = st.builds(
    History,
    st.integers(0, len(SCENES) - 1),
    st.sampled_from((7, 8, 13, 19)),
    st.lists(ACTS, min_size=1, max_size=7).map(tuple),
)


# Making a failure smaller takes ten times as long as all that hold; a history is short as it is.
@settings(
    max_examples=120,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)
@given(HISTORIES)
def test_whatever_happens_nothing_is_offered_lost_or_made_up(history: History) -> None:
    played = play(history, silent=8)
    assert not played.breaches, "\n".join([*told(played), *played.breaches, str(history)])
