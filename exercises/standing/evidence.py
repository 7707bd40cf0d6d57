"""What the site knows of a learner's practice on one day, as it is kept with a sign-off."""

from typing import Any

from course.cohorts.models import Person
from exercises.models import PracticalRun
from exercises.standing.scores import beliefs_of, progress_of, skills_of
from exercises.worktop.practical import Way
from exercises.worktop.shelf import practicals


def evidence_of(person: Person) -> dict[str, Any]:
    """Skills, beliefs that answers point at, and drills, in words and numbers; four queries.

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
    }


def practicals_of(person: Person) -> list[dict[str, Any]]:
    """The last hand-in of each practical that was done without help, in their order."""
    done = PracticalRun.objects.filter(person=person, way=Way.ALONE, handed_in=True)
    last = {run.practical: run for run in done.only("practical", "right", "score").order_by("pk")}
    return [
        {"title": each.title, "right": last[slug].right, "score": last[slug].score}
        for slug, each in practicals().items()
        if slug in last
    ]
