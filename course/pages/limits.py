"""The answer to somebody who has tried too often."""

from collections.abc import Callable
from datetime import datetime
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
    context = {"until": refusal.until, "wait": wait_in_words(refusal.until)}
    return to_try_again(render(request, "429.html", context, status=429), refusal.until)


def to_try_again(response: HttpResponse, until: datetime) -> HttpResponse:
    """The response, saying when to send the same again to whatever sent it."""
    response.headers["Retry-After"] = str(seconds_until(until))
    return response


def seconds_until(until: datetime) -> int:
    return max(1, ceil((until - timezone.now()).total_seconds()))


def wait_in_words(until: datetime) -> str:
    """In whole minutes, where it is no less than one."""
    seconds = seconds_until(until)
    count, unit = (seconds, "second") if seconds < 60 else (ceil(seconds / 60), "minute")
    return f"{count} {unit}" + ("" if count == 1 else "s")
