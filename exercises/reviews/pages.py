"""The page of an attempt, with what was said about it: for the learner, and for instructors."""

from django.http import HttpResponse
from django.shortcuts import get_object_or_404, render

from course.cohorts.access import SignedInRequest
from course.cohorts.models import Cohort, Person
from exercises.models import Asked, Attempt, Review
from exercises.practice.addressed import by_name
from exercises.practice.pages import attempt_context
from exercises.reviews.forms import ReplyForm, ReviewForm
from exercises.reviews.verbs import mark_read, thread_of


def attempt_for(learner: Person, key: str) -> Attempt:
    """An attempt of the learner with what its page shows, or 404."""
    shown = Attempt.objects.select_related(
        "asked__sitting", "asked__again", "person", "outcome__review__by", "upload"
    )
    return get_object_or_404(shown, key=key, person=learner)


def show_to_learner(
    request: SignedInRequest, attempt: Attempt, form: ReplyForm | None = None
) -> HttpResponse:
    """The attempt, what was said about it, and the reply where there is none yet."""
    thread = thread_of(attempt)
    mark_read(thread, by_learner=True)
    replied = any(each.what == Review.What.REPLY for each in thread)
    context = attempt_context(attempt) | {
        "thread": thread,
        "sent_back": any(each.what == Review.What.SENT_BACK for each in thread),
        "again": Asked.objects.filter(again=attempt).select_related("attempt").first(),
        "unread_by_anybody": attempt.result.waits and not attempt.person.cohorts.exists(),
        "form": form or (ReplyForm() if thread and not replied else None),
    }
    status = 422 if form else 200
    return render(request, "practice/attempt.html", context, status=status)


def show_to_instructor(
    request: SignedInRequest, cohort: Cohort, attempt: Attempt, form: ReviewForm | None = None
) -> HttpResponse:
    """The attempt as the learner saw it, what was said about it, and room to say more."""
    thread = thread_of(attempt)
    mark_read(thread, by_learner=False)
    context = attempt_context(attempt) | {
        "cohort": cohort,
        "learner": attempt.person,
        "who": by_name(attempt.person.name),
        "thread": thread,
        "sent_back": any(each.what == Review.What.SENT_BACK for each in thread),
        "again": Asked.objects.filter(again=attempt).select_related("attempt").first(),
        "form": form or ReviewForm(waits=attempt.result.waits),
    }
    status = 422 if form else 200
    return render(request, "reviews/cohort_attempt.html", context, status=status)
