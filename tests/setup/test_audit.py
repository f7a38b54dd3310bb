"""Pinned packages with advisories fail the checks; a database out of reach does not."""

from __future__ import annotations

import json
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from http.server import BaseHTTPRequestHandler, HTTPServer
from typing import Any

import pytest

from tests import audit

Answer = Callable[[list[dict[str, Any]]], object]


@contextmanager
def database(answer: Answer, status: int = 200) -> Iterator[str]:
    """A database of advisories that answers like this."""

    class Handler(BaseHTTPRequestHandler):
        def do_POST(self) -> None:
            asked = json.loads(self.rfile.read(int(self.headers["content-length"])))
            body = json.dumps(answer(asked["queries"])).encode()
            self.send_response(status)
            self.send_header("content-length", str(len(body)))
            self.end_headers()
            self.wfile.write(body)

        def log_message(self, format: str, *args: object) -> None:
            """Nothing."""

    with HTTPServer(("127.0.0.1", 0), Handler) as server:
        thread = threading.Thread(target=server.serve_forever)
        thread.start()
        try:
            yield f"http://127.0.0.1:{server.server_address[1]}/"
        finally:
            server.shutdown()
            thread.join()


def advised(*names: str) -> Answer:
    """Advisories about the packages of these names only."""
    return lambda queries: {
        "results": [
            {"vulns": [{"id": "EX-2"}, {"id": "EX-1"}]} if one["package"]["name"] in names else {}
            for one in queries
        ]
    }


def test_a_pinned_package_with_an_advisory_fails(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    with database(advised("h11")) as url:
        monkeypatch.setenv("SLOWLEASH_ADVISORIES", url)
        assert audit.main() == 1
    told = capsys.readouterr().out
    assert "h11 0." in told
    assert "EX-1, EX-2" in told
    assert "1 with advisories" in told


def test_no_advisory_passes_and_every_lock_was_asked_about(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    asked: list[audit.Pin] = []

    def answer(queries: list[dict[str, Any]]) -> object:
        asked.extend((one["package"]["name"], one["version"]) for one in queries)
        return advised()(queries)

    with database(answer) as url:
        monkeypatch.setenv("SLOWLEASH_ADVISORIES", url)
        assert audit.main() == 0
    assert {"starlette", "av", "pytest", "negspacy"} <= {name for name, _ in asked}
    assert len(asked) == len(set(asked)) > 50


@pytest.mark.parametrize(
    ("answer", "status"),
    [(lambda queries: {"results": []}, 200), (lambda queries: [], 200),
     (lambda queries: {}, 200), (advised("h11"), 503)],
)  # fmt: skip
def test_what_is_no_answer_is_said_and_passes(
    answer: Answer, status: int, monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:  # fmt: skip
    with database(answer, status) as url:
        monkeypatch.setenv("SLOWLEASH_ADVISORIES", url)
        assert audit.main() == 0
    assert "NOT audited" in capsys.readouterr().out


def test_no_network_is_said_and_passes(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    with database(advised()) as url:
        monkeypatch.setenv("SLOWLEASH_ADVISORIES", url)
    assert audit.main() == 0
    assert "NOT audited" in capsys.readouterr().out
