"""A page with one form on it."""

from typing import Any

from django.forms import Form
from django.http import HttpRequest, HttpResponse, QueryDict
from django.shortcuts import render


def posted(request: HttpRequest) -> QueryDict | None:
    """What a form is bound to: what was sent, even if it is nothing, but only by POST."""
    return request.POST if request.method == "POST" else None


def form_page(request: HttpRequest, template: str, form: Form, **context: Any) -> HttpResponse:
    """The page with its form; 422 when it comes back with what is wrong."""
    status = 422 if form.is_bound else 200
    return render(request, template, {"form": form, **context}, status=status)
