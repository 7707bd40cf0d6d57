"""People by CSV: send the file, see every line's fate, write it, hand the links over."""

from typing import Any

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import SignedInRequest, cohort_for, instructor_required, roster_for
from course.cohorts.models import Cohort, Person, RosterUpload
from course.cohorts.reset import ends, make_first_links, waiting_among
from course.cohorts.roster.fates import What, digest_of
from course.cohorts.roster.form import RosterForm
from course.cohorts.roster.reckoning import fates_of
from course.cohorts.roster.sheet import COLUMNS, RosterError, read
from course.cohorts.roster.writing import ChangedError, send, write
from course.pages.forms import form_page, posted
from course.spreadsheets import csv_lines

TITLES = {
    What.NEW: "New account",
    What.MOVES: "Moves",
    What.JOINS: "Joins",
    What.SAME: "Already there",
    What.WRONG: "Left out",
}


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def roster(request: SignedInRequest, cohort_pk: int | None = None) -> HttpResponse:
    """Choose a file: for one cohort, or for all that the instructor teaches."""
    cohort = None if cohort_pk is None else cohort_for(request.user, cohort_pk)
    if cohort and cohort.is_archived:
        return redirect("cohort", cohort.pk)
    form = RosterForm(posted(request), request.FILES or None)
    if form.is_valid():
        try:
            return redirect("roster-upload", send(request.user, form.content(), cohort).token)
        except RosterError as error:
            form.add_error("file", str(error))
    return form_page(request, "roster/send.html", form, cohort=cohort)


@require_safe
@instructor_required
def roster_template(request: SignedInRequest) -> HttpResponse:
    lines = "".join(csv_lines(COLUMNS, examples(request.user)))
    response = HttpResponse(lines, content_type="text/csv; charset=utf-8")
    response.headers["Content-Disposition"] = 'attachment; filename="roster.csv"'
    return response


def examples(instructor: Person) -> list[tuple[str, str, str, str]]:
    cohort = Cohort.objects.taught_by(instructor).current().first()
    return [("Wyn Carrow", "wyn@example.org", str(cohort or "Name of the cohort"), "")]


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def roster_upload(request: SignedInRequest, token: str) -> HttpResponse:
    """Every line's fate; by POST it is written, and the new people's links are shown."""
    upload = roster_for(request.user, token)
    if request.method == "POST":
        try:
            write(upload, request.POST.get("seen", ""))
        except ChangedError:
            messages.error(request, "Something has changed meanwhile. Look through it again.")
            return redirect("roster-upload", token)
        return written(request, upload, links=True)
    return written(request, upload) if upload.written_at else preview(request, upload)


def preview(request: SignedInRequest, upload: RosterUpload) -> HttpResponse:
    fates = fates_of(request.user, upload.text, upload.cohort)
    context = {
        "upload": upload,
        "fates": [(fate, TITLES[fate.what]) for fate in fates],
        "ignored": read(upload.text).ignored,
        "counts": counted(fate.what for fate in fates),
        "changing": sum(fate.changes for fate in fates),
        "wrong": [fate for fate in fates if fate.what == What.WRONG],
        "seen": digest_of(fates),
    }
    return render(request, "roster/preview.html", context)


def counted(whats: Any) -> list[tuple[str, int]]:
    """How many lines have each fate, those that happen."""
    told = list(whats)
    return [(title, told.count(what)) for what, title in TITLES.items() if what in told]


def written(request: SignedInRequest, upload: RosterUpload, *, links: bool = False) -> HttpResponse:
    """What was written; with `links`, those of new people who have not chosen a password."""
    made = Person.objects.filter(pk__in=upload.made, memberships__cohort__instructors=request.user)
    people = list(made.distinct().order_by("name", "pk"))
    waiting = waiting_among(request.user, people)
    unset = [each for each in people if each.is_active and not each.has_usable_password()]
    context = {
        "upload": upload,
        "counts": [(TITLES[What(what)], count) for what, count in upload.counts.items()],
        "made": people,
        "waiting": waiting,
        "others": [person for person in unset if person not in waiting],
        "links": make_first_links(request.user, waiting, request) if links else [],
        "ends": ends(),
    }
    return render(request, "roster/written.html", context)
