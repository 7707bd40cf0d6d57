"""The worktop: a page, one thing done at a time, pictures and sounds."""

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import SignedInRequest, sign_in_required
from course.made import made_of
from course.sent import sent
from exercises.bench.forms import form_of
from exercises.bench.forms.base import HandsForm
from exercises.bench.media_address import address, medium_for
from exercises.bench.panels import panels, played_by
from exercises.bench.reads import edit_sheet, last_of, run_of, shot_logs
from exercises.bench.verbs import DoneElsewhereError, do
from exercises.drills.asks import Json
from exercises.models import BenchAction, PracticalRun
from exercises.worktop.done import BenchRefused
from exercises.worktop.guide import next_step
from exercises.worktop.practical import Way

NO_STEP = "There is no step to show here. Go on by hand."
ELSEWHERE = (
    "Something else was done at this bench since, on another page of yours. Nothing was done now: "
    "this is how it stands."
)


@require_safe
@sign_in_required
def bench_run(request: SignedInRequest, token: str) -> HttpResponse:
    run = run_of(request.user, token)
    return show(request, run, last_of(run))


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def bench_do(request: SignedInRequest, token: str) -> HttpResponse:
    """Do one thing; somebody who arrives by a link (after signing in again) is sent on."""
    run = run_of(request.user, token)
    if request.method != "POST":
        return redirect("bench-run", token)
    before = panels(run, None)
    try:
        form = form_of(request.POST, run.worktop.set_up.bench)
    except BenchRefused as refusal:
        return show_refused(request, run, last_of(run), str(refusal), 422)
    if not form.is_valid():
        return show_refused(request, run, last_of(run), form.refusal, 422)
    return done(request, run, before, form.known, form.action, form.arguments())


def done(
    request: SignedInRequest,
    run: PracticalRun,
    before: dict[str, Json],
    known: int,
    action: str,
    arguments: Json,
) -> HttpResponse:
    """What came of it: what changed, or the page anew."""
    try:
        row = do(run, known, action, arguments)
    except BenchRefused as refusal:
        return show_refused(request, run, last_of(run), str(refusal), 422)
    except DoneElsewhereError:
        run.refresh_from_db()
        return show_refused(request, run, last_of(run), ELSEWHERE, 409)
    if not request.htmx:
        return redirect(run)
    return show_changed(request, run, row, before)


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def bench_step(request: SignedInRequest, token: str) -> HttpResponse:
    """While it is shown how: do the step that comes next."""
    run = run_of(request.user, token)
    if request.method != "POST":
        return redirect("bench-run", token)
    before, form = panels(run, None), HandsForm(request.POST, bench=run.worktop.set_up.bench)
    step = next_step(run.worktop)
    if step is None or not form.is_valid() or run.way != Way.WATCH:
        return show_refused(request, run, last_of(run), NO_STEP, 422)
    return done(request, run, before, form.known, step.name, step.arguments)


@require_safe
def bench_shown(request: HttpRequest, token: str) -> HttpResponse:
    return sent(request, made_of(medium_for(request.user, token)))


def show(
    request: SignedInRequest,
    run: PracticalRun,
    last: BenchAction | None,
    refusal: str = "",
    status: int = 200,
) -> HttpResponse:
    set_up = run.worktop.set_up
    context = context_of(run, last) | {
        "refusal": refusal,
        "practical": run.content,
        "sheet": edit_sheet(set_up),
        "logs": shot_logs(set_up),
        "actions": run.actions.order_by("-number")[:200],
    }
    return render(request, "bench/run.html", context, status=status)


def show_refused(
    request: SignedInRequest, run: PracticalRun, last: BenchAction | None, refusal: str, status: int
) -> HttpResponse:
    if not request.htmx or status == 409:
        response = show(request, run, last, refusal, status)
        response.headers["HX-Retarget"] = "body"
        response.headers["HX-Reswap"] = "innerHTML"
        return response
    context = {"run": run, "refusal": refusal}
    return render(request, "bench/run.html#refused", context, status=status)


def show_changed(
    request: SignedInRequest, run: PracticalRun, row: BenchAction, before: dict[str, Json]
) -> HttpResponse:
    """The panels that differ from what the page has, each in its own place."""
    context = context_of(run, row)
    now = context["panels"]
    changed = {name for name in now if now[name] != before[name]} | {"told", "played"}
    return render(request, "bench/changed.html", context | {"changed": changed})


def context_of(run: PracticalRun, last: BenchAction | None) -> Json:
    found = panels(run, last)
    found["played"] = played_by(run, last)
    return {
        "run": run,
        "panels": found,
        "monitor_urls": [address(run, run.done, index) for index in (0, 1)],
        "seen": run.done,
    }
