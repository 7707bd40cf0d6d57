"""A learner's own record: all that was asked of them and what they answered."""

from django.core.paginator import Paginator
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, render
from django.views.decorators.http import require_safe

from course.cohorts.access import SignedInRequest, sign_in_required
from exercises.models import Attempt
from exercises.scores import skills_of
from exercises.sessions import sessions_of
from exercises.sign_offs import sign_offs_of
from exercises.views.practice import attempt_context

PER_PAGE = 25
SETS = 10


@require_safe
@sign_in_required
def record(request: SignedInRequest) -> HttpResponse:
    attempts = Attempt.objects.filter(person=request.user).latest_first()
    page = Paginator(attempts, PER_PAGE).get_page(request.GET.get("page"))
    context = {
        "page": page,
        "skills": skills_of(request.user),
        "sets": sessions_of(request.user)[:SETS],
        "sign_offs": sign_offs_of(request.user),
    }
    return render(request, "exercises/record.html", context)


@require_safe
@sign_in_required
def attempt(request: SignedInRequest, key: str) -> HttpResponse:
    found = get_object_or_404(
        Attempt.objects.select_related("asked__session"), key=key, person=request.user
    )
    return render(request, "exercises/attempt.html", attempt_context(found))
