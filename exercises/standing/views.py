"""A learner's own record: all that was asked of them and what they answered."""

from django.core.paginator import Paginator
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, render
from django.views.decorators.http import require_safe

from course.cohorts.access import SignedInRequest, sign_in_required
from course.cohorts.models import Person
from exercises.models import Asked, Attempt, Review
from exercises.practice.sittings import sittings_of
from exercises.practice.views.drills import attempt_context
from exercises.reviews.forms import ReplyForm
from exercises.reviews.verbs import mark_read, thread_of
from exercises.sign_offs.verbs import sign_offs_of
from exercises.standing.scores import skills_of

PER_PAGE = 25
SITTINGS = 10


@require_safe
@sign_in_required
def record(request: SignedInRequest) -> HttpResponse:
    attempts = Attempt.objects.filter(person=request.user).listed()
    page = Paginator(attempts, PER_PAGE).get_page(request.GET.get("page"))
    context = {
        "page": page,
        "skills": skills_of(request.user),
        "sittings": sittings_of(request.user)[:SITTINGS],
        "sign_offs": sign_offs_of(request.user),
    }
    return render(request, "standing/record.html", context)


@require_safe
@sign_in_required
def attempt(request: SignedInRequest, key: str) -> HttpResponse:
    return show_to_learner(request, attempt_for(request.user, key))


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
