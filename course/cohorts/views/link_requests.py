"""A link that others who teach the learner have to agree to: asking them, and their answer."""

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect
from django.views.decorators.http import require_http_methods

from course.cohorts.access import (
    SignedInRequest,
    instructor_required,
    learner_for,
    link_request_for,
)
from course.cohorts.agreeing import EndedError, agree, ask, refuse
from course.cohorts.forms import AgreementForm
from course.cohorts.models import LinkRequest
from course.pages.forms import form_page, posted

ENDED = "This request is over. Nothing is changed."


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def ask_for_link(request: SignedInRequest, cohort_pk: int, person_pk: int) -> HttpResponse:
    """Ask everybody else who teaches the learner."""
    learner = learner_for(request.user, cohort_pk, person_pk)
    if request.method == "POST":
        ask(request.user, learner)
        messages.success(request, "They are asked. Their Cohorts page shows it.")
    return redirect("reset-link", cohort_pk, person_pk)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def link_request(request: SignedInRequest, pk: int) -> HttpResponse:
    """What another instructor asks for, and the answer to it."""
    found = link_request_for(request.user, pk)
    form = AgreementForm(posted(request))
    if not form.is_valid():
        agreed = found.agreements.filter(by=request.user).first()
        return form_page(request, "cohorts/link_request.html", form, asked=found, agreed=agreed)
    return answered(request, found, agrees=form.cleaned_data["answer"] == "agree")


def answered(request: SignedInRequest, found: LinkRequest, *, agrees: bool) -> HttpResponse:
    try:
        (agree if agrees else refuse)(request.user, found)
    except EndedError:
        messages.error(request, ENDED)
    else:
        said = "have agreed" if agrees else "have not agreed"
        messages.success(request, f"You {said} to a link for {found.for_person}.")
    return redirect("cohorts")
