"""Reviews: the queue, what an instructor says of an attempt, the learner's reply."""

from django.contrib import messages
from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_http_methods, require_safe

from course.cohorts.access import (
    SignedInRequest,
    cohort_for,
    instructor_required,
    learner_for,
    sign_in_required,
)
from course.cohorts.models import Cohort
from exercises.assignments.verbs import AskedNoMoreError
from exercises.forms.fields import refuse_used
from exercises.forms.keys import SentBeforeError
from exercises.practice.attempts import OutdatedError
from exercises.practice.pages import show_outdated
from exercises.reviews.forms import ReplyForm, ReviewForm
from exercises.reviews.pages import attempt_for, show_to_instructor, show_to_learner
from exercises.reviews.verbs import (
    NothingToAnswerError,
    RepliedError,
    answer_again,
    queue_of,
    replies_to,
    reply,
    review,
)

DONE = {
    "comment": "Your comment is kept.",
    "score": "Your score is kept and counts from now on.",
    "sent-back": "It is sent back.",
}


@require_safe
@instructor_required
def reviews(request: SignedInRequest) -> HttpResponse:
    """What waits in the cohorts that they teach; `cohort` shows only that one's."""
    taught = list(Cohort.objects.taught_by(request.user))
    chosen = next((each for each in taught if str(each.pk) == request.GET.get("cohort")), None)
    context = {
        "cohorts": taught,
        "chosen": chosen,
        "waiting": list(queue_of(request.user, chosen)),
        "replies": list(replies_to(request.user, chosen)),
    }
    return render(request, "reviews/queue.html", context)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def review_attempt(
    request: SignedInRequest, cohort_pk: int, person_pk: int, key: str
) -> HttpResponse:
    learner = learner_for(request.user, cohort_pk, person_pk)
    attempt = attempt_for(learner, key)
    if request.method != "POST":
        return redirect("cohort-attempt", cohort_pk, person_pk, key)
    form = ReviewForm(request.POST, waits=attempt.result.waits)
    if not form.is_valid():
        return show_to_instructor(request, cohort_for(request.user, cohort_pk), attempt, form)
    try:
        made = review(request.user, attempt, form.said())
    except SentBeforeError:
        refuse_used(form)
        return show_to_instructor(request, cohort_for(request.user, cohort_pk), attempt, form)
    messages.success(request, DONE[made.what])
    return redirect("cohort-attempt", cohort_pk, person_pk, key)


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def reply_to_review(request: SignedInRequest, key: str) -> HttpResponse:
    attempt = attempt_for(request.user, key)
    if request.method != "POST":
        return redirect(attempt)
    form = ReplyForm(request.POST)
    if not form.is_valid():
        return show_to_learner(request, attempt, form)
    try:
        reply(request.user, attempt, form.cleaned_data["text"])
    except NothingToAnswerError as error:
        raise Http404("Nobody has written about this attempt yet.") from error
    except RepliedError:
        form.add_error("text", "You have replied already. This is not kept.")
        return show_to_learner(request, attempt, form)
    messages.success(request, "Your reply is kept. Your instructor finds it among the reviews.")
    return redirect(attempt)


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def answer_anew(request: SignedInRequest, key: str) -> HttpResponse:
    """A new question in the stead of an attempt that was sent back."""
    attempt = attempt_for(request.user, key)
    if request.method != "POST":
        return redirect(attempt)
    try:
        asked = answer_again(attempt)
    except NothingToAnswerError as error:
        raise Http404("This attempt was not sent back.") from error
    except OutdatedError:
        return show_outdated(request, attempt.kind)
    except AskedNoMoreError:
        messages.info(request, "This is asked of you no more, so there is nothing to answer again.")
        return redirect(attempt)
    return redirect("drill-answer", asked.token)


@require_safe
@sign_in_required
def attempt(request: SignedInRequest, key: str) -> HttpResponse:
    return show_to_learner(request, attempt_for(request.user, key))


@require_safe
@instructor_required
def cohort_attempt(
    request: SignedInRequest, cohort_pk: int, person_pk: int, key: str
) -> HttpResponse:
    learner = learner_for(request.user, cohort_pk, person_pk)
    return show_to_instructor(
        request, cohort_for(request.user, cohort_pk), attempt_for(learner, key)
    )
