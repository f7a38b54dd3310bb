"""An archive that somebody else has made lays nothing outside its folder, and nothing that is not
a practice's."""

from __future__ import annotations

import io
import tarfile
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot.store.archive import CONTENTS, DATABASE, ArchiveError, pack_up, unpack

NOW = datetime(2026, 3, 4, tzinfo=UTC)


def packed(folder: Path, *names: str) -> Path:
    """An archive that is in order but for the names of what lies in it."""
    file = folder / "file"
    file.write_bytes(b"anything")
    target = folder / "copy.tar"
    pack_up(target, iter([(name, file) for name in (DATABASE, *names)]), NOW, "1")
    return target


def test_what_is_a_practices_is_laid_out(tmp_path: Path) -> None:
    archive = packed(tmp_path, "clinic.yaml", "flows/a/b.yaml", "media/1/x.jpg")
    assert len(unpack(archive, tmp_path / "new").files) == 4
    assert (tmp_path / "new" / "media" / "1" / "x.jpg").read_bytes() == b"anything"


@pytest.mark.parametrize(
    "name",
    ["../evil", "flows/../../evil", "media/../../evil", "{here}/evil", "evil", "media", "flows",
     "media/c:evil", "media\\..\\..\\evil", "flows/./../../evil", "settings/evil"],
)  # fmt: skip
def test_no_other_name_is_laid_anywhere(tmp_path: Path, name: str) -> None:
    archive = packed(tmp_path, name.format(here=tmp_path))
    with pytest.raises(ArchiveError, match="does not belong there"):
        unpack(archive, tmp_path / "new")
    assert not [path for path in tmp_path.rglob("*") if "evil" in path.name]


@pytest.mark.parametrize("kind", [tarfile.SYMTYPE, tarfile.LNKTYPE, tarfile.FIFOTYPE])
def test_a_link_is_no_file_of_a_practice(tmp_path: Path, kind: bytes) -> None:
    archive = packed(tmp_path)
    with tarfile.open(archive, "r:") as old:
        members = [(one, old.extractfile(one)) for one in old.getmembers()]
        bodies = [(one, body.read() if body else b"") for one, body in members]
    link = tarfile.TarInfo("media/x")
    link.type, link.linkname = kind, "/etc/hostname"
    with tarfile.open(archive, "w:") as new:
        new.addfile(link)
        for one, body in bodies:
            new.addfile(one, io.BytesIO(body))
    with pytest.raises(ArchiveError, match="does not belong there"):
        unpack(archive, tmp_path / "new")


def test_nothing_comes_after_the_list(tmp_path: Path) -> None:
    archive = packed(tmp_path)
    with tarfile.open(archive, "a:") as more:
        late = tarfile.TarInfo("media/late")
        more.addfile(late, io.BytesIO(b""))
    with pytest.raises(ArchiveError, match="does not belong there"):
        unpack(archive, tmp_path / "new")
    assert CONTENTS not in {path.name for path in (tmp_path / "new").iterdir()}
