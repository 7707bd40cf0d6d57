"""Lessons and the glossary: pages that anybody may read."""

from django.contrib.auth.models import AnonymousUser
from django.http import Http404, HttpRequest, HttpResponse
from django.shortcuts import render
from django.views.decorators.http import require_safe

from course.cohorts.equipping import bench_of
from course.cohorts.models import Person
from course.lessons.pages import lesson_or_404
from course.lessons.placeholders import USUAL, WORDS
from course.lessons.reading import Read, reading_of, readings_of
from course.lessons.shelf import shelf
from exercises.drills.setting.bench_figures import BenchFigures
from exercises.worktop.shelf import practicals


@require_safe
def lessons(request: HttpRequest) -> HttpResponse:
    person = request.user
    read = (
        readings_of(person)
        if isinstance(person, Person)
        else [Read(lesson, None) for lesson in shelf().lessons]
    )
    return render(request, "lessons/lessons.html", {"read": read})


@require_safe
def lesson(request: HttpRequest, slug: str) -> HttpResponse:
    shelved, found = shelf(), lesson_or_404(slug)
    bench = figures_for(request.user)
    context = {
        "lesson": shelved.for_bench(found, bench),
        "bench": bench,
        "read": reading_of(request.user, found) if isinstance(request.user, Person) else None,
        "before": shelved.before(found),
        "behind": shelved.behind(found),
        "practicals": [each for each in practicals().values() if each.lesson == slug],
    }
    return render(request, "lessons/lesson.html", context)


@require_safe
def checklist(request: HttpRequest, slug: str) -> HttpResponse:
    """The checklists of a lesson on one sheet of paper."""
    bench = figures_for(request.user)
    found = shelf().for_bench(lesson_or_404(slug), bench)
    if not found.checklists():
        raise Http404("This lesson has no checklist.")
    figures = {name.replace("-", "_"): word(bench) for name, word in WORDS.items()}
    context = {"lesson": found, "checklists": found.checklists(), "bench": bench}
    return render(request, "lessons/checklist_sheet.html", context | {"figures": figures})


@require_safe
def glossary(request: HttpRequest) -> HttpResponse:
    shelved = shelf()
    entries = [(term, shelved.teaches(term)) for term in shelved.glossary.terms]
    return render(request, "lessons/glossary.html", {"entries": entries})


def figures_for(person: Person | AnonymousUser) -> BenchFigures:
    """Of the bench that they work at; strangers read the usual ones."""
    return bench_of(person) if isinstance(person, Person) else USUAL
