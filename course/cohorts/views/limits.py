"""The answer to somebody who has tried too often."""

from collections.abc import Callable
from functools import wraps
from math import ceil
from typing import Concatenate, ParamSpec, TypeVar

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render
from django.utils import timezone

from course.cohorts.throttle import TooManyTriesError

Request = TypeVar("Request", bound=HttpRequest)
Arguments = ParamSpec("Arguments")


def limited(
    view: Callable[Concatenate[Request, Arguments], HttpResponse],
) -> Callable[Concatenate[Request, Arguments], HttpResponse]:
    """Answer 429, and when to try again, where the view meets a reached limit."""

    @wraps(view)
    def guarded(
        request: Request, /, *args: Arguments.args, **kwargs: Arguments.kwargs
    ) -> HttpResponse:
        try:
            return view(request, *args, **kwargs)
        except TooManyTriesError as refusal:
            return too_many_tries(request, refusal)

    return guarded


def too_many_tries(request: HttpRequest, refusal: TooManyTriesError) -> HttpResponse:
    seconds = max(1, ceil((refusal.until - timezone.now()).total_seconds()))
    context = {"until": refusal.until, "minutes": ceil(seconds / 60)}
    response = render(request, "429.html", context, status=429)
    response.headers["Retry-After"] = str(seconds)
    return response
