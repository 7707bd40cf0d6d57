"""Practice sessions: choose a set, answer it question by question, read what it came to."""

from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import SignedInRequest, sign_in_required
from course.cohorts.views.pages import form_page, posted
from exercises.debrief import debrief
from exercises.forms.sitting import SittingForm
from exercises.models import Asked, PracticeSession
from exercises.sessions import answers_of, in_order, next_question, open_session, start, stop
from exercises.views.practice import answer_form, question_context


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def new_practice(request: SignedInRequest) -> HttpResponse:
    """Choose a set; somebody who has one open goes on with that."""
    going = open_session(request.user)
    if going:
        return redirect(going)
    form = SittingForm(posted(request))
    if form.is_valid():
        chosen = form.cleaned_data
        return redirect(start(request.user, chosen["skills"], chosen["length"]))
    return form_page(request, "practice/new.html", form)


@require_safe
@sign_in_required
def practice(request: SignedInRequest, token: str) -> HttpResponse:
    """The question that comes next, or what the set came to."""
    session = get_object_or_404(PracticeSession, token=token, person=request.user)
    asked = next_question(session)
    if asked is None:
        context = {"session": session, "debrief": debrief(session), "answers": in_order(session)}
        return render(request, "practice/debrief.html", context)
    return render(request, "practice/question.html", sitting_context(session, asked))


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def practice_stop(request: SignedInRequest, token: str) -> HttpResponse:
    session = get_object_or_404(PracticeSession, token=token, person=request.user)
    if request.method == "POST":
        stop(session)
    return redirect(session)


def sitting_context(session: PracticeSession, asked: Asked) -> dict[str, object]:
    number = answers_of(session).count() + 1
    context = question_context(asked, answer_form(asked))
    return context | {"session": session, "number": number}
