"""Hundreds of short cases in one test: as a test of its own, each costs more than it checks."""

from __future__ import annotations

from collections.abc import Callable, Iterable


def each(*cases: object) -> Callable[[Callable[..., None]], Callable[[], None]]:
    """Makes one test of a check with parameters: every case is tried (a tuple: one part for
    each parameter), and all that do not hold are told together."""
    assert cases, "there is nothing to try"

    def one_test(check: Callable[..., None]) -> Callable[[], None]:
        def test() -> None:
            wrong = list(_wrong(check, cases))
            assert not wrong, "\n".join([f"{len(wrong)} of {len(cases)} do not hold:", *wrong])

        test.__name__, test.__doc__ = check.__name__, check.__doc__
        test.__module__, test.__qualname__ = check.__module__, check.__qualname__
        return test

    return one_test


def _wrong(check: Callable[..., None], cases: Iterable[object]) -> Iterable[str]:
    for case in cases:
        try:
            check(*(case if isinstance(case, tuple) else (case,)))
        except AssertionError as error:
            yield f"{case}: {error}"
        except Exception as error:
            error.add_note(f"tried: {case}")
            raise
