"""The pictures that learners sent, for those who may see their answers."""

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_safe

from exercises.models.upload import SMALL
from exercises.practice.uploads import content_for
from exercises.signal.photographs import small

# It is shown within pages and can do nothing; no cache on the way or in the browser keeps it.
HEADERS = {
    "Content-Disposition": 'inline; filename="picture.jpg"',
    "Content-Security-Policy": "default-src 'none'; sandbox",
    "Cross-Origin-Resource-Policy": "same-origin",
    "X-Content-Type-Options": "nosniff",
    "Cache-Control": "private, no-store",
}


@require_safe
def sent_picture(request: HttpRequest, name: str) -> HttpResponse:
    content = content_for(request.user, name)
    return HttpResponse(content, content_type="image/jpeg", headers=HEADERS)


@require_safe
def sent_picture_small(request: HttpRequest, name: str) -> HttpResponse:
    content = small(content_for(request.user, name), SMALL)
    return HttpResponse(content, content_type="image/jpeg", headers=HEADERS)
