"""How somebody wants to see the items: sorted, of whom, and which kinds as one set."""

from collections.abc import Callable, Mapping
from typing import Any

from django import forms
from django.http import QueryDict

from exercises.items.reads import Kinds, Line

SORTS: Mapping[str, str] = {
    "course": "In order",
    "hardest": "Hardest first",
    "least-telling": "Least telling first",
    "slowest": "Slowest first",
    "most-answers": "Most answers first",
}
UNKNOWN = 2.0  # beyond every correlation


def telling(line: Line) -> float:
    found = line.item.discrimination
    return UNKNOWN if found is None else found


KEYS: Mapping[str, Callable[[Line], float]] = {
    "course": lambda line: 0,
    "hardest": lambda line: line.item.first,
    "least-telling": telling,
    "slowest": lambda line: -line.item.seconds,
    "most-answers": lambda line: -line.item.answers,
}


class ItemsForm(forms.Form):
    """Read from the address; what makes no sense there is left out."""

    sort = forms.ChoiceField(choices=list(SORTS.items()), required=False)
    of = forms.ChoiceField(choices=[("cohort", "This cohort"), ("all", "All")], required=False)
    set = forms.MultipleChoiceField(required=False, widget=forms.CheckboxSelectMultiple)

    def __init__(self, asked: QueryDict, kinds: Kinds) -> None:
        super().__init__(asked)
        named = [(slug, kind.title) for slug, kind in kinds.items()]
        self.fields["set"].choices = named  # type: ignore[attr-defined]
        self.full_clean()

    @property
    def chosen(self) -> dict[str, Any]:
        cleaned = self.cleaned_data
        return {
            "sort": cleaned.get("sort") or "course",
            "of": cleaned.get("of") or "cohort",
            "set": cleaned.get("set") or [],
        }

    def sorted(self, lines: list[Line]) -> list[Line]:
        return sorted(lines, key=KEYS[self.chosen["sort"]])
