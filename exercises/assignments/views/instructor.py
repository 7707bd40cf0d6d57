"""The instructor's side of assignments: set, look at, change, extend, withdraw."""

from datetime import timedelta

from django.conf import settings
from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import (
    SignedInRequest,
    cohort_for,
    current_cohort_for,
    instructor_required,
    learner_for,
)
from course.cohorts.models import Cohort
from course.lessons.shelf import shelf
from course.pages.forms import form_page, posted
from exercises.assignments.assigned import counts, standings_in, standings_of
from exercises.assignments.forms import AssignmentForm, ExtensionForm, initial_of
from exercises.assignments.verbs import (
    change_assignment,
    extend,
    set_assignment,
    withdraw_assignment,
)
from exercises.models import Assignment


def assignment_in(cohort: Cohort, pk: int) -> Assignment:
    return get_object_or_404(Assignment.objects.standing(), cohort=cohort, pk=pk)


@require_safe
@instructor_required
def assignments(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    cohort = cohort_for(request.user, cohort_pk)
    found = standings_in(cohort, now=timezone.now())
    listed = [counts(each[0].assignment, each) for each in found if each]
    empty = Assignment.objects.filter(cohort=cohort).standing() if not listed else []
    context = {"cohort": cohort, "listed": listed, "empty": empty, "zone": settings.TIME_ZONE}
    return render(request, "assignments/assignments.html", context)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def new_assignment(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    cohort = current_cohort_for(request.user, cohort_pk)
    now = timezone.localtime().replace(minute=0, second=0, microsecond=0)
    initial = {"opens_at": now, "due_at": now + timedelta(days=7)}
    form = AssignmentForm(cohort, posted(request), initial=initial)
    if form.is_valid():
        made = set_assignment(request.user, cohort, form.terms())
        messages.success(request, f"“{made}” is set.")
        return redirect("assignment-board", cohort.pk, made.pk)
    return form_page(request, "assignments/form.html", form, cohort=cohort, zone=settings.TIME_ZONE)


@require_safe
@instructor_required
def assignment_board(request: SignedInRequest, cohort_pk: int, pk: int) -> HttpResponse:
    """One assignment: its people, how far each is, and the work behind it."""
    cohort = cohort_for(request.user, cohort_pk)
    found = assignment_in(cohort, pk)
    (stands,) = standings_of([found], now=timezone.now())
    context = {
        "cohort": cohort,
        "assignment": found,
        "lesson": shelf().find(found.lesson),
        "stands": stands,
        "counts": counts(found, stands),
        "zone": settings.TIME_ZONE,
    }
    return render(request, "assignments/board.html", context)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def change(request: SignedInRequest, cohort_pk: int, pk: int) -> HttpResponse:
    cohort = current_cohort_for(request.user, cohort_pk)
    found = assignment_in(cohort, pk)
    form = AssignmentForm(cohort, posted(request), initial=initial_of(found))
    if form.is_valid():
        change_assignment(found, form.terms())
        messages.success(request, f"“{found}” is changed. What was done for it stays as it is.")
        return redirect("assignment-board", cohort.pk, found.pk)
    context = {"cohort": cohort, "assignment": found, "zone": settings.TIME_ZONE}
    return form_page(request, "assignments/form.html", form, **context)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def extension(request: SignedInRequest, cohort_pk: int, pk: int, person_pk: int) -> HttpResponse:
    cohort = current_cohort_for(request.user, cohort_pk)
    learner = learner_for(request.user, cohort_pk, person_pk)
    found = assignment_in(cohort, pk)
    form = ExtensionForm(found, posted(request), initial={"due_at": found.due_at})
    if form.is_valid():
        made = extend(request.user, found, learner, **form.cleaned_data)
        until = timezone.localtime(made.due_at)
        messages.success(request, f"{learner} has until {until:%-d %B, %H:%M}.")
        return redirect("assignment-board", cohort.pk, found.pk)
    context = {"cohort": cohort, "assignment": found, "learner": learner}
    return form_page(
        request, "assignments/extension.html", form, **context, zone=settings.TIME_ZONE
    )


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def withdraw(request: SignedInRequest, cohort_pk: int, pk: int) -> HttpResponse:
    cohort = cohort_for(request.user, cohort_pk)
    found = assignment_in(cohort, pk)
    if request.method != "POST":
        context = {"cohort": cohort, "assignment": found}
        return render(request, "assignments/withdraw.html", context)
    withdraw_assignment(found)
    messages.success(request, f"“{found}” is asked no more. What was done for it stays.")
    return redirect("assignments", cohort.pk)
