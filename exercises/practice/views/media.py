"""A picture or a sound of a question."""

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_safe

from course.made import made_of
from course.sent import sent
from exercises.practice.media_address import medium_for


@require_safe
def medium(request: HttpRequest, token: str) -> HttpResponse:
    return sent(request, made_of(medium_for(request.user, token)))
