"""The drill desk: an instructor writes drills, tries them, publishes and retires them."""

from collections.abc import Mapping

from django.contrib import messages
from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_http_methods, require_POST, require_safe

from course.cohorts.access import SignedInRequest, instructor_required
from exercises.desk.forms.bad_edit import OwnBadEditForm
from exercises.desk.forms.mode import OwnModeForm
from exercises.desk.forms.own import OwnForm, OwnPictureForm, OwnTextForm, PublishForm
from exercises.desk.forms.tape import OwnTapeForm
from exercises.desk.verbs import NotPublishedError, asks_one_thing, publish, retire, revise, write
from exercises.drills.own import FORMS, Drawn, DrawnEdits
from exercises.finding.kinds import own_drill_for
from exercises.forms.fields import refuse_used
from exercises.forms.keys import SentBeforeError
from exercises.models import OwnDrill
from exercises.practice.addressed import READER
from exercises.practice.pages import trial_form

WRITING: Mapping[str, type[OwnForm]] = {
    "mode": OwnModeForm,
    "bad-edit": OwnBadEditForm,
    "text": OwnTextForm,
    "picture": OwnPictureForm,
}


def writing_of(form: str) -> type[OwnForm]:
    if form not in WRITING:
        raise Http404("There is no such form of drill.")
    return WRITING[form]


@require_safe
@instructor_required
def desk(request: SignedInRequest) -> HttpResponse:
    drills = OwnDrill.objects.at_desk_of(request.user).with_latest().order_by("-pk")
    context = {
        "drills": [drill for drill in drills if not drill.retired_at],
        "retired": [drill for drill in drills if drill.retired_at],
        "forms": FORMS.values(),
    }
    return render(request, "desk/desk.html", context)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def new_own(request: SignedInRequest, form: str) -> HttpResponse:
    filled = writing_of(form)(request.POST if request.method == "POST" else None)
    if "draw" in request.POST or not filled.is_valid():
        return show_form(request, filled, form)
    try:
        made = write(request.user, form, filled.text(), key=filled.cleaned_data["key"])
    except SentBeforeError:
        refuse_used(filled)
        return show_form(request, filled, form)
    messages.success(request, "It is kept. Try it, then publish it.")
    return redirect(made)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def revise_own(request: SignedInRequest, pk: int) -> HttpResponse:
    drill = own_drill_for(request.user, pk, to_change=True)
    writing = WRITING[drill.form]
    filled = (
        writing(request.POST)
        if request.method == "POST"
        else writing(initial=writing.typed(drill.latest))
    )
    if "draw" in request.POST or not filled.is_valid():
        return show_form(request, filled, drill.form, drill)
    made = revise(drill, request.user, filled.text())
    messages.success(request, f"Revision {made.number} is kept. Learners see it once published.")
    return redirect(drill)


@require_POST
@instructor_required
def draw(request: SignedInRequest, form: str) -> HttpResponse:
    """What the tape would be, while it is being described. Nothing is kept."""
    filled = writing_of(form)(request.POST)
    if not isinstance(filled, OwnTapeForm):
        raise Http404("There is no tape to draw in this form of drill.")
    context = {"form": filled, "drawn": drawn_of(filled)}
    return render(request, f"{filled.template}#drawn", context)


def drawn_of(form: OwnForm) -> Drawn | DrawnEdits | None:
    """What the tape model makes of it, where enough is filled in to draw it."""
    return form.drawn() if isinstance(form, OwnTapeForm) else None


def show_form(
    request: SignedInRequest, form: OwnForm, slug: str, drill: OwnDrill | None = None
) -> HttpResponse:
    """The form as it was filled in; 422 where it was to be kept and can't be."""
    filled = form if form.is_bound or not drill else type(form)(form.initial)
    context = {"form": form, "kind": FORMS[slug], "drill": drill, "drawn": drawn_of(filled)}
    refused = form.is_bound and "draw" not in request.POST
    return render(request, form.template, context, status=422 if refused else 200)


@require_safe
@instructor_required
def own_drill(request: SignedInRequest, pk: int) -> HttpResponse:
    return show_drill(request, own_drill_for(request.user, pk))


def show_drill(
    request: SignedInRequest, drill: OwnDrill, form: PublishForm | None = None, refused: str = ""
) -> HttpResponse:
    asked = PublishForm(
        request.user, initial={"cohorts": [each.pk for each in drill.cohorts.all()]}
    )
    context = {
        "drill": drill,
        "mine": drill.made_by == request.user,
        "revisions": sorted(drill.revisions.all(), key=lambda each: -each.number),
        "clear": asks_one_thing(drill.latest),
        "asked_in": [cohort for cohort in asked.taught if cohort in drill.cohorts.all()],
        "form": form or asked,
        "refused": refused,
    }
    return render(request, "desk/drill.html", context, status=422 if form or refused else 200)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def try_own(request: SignedInRequest, pk: int) -> HttpResponse:
    """The last revision as a learner will see it. Nothing is recorded."""
    drill = own_drill_for(request.user, pk)
    if not asks_one_thing(drill.latest):
        return redirect(drill)
    kind = drill.latest.kind_of(drill)
    question = kind.make(0)
    form = trial_form(request, question)
    context = {
        "drill": drill,
        "kind": kind,
        "form": form,
        "shown": question.shown,
        "who": READER,
        "question_template": f"{kind.template}#question",
        "feedback_template": f"{kind.template}#feedback",
        "rule": question.rule,
        "verdict": kind.grade(question, form.answer()).as_told() if form.is_valid() else None,
    }
    return render(request, "desk/try.html", context, status=form.status)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def publish_own(request: SignedInRequest, pk: int) -> HttpResponse:
    drill = own_drill_for(request.user, pk, to_change=True)
    if request.method != "POST":
        return redirect(drill)
    form = PublishForm(request.user, request.POST)
    if not form.is_valid():
        return show_drill(request, drill, form)
    try:
        publish(drill, request.user, form.chosen())
    except NotPublishedError as error:
        return show_drill(request, drill, refused=str(error))
    messages.success(request, "Published. It stands among the drills of those cohorts.")
    return redirect(drill)


@require_http_methods(["GET", "HEAD", "POST"])
@instructor_required
def retire_own(request: SignedInRequest, pk: int) -> HttpResponse:
    drill = own_drill_for(request.user, pk, to_change=True)
    if request.method == "POST":
        retire(drill)
        messages.success(request, "Retired. Nobody is asked it any more; answers stay.")
    return redirect(drill)
