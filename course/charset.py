"""What is sent is read as UTF-8, and refused where it says that it is anything else.

Django takes any codec that Python has for the charset of a request, those too that decode no text,
and reads the address with it before its first middleware. Browsers send forms in the charset of
their page.
"""

from collections.abc import Callable, Iterable
from typing import Any

from django.core.exceptions import BadRequest
from django.http import HttpRequest, HttpResponse
from django.utils.http import parse_header_parameters

UTF_8 = "utf-8"
UNREADABLE = "application/octet-stream; charset=unreadable"

Application = Callable[[dict[str, Any], Any], Iterable[bytes]]


def readable(application: Application) -> Application:
    """Let no `Content-Type` through that Django would fail at; `in_utf_8` then refuses it."""

    def served(environ: dict[str, Any], start_response: Any) -> Iterable[bytes]:
        if not is_utf_8(environ.get("CONTENT_TYPE", "")):
            environ["CONTENT_TYPE"] = UNREADABLE
        return application(environ, start_response)

    return served


def is_utf_8(content_type: str) -> bool:
    """Whether it names UTF-8, or no charset."""
    try:
        _, said = parse_header_parameters(content_type)
    except (ValueError, LookupError):  # of what RFC 2231 lets a parameter say of itself
        return False
    return str(said.get("charset", UTF_8)).lower() == UTF_8


def in_utf_8(
    get_response: Callable[[HttpRequest], HttpResponse],
) -> Callable[[HttpRequest], HttpResponse]:
    """Refuse every charset but UTF-8."""

    def middleware(request: HttpRequest) -> HttpResponse:
        if not is_utf_8(request.META.get("CONTENT_TYPE", "")):
            raise BadRequest("This site reads UTF-8 alone.")
        return get_response(request)

    return middleware
