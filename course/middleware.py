"""The content security policy, under the setting's name that Django 6 gives it."""

from collections.abc import Callable

from django.conf import settings
from django.http import HttpRequest, HttpResponse


def content_security_policy(
    get_response: Callable[[HttpRequest], HttpResponse],
) -> Callable[[HttpRequest], HttpResponse]:
    """Send `SECURE_CSP` with every response; nothing inline, nothing from elsewhere."""
    policy = "; ".join(
        f"{name} {' '.join(sources)}" for name, sources in settings.SECURE_CSP.items()
    )

    def middleware(request: HttpRequest) -> HttpResponse:
        response = get_response(request)
        response.headers.setdefault("Content-Security-Policy", policy)
        return response

    return middleware
