"""Joining a cohort: by a code that is typed, or by a link that has it."""

from django.conf import settings
from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_http_methods

from course.cohorts.access import to_sign_in
from course.cohorts.forms import CodeForm
from course.cohorts.joining import ONLY_LEARNERS, UnknownCodeError, cohort_of_code, join
from course.cohorts.models import Cohort, Person
from course.cohorts.pages import unknown_code
from course.pages.forms import form_page, posted
from course.pages.limits import limited


@require_http_methods(["GET", "HEAD", "POST"])
@limited
def join_by_code(request: HttpRequest) -> HttpResponse:
    if not may_join(request):
        return only_learners(request)
    form = CodeForm(posted(request))
    if form.is_valid():
        try:
            cohort = cohort_of_code(request, form.cleaned_data["code"])
        except UnknownCodeError as error:
            form.add_error("code", str(error))
        else:
            return redirect("join-link", cohort.join_code)
    return form_page(request, "cohorts/join.html", form)


@require_http_methods(["GET", "HEAD", "POST"])
@limited
def join_by_link(request: HttpRequest, code: str) -> HttpResponse:
    """Show which cohort the link opens; a learner joins it by POST, a stranger signs in first."""
    if not may_join(request):
        return only_learners(request)
    try:
        cohort = cohort_of_code(request, code)
    except UnknownCodeError as error:
        return unknown_code(request, error)
    if request.method != "POST":
        return offer(request, cohort)
    return take_place(request, cohort)


def may_join(request: HttpRequest) -> bool:
    return not isinstance(request.user, Person) or request.user.is_learner


def only_learners(request: HttpRequest) -> HttpResponse:
    status = 403 if request.method == "POST" else 200
    return render(request, "cohorts/only_learners.html", {"sentence": ONLY_LEARNERS}, status=status)


def offer(request: HttpRequest, cohort: Cohort) -> HttpResponse:
    context = {
        "cohort": cohort,
        "instructors": cohort.instructors.all(),
        "already": cohort.learners.filter(pk=request.user.pk).exists(),
    }
    return render(request, "cohorts/join_link.html", context)


def take_place(request: HttpRequest, cohort: Cohort) -> HttpResponse:
    if not isinstance(request.user, Person):
        return to_sign_in(request)
    if join(request.user, cohort):
        messages.success(request, f"You have joined {cohort}.")
    else:
        messages.info(request, f"You are in {cohort} already. Nothing is changed.")
    return redirect(settings.LOGIN_REDIRECT_URL)
