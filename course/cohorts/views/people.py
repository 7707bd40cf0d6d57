"""Who is in a cohort and who teaches it: moving, taking out, letting others teach."""

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_http_methods

from course.cohorts.access import (
    SignedInRequest,
    cohort_for,
    fellow_for,
    instructor_required,
    learner_for,
    other_cohorts,
    pupil_for,
)
from course.cohorts.forms import FellowForm, MoveForm
from course.cohorts.models import Cohort
from course.cohorts.moving import move, remove
from course.cohorts.teaching import (
    LastInstructorError,
    UnknownInstructorError,
    add_instructor,
    remove_instructor,
)
from course.pages.forms import form_page, posted


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def move_person(request: SignedInRequest, cohort_pk: int, person_pk: int) -> HttpResponse:
    """Ask where to, move by POST; sent twice, it says that it is done."""
    cohort, learner = cohort_for(request.user, cohort_pk), pupil_for(request.user, person_pk)
    form = MoveForm(posted(request), cohorts=other_cohorts(request.user, cohort))
    if form.is_valid():
        target: Cohort = form.cleaned_data["cohort"]
        if move(request.user, learner, cohort, target):
            messages.success(request, f"{learner} is in {target} now, with all their answers.")
        else:
            messages.info(request, f"{learner} is not in {cohort} any more. Nothing is changed.")
        return redirect("cohort", cohort.pk)
    context = {"cohort": cohort, "learner": learner_for(request.user, cohort_pk, person_pk)}
    return form_page(request, "cohorts/move.html", form, **context)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def remove_person(request: SignedInRequest, cohort_pk: int, person_pk: int) -> HttpResponse:
    cohort = cohort_for(request.user, cohort_pk)
    learner = learner_for(request.user, cohort_pk, person_pk)
    if request.method != "POST":
        others = other_cohorts(request.user, cohort)
        context = {"cohort": cohort, "learner": learner, "others": others.exists()}
        return render(request, "cohorts/remove.html", context)
    remove(request.user, learner, cohort)
    messages.success(request, f"{learner} is not in {cohort} any more. Their answers are theirs.")
    return redirect("cohort", cohort.pk)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def instructors(request: SignedInRequest, cohort_pk: int) -> HttpResponse:
    """Who teaches the cohort; by POST one more."""
    cohort = cohort_for(request.user, cohort_pk)
    form = FellowForm(posted(request))
    if form.is_valid():
        try:
            added, new = add_instructor(request.user, cohort, form.cleaned_data["sign_in_name"])
        except UnknownInstructorError:
            form.add_error("sign_in_name", "No instructor signs in with this name.")
        else:
            told = f"teaches {cohort}, too" if new else f"teaches {cohort} already"
            messages.success(request, f"{added} {told}.")
            return redirect("instructors", cohort.pk)
    context = {"cohort": cohort, "fellows": cohort.instructors.all()}
    return form_page(request, "cohorts/instructors.html", form, **context)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def instructor_removed(request: SignedInRequest, cohort_pk: int, fellow_pk: int) -> HttpResponse:
    cohort, fellow = (
        cohort_for(request.user, cohort_pk),
        fellow_for(request.user, cohort_pk, fellow_pk),
    )
    if request.method != "POST":
        context = {"cohort": cohort, "fellow": fellow}
        return render(request, "cohorts/instructor_removed.html", context)
    try:
        remove_instructor(request.user, cohort, fellow)
    except LastInstructorError:
        messages.error(request, f"Somebody must teach {cohort}. Add another instructor first.")
        return redirect("instructors", cohort.pk)
    messages.success(request, f"{fellow} teaches {cohort} no more.")
    return redirect("cohorts") if fellow == request.user else redirect("instructors", cohort.pk)
