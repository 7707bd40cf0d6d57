"""The worktop: a page, one thing done at a time, pictures and sounds."""

from collections.abc import Callable

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_http_methods, require_safe
from django_htmx.http import HttpResponseClientRedirect

from course.cohorts.access import SignedInRequest, sign_in_required
from course.made import made_of
from course.sent import sent
from exercises.bench.forms import form_of
from exercises.bench.forms.base import HandsForm
from exercises.bench.forms.edits import HintForm
from exercises.bench.media_address import address, medium_for
from exercises.bench.panels import panels, played_by
from exercises.bench.reads import edit_sheet, last_of, run_of, shot_logs
from exercises.bench.verbs import DoneElsewhereError, ask_hint, do, do_next
from exercises.drills.asks import Json
from exercises.models import BenchAction, PracticalRun
from exercises.tape import Bench
from exercises.worktop.done import BenchRefused
from exercises.worktop.worktop import Worktop

ELSEWHERE = (
    "Something else was done at this bench since, on another page of yours. Nothing was done now: "
    "this is how it stands."
)


@require_safe
@sign_in_required
def bench_run(request: SignedInRequest, token: str) -> HttpResponse:
    run = run_of(request.user, token)
    if not run.is_open:
        return redirect("bench-debrief", token)
    return show(request, run, last_of(run))


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def bench_do(request: SignedInRequest, token: str) -> HttpResponse:
    """Do one thing; somebody who arrives by a link (after signing in again) is sent on."""
    run = run_of(request.user, token)
    if request.method != "POST":
        return redirect("bench-run", token)
    return shown(request, run, lambda: by_form(run, form_of(request.POST, bench_at(run))))


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def bench_step(request: SignedInRequest, token: str) -> HttpResponse:
    """While it is shown how: do the step that comes next."""
    run = run_of(request.user, token)
    if request.method != "POST":
        return redirect("bench-run", token)
    form = HandsForm(request.POST, bench=bench_at(run))
    return shown(request, run, lambda: do_next(run, known(form)))


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def bench_hint(request: SignedInRequest, token: str) -> HttpResponse:
    """What would come next, why, and how: asked for one after the other."""
    run = run_of(request.user, token)
    if request.method != "POST":
        return redirect("bench-run", token)
    form = HintForm(request.POST, bench=bench_at(run))
    return shown(request, run, lambda: ask_hint(run, known(form), form.cleaned_data["depth"]))


def shown(
    request: SignedInRequest, run: PracticalRun, act: Callable[[], BenchAction]
) -> HttpResponse:
    """What came of it: what changed, or the page anew; and a sentence where nothing did."""
    last, stood = last_of(run), run.worktop
    before = panels(run, last)
    try:
        row = act()
    except BenchRefused as refusal:
        return show_refused(request, run, last, str(refusal), 422)
    except DoneElsewhereError:
        return show_refused(request, run, last_of(run), ELSEWHERE, 409)
    if not request.htmx:
        return redirect(run)
    if run.handed_in:
        return HttpResponseClientRedirect(run.get_absolute_url())
    return show_changed(request, context_of(run, row, stood), before)


def by_form(run: PracticalRun, form: HandsForm) -> BenchAction:
    return do(run, known(form), form.action, form.arguments())


def known(form: HandsForm) -> int:
    """How many actions whoever sent it knew of; BenchRefused for a form that is wrong."""
    if not form.is_valid():
        raise BenchRefused(form.refusal)
    return form.known


@require_safe
def bench_shown(request: HttpRequest, token: str) -> HttpResponse:
    return sent(request, made_of(medium_for(request.user, token)))


def bench_at(run: PracticalRun) -> Bench:
    return run.worktop.set_up.bench


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
    """The sentence in its place; where the page is behind, every panel as it stands too."""
    if not request.htmx:
        return show(request, run, last, refusal, status)
    if status == 409:
        context = context_of(run, last)
        context |= {"changed": set(context["panels"]), "refusal": refusal}
        return render(request, "bench/changed.html", context, status=status)
    context = {"run": run, "refusal": refusal}
    return render(request, "bench/run.html#refused", context, status=status)


def show_changed(request: SignedInRequest, context: Json, before: dict[str, Json]) -> HttpResponse:
    """The panels that differ from what the page has, each in its own place."""
    now = context["panels"]
    changed = {name for name in now if now[name] != before[name]} | {"told", "played"}
    return render(request, "bench/changed.html", context | {"changed": changed})


def context_of(run: PracticalRun, last: BenchAction | None, stood: Worktop | None = None) -> Json:
    """`stood` is how the bench stood before the last action, where that is known."""
    found = panels(run, last)
    found["played"] = played_by(run, last, stood)
    return {
        "run": run,
        "panels": found,
        "monitor_urls": [address(run, run.done, index) for index in (0, 1)],
        "seen": run.done,
    }
