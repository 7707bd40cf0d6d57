"""A made picture or sound as a response: whole, or the part of it that a player asks for."""

import re

from django.http import HttpRequest, HttpResponse

from exercises.drills.media.rendering import Rendered

RANGE = re.compile(r"bytes=(?P<first>[0-9]{0,18})-(?P<last>[0-9]{0,18})")


def sent(request: HttpRequest, made: Rendered) -> HttpResponse:
    response = part(made, asked_part(request, len(made.content)))
    response.headers["Accept-Ranges"] = "bytes"
    return response


def asked_part(request: HttpRequest, size: int) -> tuple[int, int] | None:
    """The bytes asked for, `[start, end)`; None for all of them.

    Empty where there are none such. Several parts at once, and what makes no sense, get the
    whole, as RFC 9110 (14.2) allows; so does a condition, since a file has no version.
    """
    found = RANGE.fullmatch(request.headers.get("Range", ""))
    if not found or request.method != "GET" or "If-Range" in request.headers:
        return None
    first, last = found["first"], found["last"]
    if not first:
        return (max(0, size - int(last)), size) if last else None
    if last and int(last) < int(first):
        return None
    return int(first), min(int(last) + 1, size) if last else size


def part(made: Rendered, asked: tuple[int, int] | None) -> HttpResponse:
    content, size = made.content, len(made.content)
    if asked is None:
        return HttpResponse(content, content_type=made.type)
    start, end = asked
    if start >= end:
        missing = {"Content-Range": f"bytes */{size}"}
        return HttpResponse(status=416, content_type=made.type, headers=missing)
    response = HttpResponse(content[start:end], status=206, content_type=made.type)
    response.headers["Content-Range"] = f"bytes {start}-{end - 1}/{size}"
    return response
