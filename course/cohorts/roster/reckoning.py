"""Looking a roster through: what becomes of each line, before anything is written.

Somebody is found by sign-in name or e-mail address where the line has one, else by name, and
among the instructor's own people only. Who is in one other of the instructor's cohorts moves;
who is listed for that one too, or is in several, joins.
"""

from dataclasses import dataclass, field

from course.cohorts.models import Cohort, Person
from course.cohorts.roster.fates import Fate, What
from course.cohorts.roster.known import Known, known_to
from course.cohorts.roster.lines import Line, lines_of
from course.cohorts.roster.sheet import read


class WrongLineError(Exception):
    """Nothing can be done with the line; the text says why."""


def fates_of(instructor: Person, text: str, cohort: Cohort | None) -> list[Fate]:
    """The fate of every line; `cohort` is for lines that name none."""
    lines = lines_of(read(text).rows)
    return Reckoning(known_to(instructor), cohort).reckon(lines)


@dataclass
class Reckoning:
    """One look through a roster: whom the lines before have named already."""

    known: Known
    cohort: Cohort | None
    new: dict[tuple[str, str], Fate] = field(default_factory=dict)
    listed: dict[int, set[int]] = field(default_factory=dict)
    seen: dict[tuple[object, int], Fate] = field(default_factory=dict)

    def reckon(self, lines: list[Line]) -> list[Fate]:
        # Two rounds: whether somebody moves depends on all the cohorts they are listed for.
        self.known.reserved |= {line.sign_in_name for line in lines}
        fates = [self.named(line, lines) for line in lines]
        for fate in fates:
            if not fate.reason and fate.person and fate.cohort:
                self.place(fate, fate.person, fate.cohort)
        return fates

    def named(self, line: Line, lines: list[Line]) -> Fate:
        """Who the line is about, and which cohort."""
        fate = Fate(line)
        try:
            if line.refused:
                raise WrongLineError(line.refused)
            fate.cohort = self.cohort_of(line)
            fate.person = self.person_of(line)
            if fate.person:
                self.listed.setdefault(fate.person.pk, set()).add(fate.cohort.pk)
            else:
                self.as_new(fate, lines)
            self.once(fate, fate.cohort)
        except WrongLineError as error:
            fate.what, fate.reason = What.WRONG, str(error)
        return fate

    def cohort_of(self, line: Line) -> Cohort:
        if not line.cohort:
            if self.cohort is None:
                raise WrongLineError("This line names no cohort.")
            return self.cohort
        found = self.known.cohorts_named(line.cohort)
        if len(found) > 1 and self.cohort not in found:
            raise WrongLineError(
                f"You teach {len(found)} cohorts named {line.cohort}. "
                "Send the roster from the page of the one you mean."
            )
        if not found:
            raise WrongLineError(f"You teach no cohort named {line.cohort}.")
        return self.cohort if self.cohort in found else found[0]

    def person_of(self, line: Line) -> Person | None:
        """One of the instructor's own people; None where the line is about somebody new."""
        found = self.matches(line)
        if len(found) > 1:
            raise WrongLineError("You have several learners like this. Give the sign-in name, too.")
        if found and not found[0].is_active:
            raise WrongLineError("This account is closed. An administrator can open it again.")
        return found[0] if found else None

    def matches(self, line: Line) -> list[Person]:
        if line.sign_in_name:
            own = self.known.by_sign_in_name.get(line.sign_in_name)
            return [own] if own else []
        if line.email:
            return self.known.by_email.get(line.email.casefold(), [])
        return self.known.by_name.get(line.name.casefold(), [])

    def as_new(self, fate: Fate, lines: list[Line]) -> None:
        """An account to be made, or one that an earlier line makes."""
        line = fate.line
        fate.first = self.new.get(key_of(line))
        if fate.first:
            if fate.first.line.name.casefold() != line.name.casefold():
                raise WrongLineError(f"Line {fate.first.line.number} has this with another name.")
            fate.what, fate.sign_in_name = What.JOINS, fate.first.sign_in_name
            return
        self.refuse_doubtful(line, lines)
        fate.what = What.NEW
        fate.sign_in_name = line.sign_in_name or self.known.free_name(line.name)
        self.new[key_of(line)] = fate
        if line.email:
            self.new[("e-mail", line.email.casefold())] = fate

    def refuse_doubtful(self, line: Line, lines: list[Line]) -> None:
        """Refuse to make an account that somebody may have already."""
        known, email = self.known, line.email.casefold()
        if line.sign_in_name and line.sign_in_name in known.sign_in_names:
            raise WrongLineError(
                "Somebody already signs in with this name. If it is this person, give them the "
                "joining code: they join by themselves. If not, choose another."
            )
        if email and email in known.emails:
            raise WrongLineError(
                "There is an account with this e-mail address. "
                "Give this person the joining code: they join by themselves."
            )
        if email and ("e-mail", email) in self.new:
            number = self.new["e-mail", email].line.number
            raise WrongLineError(f"Line {number} has the same e-mail address.")
        if email and not line.sign_in_name and known.by_name.get(line.name.casefold()):
            raise WrongLineError(
                "You have a learner of this name with another e-mail address, or none. "
                "Put the sign-in name in the line: theirs, or a new one for somebody else."
            )
        twin = next((each for each in lines if confusable(each, line)), None)
        if twin:
            raise WrongLineError(
                f"Line {twin.number} has the same name. "
                "Give an e-mail address or sign-in name in both lines."
            )

    def once(self, fate: Fate, cohort: Cohort) -> None:
        """Refuse a line that says what an earlier one said."""
        who = fate.person.pk if fate.person else key_of((fate.first or fate).line)
        earlier = self.seen.setdefault((who, cohort.pk), fate)
        if earlier is not fate:
            raise WrongLineError(f"Line {earlier.line.number} has the same person.")

    def place(self, fate: Fate, person: Person, cohort: Cohort) -> None:
        """Whether somebody with an account is there already, moves, or joins."""
        fate.sign_in_name = person.sign_in_name
        places = self.known.places[person.pk]
        if cohort.pk in places:
            fate.what = What.SAME
            return
        others = places - self.listed[person.pk]
        if len(others) == 1:
            places -= others
            left = others.pop()
            fate.what = What.MOVES
            fate.leaves = next(each for each in self.known.cohorts if each.pk == left)
        else:
            fate.what = What.JOINS
        places.add(cohort.pk)


def key_of(line: Line) -> tuple[str, str]:
    """By what somebody new is known again further down."""
    if line.sign_in_name:
        return "sign-in name", line.sign_in_name
    if line.email:
        return "e-mail", line.email.casefold()
    return "name", line.name.casefold()


def confusable(other: Line, line: Line) -> bool:
    """Whether a line with only a name may be about the person of another that says more."""
    only_name = key_of(line)[0] == "name"
    same = other.name.casefold() == line.name.casefold()
    return only_name and same and key_of(other)[0] != "name" and not other.refused
