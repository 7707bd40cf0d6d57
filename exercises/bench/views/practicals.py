"""The practicals: the list, one with its brief, and beginning it."""

from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import SignedInRequest, sign_in_required
from course.cohorts.equipping import bench_of
from course.lessons.shelf import shelf
from course.pages.forms import posted
from exercises.bench.forms.beginning import BeginForm
from exercises.bench.reads import edit_sheet, listed_for, run_of, shot_logs
from exercises.bench.verbs import begin, begin_again
from exercises.models import PracticalRun
from exercises.worktop.laying_out import lay_out
from exercises.worktop.practical import Practical
from exercises.worktop.shelf import practicals


@require_safe
@sign_in_required
def bench(request: SignedInRequest) -> HttpResponse:
    return render(request, "bench/bench.html", {"practicals": listed_for(request.user)})


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def practical(request: SignedInRequest, slug: str) -> HttpResponse:
    """Its brief, and how it may be begun; whoever has one going goes on with that."""
    found = practical_or_404(slug)
    form = BeginForm(posted(request), practical=found)
    if form.is_valid():
        return redirect(begin(request.user, found, form.chosen()))
    set_up = lay_out(found, bench_of(request.user).as_settings())
    context = {
        "practical": found,
        "lesson_title": lesson_title(found.lesson),
        "form": form,
        "minutes": set_up.minutes,
        "sheet": edit_sheet(set_up),
        "logs": shot_logs(set_up),
        "going": PracticalRun.objects.open_of(request.user, slug).first(),
    }
    return render(request, "bench/practical.html", context, status=422 if form.is_bound else 200)


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def bench_again(request: SignedInRequest, token: str) -> HttpResponse:
    """Begin the practical of a run again; the run is kept as it stood."""
    run = run_of(request.user, token)
    found = practical_or_404(run.practical)
    if request.method != "POST":
        return redirect("practical", run.practical)
    form = BeginForm(request.POST, practical=found)
    if not form.is_valid():
        return redirect("practical", run.practical)
    return redirect(begin_again(run, found, form.chosen()))


def lesson_title(slug: str) -> str:
    lesson = shelf().find(slug)
    return lesson.title if lesson else ""


def practical_or_404(slug: str) -> Practical:
    found = practicals().get(slug)
    if found is None:
        raise Http404
    return found
