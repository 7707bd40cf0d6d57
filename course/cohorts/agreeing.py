"""Who must agree before an instructor makes a link for a new password, and their agreement.

Whoever has such a link can sign in as the learner. An instructor of all of a learner's cohorts
makes one without being asked about it. Where others teach the learner too, all of them agree
first, each time; or an administrator makes the link.
"""

from dataclasses import dataclass

from django.core.exceptions import PermissionDenied
from django.db import transaction
from django.http import Http404
from django.utils import timezone

from course.cohorts.access import teaches
from course.cohorts.models import Cohort, LinkAgreement, LinkRequest, Person
from course.cohorts.telling import tell
from course.letters import write_to

Ending = LinkRequest.Ending
SUBJECT = "A link for a new password"
CLOSED = "This account is closed. An administrator can open it again."
ALL_AGREE = "Others teach this learner, too. All of them agree first, or an administrator makes it."
NOBODY_TO_ASK = "A cohort of this learner has nobody to ask. An administrator makes the link."
ENOUGH = "You teach all cohorts of this learner: make the link without asking."


class EndedError(Exception):
    """The request is over: it can't be answered any more."""


@dataclass(frozen=True)
class Agreement:
    """How it stands with an instructor's link for a learner of theirs.

    `others` have to agree; `agreed` of them have. Where `nobody` can be asked, no instructor may.
    """

    others: list[Person]
    agreed: list[Person]
    request: LinkRequest | None
    nobody: bool

    @property
    def waiting(self) -> list[Person]:
        return [person for person in self.others if person not in self.agreed]

    @property
    def may_make(self) -> bool:
        return not self.nobody and not self.waiting


def standing_of(maker: Person, learner: Person) -> Agreement:
    """Four queries, however many teach the learner."""
    staff = [teachers_of(cohort) for cohort in cohorts_of(learner)]
    alone = all(maker in teachers for teachers in staff)
    others = {} if alone else {each.pk: each for one in staff for each in one if each != maker}
    asked = learner.link_requests.open().filter(asked_by=maker)
    request = asked.prefetch_related("agreements").first()
    said = {each.by_id for each in request.agreements.all()} if request else set()
    return Agreement(
        others=sorted(others.values(), key=lambda each: (each.name, each.pk)),
        agreed=[each for each in others.values() if each.pk in said],
        request=request,
        nobody=not all(staff),
    )


def refused_of(maker: Person, learner: Person) -> LinkRequest | None:
    """The instructor's last request for the learner, if somebody did not agree to that."""
    last = learner.link_requests.filter(asked_by=maker).select_related("refused_by").last()
    return last if last and last.refused_by else None


def cohorts_of(learner: Person) -> list[Cohort]:
    return list(learner.cohorts.prefetch_related("instructors"))


def teachers_of(cohort: Cohort) -> list[Person]:
    """Its instructors who can sign in."""
    return [each for each in cohort.instructors.all() if each.is_active and each.is_instructor]


def ask(maker: Person, learner: Person) -> LinkRequest:
    """Ask the others who teach the learner. Asked twice, it is asked once."""
    if not teaches(maker, learner):
        raise Http404
    if not learner.is_active:
        raise PermissionDenied(CLOSED)
    standing = standing_of(maker, learner)
    if standing.nobody or not standing.others:
        raise PermissionDenied(NOBODY_TO_ASK if standing.nobody else ENOUGH)
    with transaction.atomic():
        now = timezone.now()
        LinkRequest.objects.passed(now).update(ended_at=now, ending=Ending.PASSED)
        found, new = LinkRequest.objects.get_or_create(
            for_person=learner, asked_by=maker, ended_at=None
        )
        if new:
            for other in standing.others:
                write_to(other, SUBJECT, f"{maker} asks you to agree to one for {learner}.")
    return found


def agree(fellow: Person, request: LinkRequest) -> None:
    """One of the others agrees. Whoever asked is told when nobody is waited for any more."""
    with transaction.atomic():
        locked = open_request(request)
        _, new = LinkAgreement.objects.get_or_create(request=locked, by=fellow)
        if new and standing_of(locked.asked_by, locked.for_person).may_make:
            sentence = f"All who teach {locked.for_person} agree: you can make the link now."
            tell(locked.asked_by, sentence, SUBJECT)


def refuse(fellow: Person, request: LinkRequest) -> None:
    """One of the others does not agree: the request is over."""
    with transaction.atomic():
        locked = open_request(request)
        locked.refused_by = fellow
        end(locked, Ending.REFUSED)
        sentence = f"{fellow} does not agree to a link for {locked.for_person}."
        tell(locked.asked_by, sentence, SUBJECT)


def open_request(request: LinkRequest) -> LinkRequest:
    found = LinkRequest.objects.select_for_update().get(pk=request.pk)
    if not found.is_open:
        raise EndedError
    return found


def end(request: LinkRequest, ending: str) -> None:
    request.ended_at, request.ending = timezone.now(), ending
    request.save(update_fields=["ended_at", "ending", "refused_by"])


def spend_agreement(maker: Person, learner: Person) -> None:
    """Use up what the others have agreed to: one link. `PermissionDenied` where somebody has not.

    Within the transaction that makes the link.
    """
    asked = learner.link_requests.filter(asked_by=maker, ended_at=None)
    locked = list(asked.select_for_update())
    if not standing_of(maker, learner).may_make:
        raise PermissionDenied(ALL_AGREE)
    for each in locked:
        end(each, Ending.MADE)
