"""The verbs of the practice bench: begin a practical, do one thing, begin again."""

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from django.db import transaction
from django.utils import timezone

from course.cohorts.equipping import bench_of
from course.cohorts.models import Person
from exercises.models import BenchAction, PracticalRun
from exercises.practice.attempts import hold
from exercises.worktop.actions import act
from exercises.worktop.actions.hints import DEPTHS
from exercises.worktop.debrief import debrief
from exercises.worktop.done import BenchRefused
from exercises.worktop.guide import guided, next_step
from exercises.worktop.laying_out import lay_out
from exercises.worktop.practical import Practical, Way
from exercises.worktop.worktop import Worktop

KEPT = ("state", "done", "handed_in", "ended_at", "debrief", "right", "score")


class DoneElsewhereError(Exception):
    """Another page of the same run has done something else since; nothing was done."""


def begin(
    person: Person, practical: Practical, way: Way, *, now: datetime | None = None
) -> PracticalRun:
    """The run that goes on already, where there is one. Laid out at the person's own bench."""
    set_up = lay_out(practical, bench_of(person).as_settings())
    with transaction.atomic():
        hold(person)
        going = PracticalRun.objects.open_of(person, practical.slug).first()
        if going:
            return going
        run = PracticalRun.objects.create(
            person=person,
            practical=practical.slug,
            way=way,
            set_up=set_up.as_json(),
            state=Worktop.at_first(set_up).as_json(),
            begun_at=now or timezone.now(),
        )
        if way is Way.FINISH:
            do_first_half(run, now)
        return run


def do_first_half(run: PracticalRun, now: datetime | None) -> None:
    """Half of the recordings of the planner's plan, made before the learner's hands are on it."""
    top = run.worktop
    steps = [step for step, _ in guided(top.set_up)]
    made = [number for number, step in enumerate(steps) if step.name == "look-back"]
    for step in steps[: made[(len(made) - 1) // 2] + 1] if len(made) > 1 else []:
        do(run, run.done, step.name, step.arguments, now=now)


def do(
    run: PracticalRun,
    seen: int,
    name: str,
    arguments: Mapping[str, Any],
    *,
    now: datetime | None = None,
) -> BenchAction:
    """Do one thing on a page that has `seen` so many actions; the run is brought in step.

    The same once more is done once. Raises BenchRefused where hands or machines can't, and
    DoneElsewhereError where the page has not seen all that was done.
    """
    now = now or timezone.now()
    with transaction.atomic():
        # Whoever comes second waits here, and then finds what the first one did.
        kept = PracticalRun.objects.select_for_update().only("done", "ended_at").get(pk=run.pk)
        if kept.done != seen:
            run.refresh_from_db()
            return same_again(run, seen, name, arguments)
        if run.done != seen:
            run.refresh_from_db()
        if kept.ended_at and not run.handed_in:
            raise BenchRefused("This practical was begun again: nothing more is done to this tape.")
        done = act(run.worktop, name, arguments)
        row = BenchAction.objects.create(
            run=run,
            number=seen + 1,
            name=name,
            arguments=dict(arguments),
            told=done.told,
            sign=done.sign,
            clock=done.top.clock,
            at=now,
        )
        keep(run, done.top, now)
    return row


def same_again(
    run: PracticalRun, seen: int, name: str, arguments: Mapping[str, Any]
) -> BenchAction:
    """What was done already, where the same was sent twice; else DoneElsewhereError."""
    before = run.actions.filter(number=seen + 1).first()
    if before is None or (before.name, before.arguments) != (name, dict(arguments)):
        raise DoneElsewhereError
    return before


def do_next(run: PracticalRun, seen: int) -> BenchAction:
    """The step that comes next, while it is shown how."""
    step = next_step(run.worktop)
    if run.way != Way.WATCH or step is None:
        raise BenchRefused("There is no step to show here. Go on by hand.")
    return do(run, seen, step.name, step.arguments)


def ask_hint(run: PracticalRun, seen: int, depth: str) -> BenchAction:
    """What to do next, why, or how; BenchRefused where nobody can say, or it is done alone."""
    step = next_step(run.worktop)
    if run.way == Way.ALONE or step is None or depth not in DEPTHS:
        raise BenchRefused("There is no hint to give here. Go on by hand.")
    return do(run, seen, "hint", {"depth": depth, "told": f"Hint: {getattr(step, depth)}"})


def keep(run: PracticalRun, top: Worktop, now: datetime) -> None:
    run.put(top)
    if top.handed_in:
        rows = run.actions.order_by("number").values_list("name", "arguments")
        found = debrief(top.set_up, list(rows))
        run.handed_in, run.ended_at = True, now
        run.debrief, run.right, run.score = found.as_json(), found.right, found.score
    run.save(update_fields=list(KEPT))


def begin_again(
    run: PracticalRun, practical: Practical, way: Way, *, now: datetime | None = None
) -> PracticalRun:
    """A new run of the same practical; the old one is kept as it stood."""
    with transaction.atomic():
        hold(run.person)
        still = PracticalRun.objects.filter(pk=run.pk, ended_at=None)
        still.update(ended_at=now or timezone.now())
        return begin(run.person, practical, way, now=now)
