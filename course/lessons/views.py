from django.http import Http404, HttpRequest, HttpResponse
from django.shortcuts import render
from django.views.decorators.http import require_safe

from course.lessons.shelf import shelf


@require_safe
def lessons(request: HttpRequest) -> HttpResponse:
    return render(request, "lessons/lessons.html", {"lessons": shelf().lessons})


@require_safe
def lesson(request: HttpRequest, slug: str) -> HttpResponse:
    shelved = shelf()
    found = shelved.find(slug)
    if found is None:
        raise Http404("There is no such lesson.")
    context = {
        "lesson": found,
        "before": shelved.before(found),
        "behind": shelved.behind(found),
    }
    return render(request, "lessons/lesson.html", context)


@require_safe
def glossary(request: HttpRequest) -> HttpResponse:
    shelved = shelf()
    entries = [(term, shelved.teaches(term)) for term in shelved.glossary.terms]
    return render(request, "lessons/glossary.html", {"entries": entries})
