"""A new password by a link: the instructor makes it, the learner uses it."""

from typing import Any

from django.conf import settings
from django.contrib import messages
from django.contrib.auth import login
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.cache import never_cache
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_http_methods

from course.cohorts.access import SignedInRequest, cohort_for, instructor_required, learner_for
from course.cohorts.agreeing import refused_of, standing_of
from course.cohorts.forms import NewPasswordForm
from course.cohorts.known_browser import remember
from course.cohorts.models import Person
from course.cohorts.reset import (
    LinkSpentError,
    ends,
    make_reset_link,
    person_of_link,
    use_reset_link,
)
from course.pages.forms import form_page, posted


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def reset_link(request: SignedInRequest, cohort_pk: int, person_pk: int) -> HttpResponse:
    """Ask whether to make a link; by POST make it, and show it this once."""
    learner = learner_for(request.user, cohort_pk, person_pk)
    context: dict[str, Any] = {"cohort": cohort_for(request.user, cohort_pk), "learner": learner}
    if request.method == "POST":
        link = make_reset_link(request.user, learner, request)
        return render(request, "cohorts/reset_link.html", context | {"link": link, "ends": ends()})
    context |= {
        "made": learner.reset_links.select_related("made_by"),
        "standing": standing_of(request.user, learner),
        "refused": refused_of(request.user, learner),
    }
    return render(request, "cohorts/reset_link_asked.html", context)


@sensitive_post_parameters()
@never_cache
@require_http_methods(["GET", "HEAD", "POST"])
def new_password(request: HttpRequest, uid: str, token: str) -> HttpResponse:
    """The page that a link opens: choose a new password."""
    try:
        form = NewPasswordForm(posted(request), person=person_of_link(uid, token))
        if form.is_valid():
            person = use_reset_link(uid, token, form.cleaned_data["new_password"])
            return go_in(request, person)
    except LinkSpentError:
        return render(request, "account/link_spent.html", status=404)
    return form_page(request, "account/new_password.html", form)


def go_in(request: HttpRequest, person: Person) -> HttpResponse:
    """Sign the person in, unless somebody else is using this browser."""
    if request.user.is_authenticated and request.user != person:
        messages.success(request, f"The new password of {person} is set.")
        return redirect("account")
    login(request, person)
    messages.success(request, "Your new password is set, and you are signed in.")
    return remember(request, redirect(settings.LOGIN_REDIRECT_URL), person)
