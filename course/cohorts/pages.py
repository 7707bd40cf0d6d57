"""What pages of people and cohorts have in common."""

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render

from course.cohorts.forms import CodeForm
from course.cohorts.joining import UnknownCodeError


def unknown_code(request: HttpRequest, error: UnknownCodeError) -> HttpResponse:
    """The page to type a code on, with what is wrong with the one that was used."""
    context = {"form": CodeForm(), "unknown": str(error)}
    return render(request, "cohorts/join.html", context, status=404)
