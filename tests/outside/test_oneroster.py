"""The package of results against OneRoster.

Source: 1EdTech, OneRoster CSV Binding 1.2.1, final release, 22 August 2023: the files of a
package, their fields in order, which are required, and the words that a field takes.
"""

import csv
import io
import zipfile
from datetime import UTC, date, datetime

import pytest

from course.cohorts.models import Cohort, Person
from exercises.drills.register import KINDS
from exercises.practice.attempts import ask, submit
from exercises.results.oneroster import packed
from tests.answers import right_answer, wrong_answer
from tests.people import learner

# Field by field as the binding's tables give them; * marks what must not be empty in bulk.
FIELDS = {
    "orgs": "*sourcedId status dateLastModified *name *type identifier parentSourcedId",
    "academicSessions": "*sourcedId status dateLastModified *title *type *startDate *endDate"
    " parentSourcedId *schoolYear",
    "courses": "*sourcedId status dateLastModified schoolYearSourcedId *title courseCode grades"
    " *orgSourcedId subjects subjectCodes",
    "classes": "*sourcedId status dateLastModified *title grades *courseSourcedId classCode"
    " *classType location *schoolSourcedId *termSourcedIds subjects subjectCodes periods",
    "users": "*sourcedId status dateLastModified *enabledUser *username userIds *givenName"
    " *familyName middleName identifier email sms phone agentSourcedIds grades password"
    " userMasterIdentifier preferredGivenName preferredMiddleName preferredFamilyName"
    " primaryOrgSourcedId pronouns",
    "roles": "*sourcedId status dateLastModified *userSourcedId *roleType *role beginDate endDate"
    " *orgSourcedId userProfileSourcedId",
    "enrollments": "*sourcedId status dateLastModified *classSourcedId *schoolSourcedId"
    " *userSourcedId *role primary beginDate endDate",
    "categories": "*sourcedId status dateLastModified *title weight",
    "lineItems": "*sourcedId status dateLastModified *title description *assignDate *dueDate"
    " *classSourcedId *categorySourcedId *academicSessionSourcedId resultValueMin resultValueMax"
    " *schoolSourcedId",
    "results": "*sourcedId status dateLastModified *lineItemSourcedId *studentSourcedId"
    " *scoreStatus score *scoreDate comment textScore classSourcedId inProgress incomplete late"
    " missing",
}
WORDS = {
    ("orgs", "type"): {"department", "school", "district", "local", "state", "national"},
    ("academicSessions", "type"): {"gradingPeriod", "semester", "schoolYear", "term"},
    ("classes", "classType"): {"homeroom", "scheduled"},
    ("users", "enabledUser"): {"true", "false"},
    ("roles", "roleType"): {"primary", "secondary"},
    ("roles", "role"): {"student", "teacher"},
    ("enrollments", "role"): {"administrator", "proctor", "student", "teacher"},
    ("results", "scoreStatus"): {
        *("exempt", "fully graded", "not submitted", "partially graded", "submitted"),
    },
}
REFERS = {
    ("courses", "orgSourcedId"): "orgs",
    ("classes", "courseSourcedId"): "courses",
    ("classes", "schoolSourcedId"): "orgs",
    ("classes", "termSourcedIds"): "academicSessions",
    ("users", "primaryOrgSourcedId"): "orgs",
    ("roles", "userSourcedId"): "users",
    ("roles", "orgSourcedId"): "orgs",
    ("enrollments", "classSourcedId"): "classes",
    ("enrollments", "schoolSourcedId"): "orgs",
    ("enrollments", "userSourcedId"): "users",
    ("lineItems", "classSourcedId"): "classes",
    ("lineItems", "categorySourcedId"): "categories",
    ("lineItems", "academicSessionSourcedId"): "academicSessions",
    ("lineItems", "schoolSourcedId"): "orgs",
    ("results", "lineItemSourcedId"): "lineItems",
    ("results", "studentSourcedId"): "users",
    ("results", "classSourcedId"): "classes",
}
# Every file that a manifest speaks of.
FILES = {
    *("academicSessions", "categories", "classes", "classResources", "courses"),
    *("courseResources", "demographics", "enrollments", "lineItemLearningObjectiveIds"),
    *("lineItems", "lineItemScoreScales", "orgs", "resources", "resultLearningObjectiveIds"),
    *("results", "resultScoreScales", "roles", "scoreScales", "userProfiles", "userResources"),
    "users",
}
Package = dict[str, list[dict[str, str]]]


@pytest.fixture
def package(mina: Person, tom: Person, harbour: Cohort) -> Package:
    learner("Cher", harbour)
    for answer in (right_answer, wrong_answer):
        asked = ask(mina, KINDS["choose-the-mode"])
        submit(asked, answer(asked))
    content = packed(harbour, now=datetime(2026, 6, 1, 12, tzinfo=UTC))
    with zipfile.ZipFile(io.BytesIO(content)) as files:
        return {name.removesuffix(".csv"): rows(files.read(name)) for name in files.namelist()}


def rows(content: bytes) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(content.decode("utf-8"), newline="")))


def test_manifest_speaks_of_every_file(package: Package) -> None:
    """OneRoster CSV Binding 1.2.1: manifest.csv."""
    told = {row["propertyName"]: row["value"] for row in package.pop("manifest")}

    assert (told["manifest.version"], told["oneroster.version"]) == ("1.0", "1.2")
    files = {name.removeprefix("file."): v for name, v in told.items() if name.startswith("file.")}
    assert files == {name: "bulk" if name in package else "absent" for name in FILES}


def test_headers_are_the_standards(package: Package) -> None:
    """OneRoster CSV Binding 1.2.1: each file's fields in order."""
    for name, fields in FIELDS.items():
        assert list(package[name][0]) == fields.replace("*", "").split()


def test_required_fields_are_filled_and_bulk_has_no_status(package: Package) -> None:
    """OneRoster CSV Binding 1.2.1: what a bulk file must and must not have."""
    for name, fields in FIELDS.items():
        required = [field[1:] for field in fields.split() if field[0] == "*"]
        for row in package[name]:
            assert [field for field in required if not row[field]] == []
            assert (row["status"], row["dateLastModified"]) == ("", "")


def test_words_are_the_standards(package: Package) -> None:
    """OneRoster CSV Binding 1.2.1: the words that a field takes."""
    for (name, field), words in WORDS.items():
        assert {row[field] for row in package[name]} <= words


def test_what_is_referred_to_is_in_the_package(package: Package) -> None:
    """OneRoster CSV Binding 1.2.1: sourcedIds of other files."""
    for (name, field), other in REFERS.items():
        known = {row["sourcedId"] for row in package[other]}
        assert {row[field] for row in package[name]} <= known


def test_ids_are_used_once(package: Package) -> None:
    """OneRoster CSV Binding 1.2.1: a sourcedId is unique in its file."""
    package.pop("manifest")
    ids = [row["sourcedId"] for records in package.values() for row in records]

    assert len(set(ids)) == len(ids)


def test_dates_and_scores_are_in_range(package: Package) -> None:
    """OneRoster CSV Binding 1.2.1: dates of ISO 8601, scores within a line item's range."""
    for row in package["results"]:
        date.fromisoformat(row["scoreDate"])
        assert 0 <= float(row["score"]) <= 100
    assert {row["studentSourcedId"] for row in package["results"]} == {
        user["sourcedId"] for user in package["users"] if user["username"] == "mina"
    }
