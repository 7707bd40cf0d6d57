"""What every page shows that has a question or an attempt on it, whatever room it is of."""

from django.core.files.uploadedfile import UploadedFile
from django.core.paginator import Page, Paginator
from django.db.models import QuerySet
from django.http import HttpResponse, QueryDict
from django.shortcuts import render
from django.utils.datastructures import MultiValueDict

from course.cohorts.access import SignedInRequest
from course.lessons.shelf import lesson_place
from exercises.drills.kind import Kind
from exercises.drills.question import Question
from exercises.models import Asked, Attempt
from exercises.models.desk import kind_now
from exercises.practice.addressed import READER
from exercises.practice.forms.answer import AnswerForm
from exercises.standing.scores import row_in_words

PER_PAGE = 25


def show_outdated(request: SignedInRequest, kind: Kind) -> HttpResponse:
    """The answer is not taken; `goes_on` says whether the drill is still asked."""
    context = {"kind": kind, "goes_on": kind_now(kind.slug) is not None}
    return render(request, "practice/outdated.html", context, status=409)


def answer_form(
    asked: Asked,
    sent: QueryDict | None = None,
    files: "MultiValueDict[str, UploadedFile[bytes]] | None" = None,
) -> AnswerForm:
    """Its fields have ids of their own: a lesson may hold several questions."""
    return AnswerForm(asked.as_question(), sent, files, auto_id=f"question-{asked.pk}-%s")


def trial_form(request: SignedInRequest, question: Question) -> AnswerForm:
    """To answer a question that nobody was asked: nothing of it is kept."""
    sent = (request.POST, request.FILES) if request.method == "POST" else (None, None)
    return AnswerForm(question, *sent)


def attempts_page(request: SignedInRequest, attempts: QuerySet[Attempt]) -> Page[Attempt]:
    """The part of a list of attempts that the address asks for."""
    return Paginator(attempts, PER_PAGE).get_page(request.GET.get("page"))


def question_context(asked: Asked, form: AnswerForm) -> dict[str, object]:
    """What the page of a question shows."""
    return {
        "asked": asked,
        "kind": asked.kind,
        "question_template": f"{asked.kind.template}#question",
        "question": form.question,
        "shown": form.question.shown,
        "form": form,
    }


def attempt_context(attempt: Attempt) -> dict[str, object]:
    """What the page of an attempt shows: the question, the answer given, what came of it."""
    question = attempt.asked.as_question()
    rule = question.rule
    return {
        "attempt": attempt,
        "who": READER,
        "asked": attempt.asked,
        "kind": attempt.kind,
        "place": lesson_place(rule["lesson"], rule["section"]) if rule else None,
        "question_template": f"{attempt.kind.template}#question",
        "feedback_template": f"{attempt.kind.template}#feedback",
        "shown": question.shown,
        "rule": rule,
        "bench": question.bench,
        "answers": answers_in_words(question, attempt),
        "answer": attempt.answer,
        "verdict": attempt.verdict,
        "feedback": attempt.feedback,
        "row": row_in_words(attempt),
    }


def answers_in_words(question: Question, attempt: Attempt) -> list[tuple[str, str]]:
    """Each thing that was asked, with the answer to it."""
    words = question.checked(attempt.answer)
    return [(ask.legend, words[ask.name]) for ask in question.asks]
