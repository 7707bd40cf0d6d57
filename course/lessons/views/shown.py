"""A picture or a sound of a lesson: those that stand in one, and no others."""

from django.http import Http404, HttpRequest, HttpResponse
from django.views.decorators.http import require_safe

from course.lessons.shelf import shelf
from course.made import made_of
from course.sent import sent

FOR_ANYBODY = "public, max-age=31536000, immutable"  # what an address gives never changes


@require_safe
def lesson_shown(request: HttpRequest, name: str) -> HttpResponse:
    medium = shelf().media.get(name)
    if medium is None:
        raise Http404("No lesson shows this.")
    response = sent(request, made_of(medium))
    response.headers["Cache-Control"] = FOR_ANYBODY
    return response
