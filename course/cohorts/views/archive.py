"""Cohorts that are over: the list of them, putting one away, opening it again."""

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import SignedInRequest, cohort_for, instructor_required
from course.cohorts.archiving import archive, reopen
from course.cohorts.forms import ArchiveForm
from course.cohorts.models import Cohort
from course.pages.forms import form_page, posted


@require_safe
@instructor_required
def archived_cohorts(request: SignedInRequest) -> HttpResponse:
    put_away = Cohort.objects.taught_by(request.user).archived().with_sizes()
    return render(request, "cohorts/archived.html", {"cohorts": put_away})


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def archive_cohort(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    """Say what goes and what stays, and ask for the day; put it away by POST."""
    cohort = cohort_for(request.user, cohort_pk)
    form = ArchiveForm(posted(request), initial={"remove_on": cohort.remove_on})
    if not form.is_valid():
        return form_page(request, "cohorts/archive.html", form, cohort=cohort)
    archive(request.user, cohort, form.cleaned_data["remove_on"])
    day = cohort.remove_on
    told = f", and removed on {day:%-d %B %Y}" if day else ""
    messages.success(request, f"{cohort} is archived{told}.")
    return redirect("archived-cohorts")


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def reopen_cohort(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    cohort = cohort_for(request.user, cohort_pk)
    if request.method != "POST":
        return redirect("archived-cohorts")
    reopen(request.user, cohort)
    messages.success(request, f"{cohort} is among your cohorts again.")
    return redirect("cohorts")
