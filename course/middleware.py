"""What every request is spared, and what every response gets."""

from collections.abc import Callable

from django.conf import settings
from django.core.exceptions import BadRequest
from django.http import Http404, HttpRequest, HttpResponse
from django.http.response import HttpResponseBase
from django.middleware.gzip import GZipMiddleware
from django_htmx.http import HttpResponseClientRedirect, reswap, retarget
from django_htmx.middleware import HtmxDetails

NO_STORE = "private, no-store"


class HtmxRequest(HttpRequest):
    """A request that `HtmxMiddleware` has seen. For type checkers only, never made."""

    htmx: HtmxDetails


class GZipText(GZipMiddleware):
    """Compress pages only: pictures gain nothing, and parts of a sound must stay its parts."""

    def process_response(
        self, request: HttpRequest, response: HttpResponseBase
    ) -> HttpResponseBase:
        if not response.headers.get("Content-Type", "").startswith("text/"):
            return response
        return super().process_response(request, response)


def no_nul(
    get_response: Callable[[HttpRequest], HttpResponse],
) -> Callable[[HttpRequest], HttpResponse]:
    """Refuse the one character that PostgreSQL takes in no text, not even to look for it."""

    def middleware(request: HttpRequest) -> HttpResponse:
        if "\0" in request.path_info:
            raise Http404
        if any("\0" in cookie for cookie in request.COOKIES.values()):
            raise BadRequest("A cookie holds what no cookie of this site does.")
        return get_response(request)

    return middleware


def content_security_policy(
    get_response: Callable[[HttpRequest], HttpResponse],
) -> Callable[[HttpRequest], HttpResponse]:
    """Send `SECURE_CSP`, the name Django 6 gives the setting: nothing inline or from elsewhere."""
    policy = "; ".join(
        f"{name} {' '.join(sources)}" for name, sources in settings.SECURE_CSP.items()
    )

    def middleware(request: HttpRequest) -> HttpResponse:
        response = get_response(request)
        response.headers.setdefault("Content-Security-Policy", policy)
        return response

    return middleware


def kept_by_nobody(
    get_response: Callable[[HttpRequest], HttpResponse],
) -> Callable[[HttpRequest], HttpResponse]:
    """Let no cache, and no browser that others use too, keep what somebody signed in is sent.

    What a view calls public is the same for everybody, and stays so.
    """

    def middleware(request: HttpRequest) -> HttpResponse:
        response = get_response(request)
        policy = response.headers.get("Cache-Control", "")
        if policy.startswith("public") or policy == NO_STORE:
            return response
        user = getattr(request, "user", None)  # missing where the request got no further
        if user and user.is_authenticated:
            response.headers["Cache-Control"] = NO_STORE
        return response

    return middleware


def whole_page_answers(
    get_response: Callable[[HtmxRequest], HttpResponse],
) -> Callable[[HtmxRequest], HttpResponse]:
    """Let a redirect or an error page replace the page, not the fragment that was asked for.

    422 stays where it is: it is the form that was sent, with what is wrong in it. So does what
    says itself how it is put in (`HX-Reswap`).
    """

    def middleware(request: HtmxRequest) -> HttpResponse:
        response = get_response(request)
        if not request.htmx:
            return response
        if response.has_header("Location"):
            return HttpResponseClientRedirect(response["Location"])
        in_place = response.status_code == 422 or response.has_header("HX-Reswap")
        if response.status_code >= 400 and not in_place:
            reswap(retarget(response, "body"), "innerHTML")
        return response

    return middleware
