"""A cohort's results as a package of OneRoster 1.2 CSV files, for a college's own system.

Source: 1EdTech, OneRoster CSV Binding 1.2.1, final release of 22 August 2023: the files, their
headers in order, and the words that some fields take. The package is “bulk”, and complete: what
a file refers to stands in another. In bulk, status and dateLastModified stay empty.

These files are read by machines. They are exact, not guarded against spreadsheet formulas.
"""

import csv
import io
import zipfile
from collections.abc import Iterator, Sequence
from datetime import datetime
from typing import Any

from course.cohorts.models import Cohort, Person
from exercises.standing.scores import Standing, practised_skills, standings

COMMON = ("sourcedId", "status", "dateLastModified")
HEADERS: dict[str, tuple[str, ...]] = {
    "orgs": (*COMMON, "name", "type", "identifier", "parentSourcedId"),
    "academicSessions": (
        *COMMON,
        *("title", "type", "startDate", "endDate", "parentSourcedId", "schoolYear"),
    ),
    "courses": (
        *COMMON,
        *("schoolYearSourcedId", "title", "courseCode", "grades", "orgSourcedId"),
        *("subjects", "subjectCodes"),
    ),
    "classes": (
        *COMMON,
        *("title", "grades", "courseSourcedId", "classCode", "classType", "location"),
        *("schoolSourcedId", "termSourcedIds", "subjects", "subjectCodes", "periods"),
    ),
    "users": (
        *COMMON,
        *("enabledUser", "username", "userIds", "givenName", "familyName", "middleName"),
        *("identifier", "email", "sms", "phone", "agentSourcedIds", "grades", "password"),
        *("userMasterIdentifier", "preferredGivenName", "preferredMiddleName"),
        *("preferredFamilyName", "primaryOrgSourcedId", "pronouns"),
    ),
    "roles": (
        *COMMON,
        *("userSourcedId", "roleType", "role", "beginDate", "endDate", "orgSourcedId"),
        "userProfileSourcedId",
    ),
    "enrollments": (
        *COMMON,
        *("classSourcedId", "schoolSourcedId", "userSourcedId", "role", "primary"),
        *("beginDate", "endDate"),
    ),
    "categories": (*COMMON, "title", "weight"),
    "lineItems": (
        *COMMON,
        *("title", "description", "assignDate", "dueDate", "classSourcedId"),
        *("categorySourcedId", "academicSessionSourcedId", "resultValueMin", "resultValueMax"),
        "schoolSourcedId",
    ),
    "results": (
        *COMMON,
        *("lineItemSourcedId", "studentSourcedId", "scoreStatus", "score", "scoreDate"),
        *("comment", "textScore", "classSourcedId", "inProgress", "incomplete", "late"),
        "missing",
    ),
}
ABSENT = (
    *("classResources", "courseResources", "demographics", "lineItemLearningObjectiveIds"),
    *("lineItemScoreScales", "resources", "resultLearningObjectiveIds", "resultScoreScales"),
    *("scoreScales", "userProfiles", "userResources"),
)
ORG, COURSE, CATEGORY = "workshop", "course", "practice"
Record = dict[str, Any]


class Package:
    """The records of one cohort, by file; two queries."""

    def __init__(self, cohort: Cohort, *, now: datetime) -> None:
        self.cohort = cohort
        self.people = list(cohort.learners.order_by("name", "pk"))
        self.standings = standings(self.people)
        self.begins = cohort.started_at.date().isoformat()
        # The clock may have been ahead when the cohort was started.
        self.ends = max(self.begins, now.date().isoformat())
        self.year = str(now.year)
        self.class_id = f"cohort-{cohort.pk}"
        self.session_id = f"session-{cohort.pk}"

    def records(self) -> dict[str, list[Record]]:
        return {
            "orgs": [{"sourcedId": ORG, "name": "Workshop", "type": "school"}],
            "academicSessions": [self.session()],
            "courses": [{"sourcedId": COURSE, "title": "Run-up", "orgSourcedId": ORG}],
            "classes": [self.class_()],
            "users": [user(person) for person in self.people],
            "roles": [role(person) for person in self.people],
            "enrollments": [self.enrollment(person) for person in self.people],
            "categories": [{"sourcedId": CATEGORY, "title": "Practice"}],
            "lineItems": list(self.line_items()),
            "results": list(self.results()),
        }

    def session(self) -> Record:
        return {
            "sourcedId": self.session_id,
            "title": self.cohort.name,
            "type": "term",
            "startDate": self.begins,
            "endDate": self.ends,
            "schoolYear": self.year,
        }

    def class_(self) -> Record:
        return {
            "sourcedId": self.class_id,
            "title": self.cohort.name,
            "courseSourcedId": COURSE,
            "classType": "scheduled",
            "schoolSourcedId": ORG,
            "termSourcedIds": self.session_id,
        }

    def enrollment(self, person: Person) -> Record:
        return {
            "sourcedId": f"place-{self.cohort.pk}-{person.pk}",
            "classSourcedId": self.class_id,
            "schoolSourcedId": ORG,
            "userSourcedId": user_id(person),
            "role": "student",
        }

    def line_items(self) -> Iterator[Record]:
        """One a skill, from 0 to 100."""
        for skill in practised_skills():
            yield {
                "sourcedId": self.item_id(skill.slug),
                "title": skill.title,
                "description": "Mean of the last ten answers, in per cent",
                "assignDate": self.begins,
                "dueDate": self.ends,
                "classSourcedId": self.class_id,
                "categorySourcedId": CATEGORY,
                "academicSessionSourcedId": self.session_id,
                "resultValueMin": 0,
                "resultValueMax": 100,
                "schoolSourcedId": ORG,
            }

    def results(self) -> Iterator[Record]:
        """Only for what was practised: nothing is put down as nought that nobody tried."""
        for person in self.people:
            own = self.standings[person.pk]
            for skill in practised_skills():
                if skill.slug in own:
                    yield self.result(person, own[skill.slug])

    def result(self, person: Person, standing: Standing) -> Record:
        slug = standing.skill.slug
        return {
            "sourcedId": f"result-{self.cohort.pk}-{person.pk}-{slug}",
            "lineItemSourcedId": self.item_id(slug),
            "studentSourcedId": user_id(person),
            "scoreStatus": "fully graded",
            "score": standing.score,
            "scoreDate": standing.last_practised.date().isoformat(),
            "classSourcedId": self.class_id,
        }

    def item_id(self, skill: str) -> str:
        return f"skill-{self.cohort.pk}-{skill}"


def user_id(person: Person) -> str:
    return f"person-{person.pk}"


def user(person: Person) -> Record:
    """The standard asks for two names; who has one has a dash for the other."""
    given, _, family = person.name.rpartition(" ")
    return {
        "sourcedId": user_id(person),
        "enabledUser": "true" if person.is_active else "false",
        "username": person.sign_in_name,
        "givenName": given or person.name,
        "familyName": family if given else "-",
        "email": person.email,
        "primaryOrgSourcedId": ORG,
    }


def role(person: Person) -> Record:
    return {
        "sourcedId": f"role-{person.pk}",
        "userSourcedId": user_id(person),
        "roleType": "primary",
        "role": "student",
        "orgSourcedId": ORG,
    }


def manifest() -> list[tuple[str, str]]:
    """What is in the package, file by file."""
    versions = [("manifest.version", "1.0"), ("oneroster.version", "1.2")]
    present = dict.fromkeys(HEADERS, "bulk")
    files = present | dict.fromkeys(ABSENT, "absent")
    named = [(f"file.{name}", files[name]) for name in sorted(files, key=str.lower)]
    return [("propertyName", "value"), *versions, *named, ("source.systemName", "Run-up")]


def as_csv(rows: Sequence[Sequence[Any]]) -> str:
    out = io.StringIO(newline="")
    csv.writer(out).writerows(rows)
    return out.getvalue()


def packed(cohort: Cohort, *, now: datetime) -> bytes:
    """The package as a ZIP file, its files at the top."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as package:
        package.writestr("manifest.csv", as_csv(manifest()))
        for name, records in Package(cohort, now=now).records().items():
            header = HEADERS[name]
            rows = [[record.get(field, "") for field in header] for record in records]
            package.writestr(f"{name}.csv", as_csv([header, *rows]))
    return out.getvalue()
