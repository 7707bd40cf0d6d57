"""What the pages of the practice bench read."""

from typing import NamedTuple

from django.db.models import QuerySet
from django.http import Http404
from django.shortcuts import get_object_or_404

from course.cohorts.access import may_see_practice
from course.cohorts.models import Person
from exercises.drills.asks import Json
from exercises.drills.setting.phrases import code, length
from exercises.models import BenchAction, PracticalRun
from exercises.worktop.practical import Practical
from exercises.worktop.set_up import SetUp
from exercises.worktop.shelf import practicals

TRACKS = {"both": "picture and sound", "picture": "picture", "sound": "sound"}


class Listed(NamedTuple):
    """A practical, and the person's latest run of it."""

    practical: Practical
    run: PracticalRun | None


def listed_for(person: Person) -> list[Listed]:
    """All practicals in their order; one query."""
    latest: dict[str, PracticalRun] = {}
    columns = ("practical", "handed_in", "ended_at", "right", "score", "token", "done", "way")
    for run in PracticalRun.objects.filter(person=person).only(*columns).order_by("pk"):
        latest[run.practical] = run
    return [Listed(each, latest.get(each.slug)) for each in practicals().values()]


def runs_of(person: Person) -> QuerySet[PracticalRun]:
    """All their runs, the latest first."""
    columns = ("token", "practical", "way", "begun_at", "ended_at", "done")
    result = ("handed_in", "right", "score")
    return PracticalRun.objects.filter(person=person).only(*columns, *result).latest_first()


def run_of(person: Person, token: str) -> PracticalRun:
    """A run of the person's own, or 404."""
    return get_object_or_404(PracticalRun, token=token, person=person)


def run_seen_by(person: Person, token: str) -> PracticalRun:
    """A run of their own, or of a learner they teach; 404 for any other."""
    run = get_object_or_404(PracticalRun.objects.select_related("person"), token=token)
    if not may_see_practice(person, run.person):
        raise Http404
    return run


def last_of(run: PracticalRun) -> BenchAction | None:
    return run.actions.order_by("-number").first()


def edit_sheet(set_up: SetUp) -> list[Json]:
    """The sheet as it was written from the shot log, with whatever that has wrong."""
    bench = set_up.bench
    return [
        {
            "tape": row.tape,
            "shot": row.take,
            "in": code(row.source_in, bench),
            "out": code(row.source_out, bench),
            "at": code(row.master_in, bench),
            "lasts": length(row.source_out - row.source_in, bench.rate),
            "tracks": TRACKS[row.track],
            "says": row.says,
        }
        for row in set_up.sheet
    ]


def shot_logs(set_up: SetUp) -> list[Json]:
    """What the camera’s people wrote of each cassette: right or wrong."""
    bench = set_up.bench
    return [
        {
            "tape": tape.name,
            "takes": [
                {
                    "name": take.name,
                    "start": code(take.logged.start, bench),
                    "action": code(take.logged.action, bench),
                    "end": code(take.logged.end, bench),
                    "log": take.log,
                }
                for take in tape.takes
            ],
        }
        for tape in set_up.tapes
    ]
