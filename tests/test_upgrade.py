"""The site of an earlier version, upgraded by `migrate` alone.

The kept demo was built by version 51693dd; `tests/fixtures/README.md` says how.
"""

import hashlib
import json
import re
from collections.abc import Iterator
from datetime import UTC, datetime

import pytest

from exercises.mastery.states import RULES
from exercises.standing.summaries import COLUMNS
from tests.kept_demo import as_it_was, read, spoil_summaries
from tests.served import Visitor, heading, served
from tests.sites import Row, Site, Table, new_site

pytestmark = pytest.mark.database
# What the kept demo's answers come to, by the number of the rules.
COMES_TO = {
    1: "3aeb17f3c24d508af51577e550c1b303b4e772925b63f79be30dc7a8a3e96382",
    # The same, and the columns that spare the next answer a look at those before.
    2: "f8b9768a13b22817105ef5aba45cbe46e3a1c45ec42005a9c8866dc56481e733",
}


@pytest.fixture(scope="module")
def before(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Site]:
    with new_site(tmp_path_factory.mktemp("kept") / "data") as site:
        yield as_it_was(site)


@pytest.fixture(scope="module")
def old_rows(before: Site) -> dict[str, Table]:
    return before.tables()


@pytest.fixture(scope="module")
def upgraded(before: Site, old_rows: dict[str, Table]) -> Site:
    spoil_summaries(before)
    said = before.manage("migrate")

    assert "Summaries of answers made anew: 16." in said
    return before


def test_summaries_come_right_by_migrating(upgraded: Site) -> None:
    assert upgraded.manage("summaries") == "16 summaries are what the attempts come to.\n"


def test_second_migration_has_nothing_to_make(upgraded: Site) -> None:
    assert "Summaries" not in upgraded.manage("migrate")


def test_summaries_by_these_rules_are_the_same_as_ever(upgraded: Site) -> None:
    rows = upgraded.tables()["exercises_summary"]
    kept = [[key, *(comparable(row[name]) for name in COLUMNS)] for key, row in rows.items()]
    digest = hashlib.sha256(json.dumps(sorted(kept), sort_keys=True).encode()).hexdigest()

    assert COMES_TO.get(RULES) == digest, (
        "The same answers come to other summaries. Raise RULES in exercises/mastery/states.py, "
        "so that migrate makes them anew, and keep the digest beside its number here."
    )


def comparable(value: object) -> object:
    """Alike from both kinds of database."""
    if isinstance(value, datetime):
        return str(value.astimezone(UTC).replace(tzinfo=None))
    return read(value) if isinstance(value, str) and value[:1] in {"{", "["} else value


RENAMED = {"session_id": "sitting_id"}


def test_old_rows_are_there_as_they_were(upgraded: Site, old_rows: dict[str, Table]) -> None:
    now = upgraded.tables()

    for table in ("exercises_attempt", "exercises_asked", "exercises_signoff"):
        rows = old_rows[table]
        assert {key: still(now[table][key], row) for key, row in rows.items()} == rows


def still(row: Row, old: Row) -> Row:
    """The columns that the old row had, as they are called now."""
    return {name: row[RENAMED.get(name, name)] for name in old}


def test_own_drills_know_the_revision_that_was_asked(upgraded: Site) -> None:
    now = upgraded.tables()
    revisions = {
        (f"own-{row['drill_id']}", row["number"]): key
        for key, row in now["exercises_ownrevision"].items()
    }
    for table in (now["exercises_attempt"], now["exercises_asked"]):
        own = [row for row in table.values() if row["drill"].startswith("own-")]

        assert own
        assert [row["own_id"] for row in own] == [
            revisions[row["drill"], row["revision"]] for row in own
        ]
        assert not [row for row in table.values() if row["own_id"] and row not in own]


@pytest.fixture(scope="module")
def address(upgraded: Site) -> Iterator[str]:
    with served(upgraded) as address:
        yield address


def test_learner_opens_old_attempts_of_every_sort(address: str, old_rows: dict[str, Table]) -> None:
    attempts = of_every_sort(attempts_of("sorrel", old_rows))
    sorrel = Visitor(address)
    first = sorrel.sign_in("sorrel")
    pages = [(each, sorrel.get(f"/record/{each['key']}/")) for each in attempts]
    others = [sorrel.get(path).status for path in ("/record/", "/sittings/", "/drills/")]

    assert heading(first.page) == "Today"
    assert [each["key"] for each, page in pages if page.status != 200] == []
    assert [each["key"] for each, page in pages if not shows(each, page.page)] == []
    assert len({each["drill"] for each in attempts}) > 15
    assert others == [200, 200, 200]


def test_instructor_opens_the_board_and_old_attempts(
    address: str, old_rows: dict[str, Table]
) -> None:
    person = "/cohorts/{cohort_id}/people/{person_id}/".format(**place_of("wren", old_rows))
    of_each_drill = {each["drill"]: each for each in attempts_of("wren", old_rows)}
    orla = Visitor(address)
    orla.sign_in("orla")
    board = [orla.get(path).status for path in ("/cohorts/", "/cohorts/1/", person)]
    pages = {
        drill: shows(each, orla.get(f"{person}attempts/{each['key']}/").page)
        for drill, each in of_each_drill.items()
    }

    assert board == [200, 200, 200]
    assert len(pages) > 10
    assert pages == dict.fromkeys(pages, True)


def attempts_of(name: str, tables: dict[str, Table]) -> list[Row]:
    person = place_of(name, tables)["person_id"]
    return [row for row in tables["exercises_attempt"].values() if row["person_id"] == person]


def of_every_sort(attempts: list[Row]) -> list[Row]:
    """One of each drill and revision, right, wrong and pending."""
    sorts = {(row["drill"], row["revision"], row["right"], row["pending"]): row for row in attempts}
    return list(sorts.values())


def place_of(name: str, tables: dict[str, Table]) -> Row:
    """Somebody's place in their cohort."""
    people = tables["cohorts_person"].values()
    [person] = [row["id"] for row in people if row["sign_in_name"] == name]
    [place] = [row for row in tables["cohorts_membership"].values() if row["person_id"] == person]
    return place


def shows(attempt: Row, page: str) -> bool:
    """Does the page say of the attempt what was said of it then?"""
    found = re.search(r'class="verdict ([a-z-]*)', page)
    if attempt["pending"]:  # an instructor may have scored it
        return bool(found)
    right = "verdict-right" if attempt["right"] else "verdict-wrong"
    return found is not None and found[1] == right
