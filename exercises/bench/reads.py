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
    """The brief as a sheet: each wanted shot, once for the tracks that it is wanted on."""
    brief, bench = set_up.document["brief"], set_up.bench
    rows: dict[tuple[str, int, int, int], list[str]] = {}
    for side in ("picture", "sound"):
        for shot in brief[side]:
            place = (shot["source"], shot["in"], shot["out"], shot["at"])
            rows.setdefault(place, []).append(side)
    return [
        {
            "tape": tape,
            "shot": name_of(set_up, tape, in_),
            "in": code(in_, bench),
            "out": code(out, bench),
            "at": code(at, bench),
            "lasts": length(out - in_, bench.rate),
            "tracks": " and ".join(sides),
        }
        for (tape, in_, out, at), sides in sorted(rows.items(), key=lambda row: row[0][3])
    ]


def name_of(set_up: SetUp, tape: str, frame: int) -> str:
    shelf = set_up.by_name.get(tape)
    take = shelf.take_at(frame) if shelf else None
    return take.name if take else ""


def shot_logs(set_up: SetUp) -> list[Json]:
    """What the camera’s people wrote of each cassette."""
    bench = set_up.bench
    return [
        {
            "tape": tape.name,
            "takes": [
                {
                    "name": take.name,
                    "start": code(take.start, bench),
                    "action": code(take.action, bench),
                    "end": code(take.end, bench),
                    "log": take.log,
                }
                for take in tape.takes
            ],
        }
        for tape in set_up.tapes
    ]
