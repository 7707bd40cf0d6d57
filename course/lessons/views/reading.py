"""What a lesson's page tells of being read, by small posts."""

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse
from django.views.decorators.http import require_http_methods, require_POST

from course.cohorts.access import SignedInRequest, sign_in_required
from course.lessons.forms import ReachedForm
from course.lessons.pages import lesson_or_404
from course.lessons.reading import finish, reach


@require_POST
@sign_in_required
def lesson_reached(request: SignedInRequest, slug: str) -> HttpResponse:
    """A section came into view. Nothing on the page changes."""
    lesson = lesson_or_404(slug)
    form = ReachedForm(request.POST, lesson=lesson)
    if not form.is_valid():
        return HttpResponse(form.errors["section"][0], status=422, content_type="text/plain")
    reach(request.user, lesson, form.cleaned_data["section"])
    return HttpResponse(status=204)


@require_http_methods(["GET", "HEAD", "POST"])
@sign_in_required
def lesson_read(request: SignedInRequest, slug: str) -> HttpResponse:
    """Mark a lesson as read. Somebody who comes by a link is sent to the lesson."""
    lesson = lesson_or_404(slug)
    if request.method == "POST":
        finish(request.user, lesson)
        messages.success(request, f"You have read “{lesson.title}”. Now practise what it teaches.")
    return redirect(reverse("lesson", args=[slug]) + "#next-step")
