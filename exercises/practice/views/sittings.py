"""Sittings: begin one, answer it question by question, read what it came to."""

from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import SignedInRequest, sign_in_required
from course.pages.forms import form_page, posted
from exercises.models import Asked, Sitting
from exercises.practice.debrief import debrief
from exercises.practice.forms.sitting import SittingForm
from exercises.practice.pages import answer_form, question_context
from exercises.practice.sittings import (
    in_order,
    next_question,
    open_sitting,
    start,
    stop,
)


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def new_sitting(request: SignedInRequest) -> HttpResponse:
    """Begin one; somebody who has one open goes on with that."""
    going = open_sitting(request.user)
    if going:
        return redirect(going)
    form = SittingForm(posted(request))
    if form.is_valid():
        chosen = form.cleaned_data
        return redirect(start(request.user, chosen["skills"], chosen["length"]))
    return form_page(request, "practice/new.html", form)


@require_safe
@sign_in_required
def sitting(request: SignedInRequest, token: str) -> HttpResponse:
    """The question that comes next, or what the sitting came to."""
    found = get_object_or_404(Sitting, token=token, person=request.user)
    asked = next_question(found)
    if asked is None:
        context = {"sitting": found, "debrief": debrief(found), "answers": in_order(found)}
        return render(request, "practice/debrief.html", context)
    return render(request, "practice/question.html", sitting_context(found, asked))


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def sitting_stop(request: SignedInRequest, token: str) -> HttpResponse:
    found = get_object_or_404(Sitting, token=token, person=request.user)
    if request.method == "POST":
        stop(found)
    return redirect(found)


def sitting_context(sitting: Sitting, asked: Asked) -> dict[str, object]:
    context = question_context(asked, answer_form(asked))
    return context | {"sitting": sitting, "number": sitting.answered + 1}
