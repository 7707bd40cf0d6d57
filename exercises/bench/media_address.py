"""Addresses of what a run shows and plays: signed, and telling nothing of the picture.

A number of the run's actions and an index say which: the two monitors come first, then what the
last of those actions let be seen and heard.
"""

from django.core.signing import BadSignature, Signer
from django.http import Http404
from django.urls import reverse

from course.cohorts.access import may_see_practice
from course.cohorts.models import Person
from exercises.drills.asks import Json
from exercises.drills.media.medium import Medium
from exercises.models import PracticalRun
from exercises.worktop.actions import act, replay
from exercises.worktop.played import played
from exercises.worktop.set_up import SetUp
from exercises.worktop.sights import player_shows, recorder_shows
from exercises.worktop.worktop import Worktop

MONITORS = 2


def signer() -> Signer:
    return Signer(salt="exercises.bench")


def address(run: PracticalRun, number: int, index: int) -> str:
    return reverse("bench-shown", args=[signer().sign(f"{run.token}.{number}.{index}")])


def medium_for(person: object, token: str) -> Json:
    """What a token stands for, or 404: also for whoever may not see the run."""
    try:
        name, number, index = signer().unsign(token).split(".")
    except BadSignature as error:
        raise Http404 from error
    run = PracticalRun.objects.select_related("person").filter(token=name).first()
    if not (run and isinstance(person, Person) and may_see_practice(person, run.person)):
        raise Http404
    if int(index) < MONITORS and int(number) == run.done:
        return monitors(run.worktop)[int(index)].as_json()
    shown = shown_at(run, int(number))
    if int(index) >= len(shown):
        raise Http404
    return shown[int(index)].as_json()


def shown_at(run: PracticalRun, number: int) -> list[Medium]:
    """Both monitors after so many actions, and what the last one played."""
    actions = list(run.actions.filter(number__lte=number).order_by("number"))
    rows = [(row.name, row.arguments) for row in actions]
    set_up = SetUp.from_json(run.set_up)
    before = replay(set_up, rows[:-1])
    if not rows:
        return monitors(before)
    name, arguments = rows[-1]
    after = act(before, name, arguments).top
    return [*monitors(after), *played(before, name, arguments, after)]


def monitors(top: Worktop) -> list[Medium]:
    return [player_shows(top), recorder_shows(top)]
