"""What leaves the system is valid by the standard's own libraries."""

from __future__ import annotations

import asyncio
import csv
import io
import json
from collections import Counter
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest
from fhir.resources.R4B.bundle import Bundle
from hypothesis import given
from hypothesis import strategies as st
from icalendar import Calendar
from pydantic import BaseModel

from bot.cli import export as command
from bot.cli.errors import CommandError
from bot.context.words import default_words
from bot.records.fhir import bundle
from bot.records.fhir_parts import LOCAL
from bot.records.tables import as_csv, guarded, json_lines
from bot.records.whole import WholeRecord
from bot.store.audit import verify
from bot.store.database import Database

NOW = datetime(2026, 3, 10, 16, tzinfo=UTC)


def rows(record: WholeRecord) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(as_csv(record).removeprefix("\ufeff"))))


def test_every_entry_is_in_the_tables(record: WholeRecord) -> None:
    lines = [json.loads(line) for line in json_lines(record).splitlines()]
    assert [line["id"] for line in lines] == [entry.id for entry in record.log]
    assert [line["text"] for line in lines] == [entry.text for entry in record.log]
    table = rows(record)
    assert [int(row["entry"]) for row in table] == [entry.id for entry in record.log]
    said = next(row for row in table if row["kind"] == "said")
    assert (said["author"], said["day"], said["at_local"]) == ("Inés", "1", "2026-03-04 20:05:00")


def test_no_cell_is_run_by_a_spreadsheet(record: WholeRecord) -> None:
    """OWASP, CSV injection: a cell must not begin with = + - @, a tab or a line's end."""
    evil = next(row for row in rows(record) if "she ate everything" in row["text"])
    assert evil["text"].startswith("'=she ate")
    for row in rows(record):
        for name, cell in row.items():
            assert not cell.startswith(tuple("=+-@\t\r")) or name == "entry"


@given(st.text())
def test_a_guarded_cell_begins_with_nothing_that_runs(text: str) -> None:
    cell = guarded(text)
    assert cell.lstrip(" ")[:1] not in ("=", "+", "-", "@", "\t", "\r", "＝")
    assert cell in (text, f"'{text}")


# ---- FHIR ------------------------------------------------------------------------------


@pytest.fixture
def made(record: WholeRecord) -> dict[str, object]:
    return bundle(record, NOW, default_words(), "en", "Cottonwood Bend")


def of_kind(made: dict[str, object], kind: str) -> list[dict[str, object]]:
    entries = json.loads(json.dumps(made))["entry"]
    return [e["resource"] for e in entries if e["resource"]["resourceType"] == kind]


def test_the_bundle_is_valid_by_the_models_of_fhir(made: dict[str, object]) -> None:
    """fhir.resources 8 (R4B, FHIR 4.3.0: these resources are as in R4 4.0.1)."""
    read = Bundle.model_validate_json(json.dumps(made))
    entries = json.loads(read.model_dump_json())["entry"]
    kinds = Counter(entry["resource"]["resourceType"] for entry in entries)
    for kind in ("Patient", "CarePlan", "MedicationRequest", "MedicationAdministration",
                 "Observation", "Communication", "Flag"):  # fmt: skip
        assert kinds[kind]


def codes_outside(model: BaseModel) -> list[str]:
    """Codes that the standard does not list, wherever it lists them (required bindings)."""
    found: list[str] = []
    for name, field in type(model).model_fields.items():
        extra = field.json_schema_extra
        value = getattr(model, name)
        listed = extra.get("enum_values") if isinstance(extra, dict) else None
        codes = listed if isinstance(listed, list) and "+" not in listed else None  # "+": more
        if codes is not None and isinstance(value, str) and value not in codes:
            found.append(f"{type(model).__name__}.{name}: {value}")
        for one in value if isinstance(value, list) else [value]:
            if isinstance(one, BaseModel):
                found += codes_outside(one)
    return found


def test_every_code_is_one_that_the_standard_lists(made: dict[str, object]) -> None:
    read = Bundle.model_validate_json(json.dumps(made))
    assert codes_outside(read) == []
    wrong = {**made, "type": "heap"}
    assert codes_outside(Bundle.model_validate_json(json.dumps(wrong))) == ["Bundle.type: heap"]


def test_every_reference_leads_somewhere_and_every_url_is_one(made: dict[str, object]) -> None:
    text = json.dumps(made)
    entries = json.loads(text)["entry"]
    urls = [entry["fullUrl"] for entry in entries]
    assert len(set(urls)) == len(urls)

    def references(value: object) -> list[str]:
        if isinstance(value, dict):
            own = [value["reference"]] if "reference" in value else []
            return own + [ref for one in value.values() for ref in references(one)]
        if isinstance(value, list):
            return [ref for one in value for ref in references(one)]
        return []

    assert set(references(entries)) <= set(urls)


def test_the_patient_is_an_animal(made: dict[str, object]) -> None:
    """The extension patient-animal of FHIR R4; species by SNOMED CT and by R4's own example."""
    (patient,) = of_kind(made, "Patient")
    text = json.dumps(patient)
    assert "http://hl7.org/fhir/StructureDefinition/patient-animal" in text
    assert '"448771007"' in text
    assert '"canislf"' in text


def test_doses_observations_and_flags_say_what_the_record_says(
    made: dict[str, object], record: WholeRecord
) -> None:
    doses = of_kind(made, "MedicationAdministration")
    states = Counter(dose["status"] for dose in doses)
    assert states["completed"] == 3  # two by the plan, one as needed
    assert states["unknown"] == 12  # nobody told: never taken for "not given"
    wrong = [o for o in of_kind(made, "Observation") if o["status"] == "entered-in-error"]
    assert len(wrong) == sum(not one.stands for one in record.statements)
    codes = json.dumps(of_kind(made, "Observation"))
    assert f'"system": "{LOCAL}", "code": "incision-pus"' in codes
    assert [flag["status"] for flag in of_kind(made, "Flag")] == ["active", "active"]
    (plan,) = of_kind(made, "CarePlan")
    assert plan["status"] == "completed"


def test_an_order_is_active_only_while_it_is(stopped: WholeRecord, record: WholeRecord) -> None:
    """FHIR R4, MedicationRequest.status: another system must not go on with what is over."""

    def states(of: WholeRecord, now: datetime) -> list[object]:
        orders = of_kind(bundle(of, now, default_words(), "en"), "MedicationRequest")
        return [order["status"] for order in orders]

    early, late = datetime(2026, 3, 7, tzinfo=UTC), datetime(2026, 4, 1, tzinfo=UTC)
    assert states(stopped, early) == ["stopped", "active", "active"]
    assert states(stopped, datetime(2026, 3, 12, 6, tzinfo=UTC)) == [
        "stopped",
        "completed",
        "active",
    ]
    assert states(replace(stopped, state="paused"), early) == ["stopped", "on-hold", "on-hold"]
    assert states(record, early) == ["unknown"] * 3  # our course ended before the orders
    assert states(record, late) == ["completed"] * 3
    (first, *_) = of_kind(bundle(stopped, early, default_words(), "es"), "MedicationRequest")
    text = json.dumps(first, ensure_ascii=False)
    assert "cada 12 h" in text
    assert "suspendida el 6 mar 2026" in text
    assert '"start": "2026-03-05T03:00:00Z", "end": "2026-03-19T02:00:00Z"' in text  # 8 pm


def test_the_same_record_gives_the_same_bundle(
    made: dict[str, object], record: WholeRecord
) -> None:
    assert bundle(record, NOW, default_words(), "en", "Cottonwood Bend") == made
    other = bundle(record, NOW, default_words(), "en", "Another practice")
    assert other["entry"][0]["fullUrl"] != made["entry"][0]["fullUrl"]  # type: ignore[index]


# ---- The command -----------------------------------------------------------------------


@pytest.mark.parametrize(("form", "begins"), [
    ("summary", "Summary since discharge: Canela"), ("log", "── day 0"), ("jsonl", '{"id"'),
    ("csv", "\ufeffentry,at_utc"), ("ics", "BEGIN:VCALENDAR"), ("fhir", '{\n "resourceType"'),
])  # fmt: skip
def test_every_form_is_written_whole_and_for_its_owner_only(
    copy: Path, tmp_path: Path, form: str, begins: str
) -> None:
    target = tmp_path / "out"
    args = ["Canela", "--as", form, "--lang", "en", "--to", str(target), "--database", str(copy)]
    assert command.main(args) == 0
    assert target.read_text(encoding="utf-8").startswith(begins)
    assert target.stat().st_mode & 0o077 == 0
    if form == "ics":
        assert Calendar.from_ical(target.read_text()).walk("VEVENT")


def test_what_the_command_takes_out_is_in_the_log(copy: Path, tmp_path: Path) -> None:
    place = ["--to", str(tmp_path / "out"), "--database", str(copy), "--by", "Records"]
    assert command.main(["Canela", "--as", "csv", *place]) == 0
    assert command.main(["Canela", "--pdf", *place]) == 0

    async def looks() -> list[tuple[str, str]]:
        async with Database(copy) as db:
            assert (await db.read(lambda tx: verify(tx))).stands
            rows = await db.read(lambda tx: tx.all("log_of", patient_id=1))
            return [(row["author"], row["text"]) for row in rows if row["kind"] == "viewed"]

    assert asyncio.run(looks()) == [
        ("Records", "took csv out of the system"),
        ("Records", "took summary.pdf out of the system"),
    ]


def test_a_pdf_of_the_page_and_of_the_log(copy: Path, tmp_path: Path) -> None:
    for form in ("summary", "log"):
        target = tmp_path / f"{form}.pdf"
        place = ["--to", str(target), "--database", str(copy)]
        assert command.main(["1", "--as", form, "--pdf", *place]) == 0
        assert target.read_bytes().startswith(b"%PDF-")
    with pytest.raises(CommandError, match="--pdf goes with"):
        command.main(["1", "--as", "csv", "--pdf", "--database", str(copy)])
    with pytest.raises(CommandError, match="there is no patient 'Nobody'"):
        command.main(["Nobody", "--database", str(copy)])
