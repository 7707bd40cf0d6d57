"""Drills: the list, one question, its answer."""

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import SignedInRequest, sign_in_required
from course.cohorts.equipping import bench_of
from course.pages.limits import to_try_again, wait_in_words
from exercises.drills.register import not_at
from exercises.finding.kinds import kind_for
from exercises.models import Asked, Attempt
from exercises.practice.attempts import OutdatedError, ask, describe, submit
from exercises.practice.forms.answer import AnswerForm
from exercises.practice.haste import TooFastError
from exercises.practice.pages import answer_form, attempt_context, question_context, show_outdated
from exercises.practice.sittings import open_sitting
from exercises.practice.to_answer import to_answer
from exercises.standing.own_progress import own_progress_of
from exercises.standing.scores import progress_of

SOON = 60  # seconds, until a site that was busy is worth another try


SECOND = "You answered this question before, and that answer counts. This one is not kept."


@require_safe
@sign_in_required
def drills(request: SignedInRequest) -> HttpResponse:
    context = {
        "drills": progress_of(request.user),
        "not_here": not_at(bench_of(request.user).as_settings()),
        "own": own_progress_of(request.user),
        "going": open_sitting(request.user),
    }
    return render(request, "practice/drills.html", context)


@require_safe
@sign_in_required
def drill(request: SignedInRequest, slug: str) -> HttpResponse:
    asked = ask(request.user, kind_for(request.user, slug))
    return show_question(request, asked, answer_form(asked))


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def drill_ask(request: SignedInRequest, slug: str) -> HttpResponse:
    """One more question: a fragment within a page, or the drill's own page."""
    if not (request.htmx and request.method == "POST"):
        return redirect("drill", kind_for(request.user, slug).slug)
    asked = ask(request.user, kind_for(request.user, slug))
    return show_question(request, asked, answer_form(asked))


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def drill_answer(request: SignedInRequest, token: str) -> HttpResponse:
    """Take an answer. Somebody who arrives by a link (after signing in again) is sent on."""
    asked = to_answer(request.user, token)
    if request.method != "POST":
        return redirect("attempt", token) if hasattr(asked, "attempt") else redirect(asked.page())
    form = answer_form(asked, request.POST, request.FILES)
    if not form.is_valid():
        return show_refused(request, asked, form)
    try:
        attempt = submit(asked, form.answer(), photograph=form.photograph())
    except OutdatedError:
        return show_outdated(request, asked.kind)
    except TooFastError as refusal:
        return show_too_fast(request, asked, form, refusal)
    return show_what_came(request, attempt, SECOND if attempt.answer != form.answer() else "")


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def drill_in_words(request: SignedInRequest, token: str) -> HttpResponse:
    """Describe what the question shows or plays, instead of showing or playing it."""
    asked = get_object_or_404(Asked, token=token, person=request.user)
    if request.method == "POST":
        describe(asked)
    if not (request.htmx and request.method == "POST" and asked.waits()):
        return redirect("drill-answer", token)
    return show_question(request, asked, answer_form(asked))


def show_too_fast(
    request: SignedInRequest, asked: Asked, form: AnswerForm, refusal: TooFastError
) -> HttpResponse:
    """The question with the answer as it was typed, to be sent again."""
    form.wait = wait_in_words(refusal.until)
    response = show_question(request, asked, form, status=429)
    return in_place(request, to_try_again(response, refusal.until))


def show_question(
    request: SignedInRequest, asked: Asked, form: AnswerForm, status: int = 200
) -> HttpResponse:
    template = "practice/drill.html" + ("#question" if request.htmx else "")
    return render(request, template, question_context(asked, form), status=status)


def show_refused(request: SignedInRequest, asked: Asked, form: AnswerForm) -> HttpResponse:
    """The form as it was sent, with what is wrong; or when to send it again."""
    response = show_question(request, asked, form, status=form.status)
    if form.status == 503:
        response.headers["Retry-After"] = str(SOON)
        in_place(request, response)
    return response


def in_place(request: SignedInRequest, response: HttpResponse) -> HttpResponse:
    """Where a form was, not in the place of the whole page."""
    if request.htmx:
        response.headers["HX-Reswap"] = "outerHTML show:top"  # as the form itself says
    return response


def show_what_came(request: SignedInRequest, attempt: Attempt, told: str) -> HttpResponse:
    """The feedback within the page, or the attempt's own page."""
    if request.htmx:
        context = attempt_context(attempt) | {"told": told}
        return render(request, "practice/attempt.html#feedback", context)
    if told:
        messages.info(request, told)
    return redirect(attempt)
