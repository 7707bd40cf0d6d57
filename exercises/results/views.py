"""What an instructor takes away: tables for a spreadsheet, a package for a college's system."""

from django.http import Http404, HttpResponse, StreamingHttpResponse
from django.http.response import HttpResponseBase
from django.shortcuts import render
from django.utils import timezone
from django.utils.text import slugify
from django.views.decorators.http import require_safe

from course.cohorts.access import SignedInRequest, cohort_for, instructor_required
from course.cohorts.models import Cohort
from course.spreadsheets import csv_lines
from exercises.results.oneroster import packed
from exercises.results.tables import TABLES


@require_safe
@instructor_required
def results(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    cohort = cohort_for(request.user, cohort_pk)
    context = {"cohort": cohort, "tables": list(TABLES.values())}
    return render(request, "results/results.html", context)


@require_safe
@instructor_required
def results_table(request: SignedInRequest, cohort_pk: int, table: str) -> HttpResponseBase:
    cohort = cohort_for(request.user, cohort_pk)
    if table not in TABLES:
        raise Http404("There is no such table.")
    lines = csv_lines(TABLES[table].header(), TABLES[table].rows(cohort))
    response = StreamingHttpResponse(lines, content_type="text/csv; charset=utf-8")
    return named(response, cohort, f"{table}.csv")


@require_safe
@instructor_required
def results_package(request: SignedInRequest, cohort_pk: int) -> HttpResponseBase:
    cohort = cohort_for(request.user, cohort_pk)
    content = packed(cohort, now=timezone.now())
    return named(HttpResponse(content, content_type="application/zip"), cohort, "oneroster.zip")


def named(response: HttpResponseBase, cohort: Cohort, ending: str) -> HttpResponseBase:
    """Told to be saved, under a name that says whose it is and of which day."""
    whose = slugify(cohort.name) or f"cohort-{cohort.pk}"
    name = f"{whose}-{timezone.localdate():%Y-%m-%d}-{ending}"
    response.headers["Content-Disposition"] = f'attachment; filename="{name}"'
    return response
