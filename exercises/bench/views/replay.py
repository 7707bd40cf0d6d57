"""A run looked at afterwards, by whoever made it and by those who teach them."""

from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_safe

from course.cohorts.access import SignedInRequest, sign_in_required
from exercises.bench.media_address import address
from exercises.bench.panels import as_it_stood, played_by
from exercises.bench.reads import run_seen_by
from exercises.mastery.misconceptions import MISCONCEPTIONS
from exercises.worktop.actions import replay
from exercises.worktop.set_up import SetUp


@require_safe
@sign_in_required
def bench_debrief(request: SignedInRequest, token: str) -> HttpResponse:
    """What it came to, once it is handed in."""
    run = run_seen_by(request.user, token)
    if run.debrief is None:
        return redirect("bench-replay", token, run.done)
    own = run.person_id == request.user.pk
    beliefs = [MISCONCEPTIONS[each].learner for each in run.debrief["beliefs"]]
    context = {"run": run, "practical": run.content, "found": run.debrief, "own": own}
    return render(request, "bench/debrief.html", context | {"beliefs": beliefs})


@require_safe
@sign_in_required
def bench_replay(request: SignedInRequest, token: str, number: int) -> HttpResponse:
    """The bench as it stood after so many actions: the same page for all who may see it."""
    run = run_seen_by(request.user, token)
    if number > run.done:
        raise Http404
    actions = list(run.actions.order_by("number"))
    rows = [(row.name, row.arguments) for row in actions[:number]]
    top = replay(SetUp.from_json(run.set_up), rows)
    last = actions[number - 1] if number else None
    context = {
        "run": run,
        "practical": run.content,
        "number": number,
        "last": last,
        "actions": actions,
        "before": number - 1,
        "after": number + 1 if number < run.done else None,
        "panels": as_it_stood(run, top, last) | {"played": played_by(run, last)},
        "monitor_urls": [address(run, number, index) for index in (0, 1)],
        "own": run.person_id == request.user.pk,
    }
    return render(request, "bench/replay.html", context)
