"""What the site knows of a learner's practice on one day, as it is kept with a sign-off."""

from typing import Any

from django.utils.formats import date_format

from course.cohorts.models import Person
from exercises.models import BenchSheet, PracticalRun
from exercises.standing.scores import beliefs_of, progress_of, skills_of
from exercises.worktop.practical import Way
from exercises.worktop.shelf import practicals

SHEETS = 10


def evidence_of(person: Person) -> dict[str, Any]:
    """Skills, beliefs that answers point at, and drills, in words and numbers; five queries.

    Titles and sentences are kept, not ids: what was read that day is read again later.
    """
    drills = progress_of(person)
    return {
        "skills": [
            {
                "title": skill.title,
                "score": standing.score if standing else None,
                "answers": standing.answers if standing else 0,
                "last": standing.last_practised.isoformat() if standing else None,
            }
            for skill, standing in skills_of(person)
        ],
        "beliefs": [
            {"sentence": belief.instructor, "critical": belief.critical, "times": times}
            for belief, times, _ in beliefs_of(person)
        ],
        "completed": [each.kind.title for each in drills if each.held],
        "drills": len(drills),
        "practicals": practicals_of(person),
        "bench": seen_at_bench(person),
    }


def seen_at_bench(person: Person) -> list[dict[str, Any]]:
    """The latest sessions at the real machines, those that an instructor saw first."""
    sheets = sorted(BenchSheet.objects.of(person)[:SHEETS], key=lambda sheet: not sheet.is_seen)
    return [
        {
            "day": date_format(sheet.day, "j F Y"),
            "seen_by": sheet.by.name if sheet.is_seen else "",
            "edits": sheet.edits,
            "kept": sheet.kept,
            "missed": sheet.missed,
        }
        for sheet in sheets
    ]


def practicals_of(person: Person) -> list[dict[str, Any]]:
    """The last hand-in of each practical that was done without help, in their order."""
    done = PracticalRun.objects.filter(person=person, way=Way.ALONE, handed_in=True)
    last = {run.practical: run for run in done.only("practical", "right", "score").order_by("pk")}
    return [
        {"title": each.title, "right": last[slug].right, "score": last[slug].score}
        for slug, each in practicals().items()
        if slug in last
    ]
