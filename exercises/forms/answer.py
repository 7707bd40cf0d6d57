"""Every answer passes one of these before anything looks at it."""

from collections.abc import Mapping
from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.http import QueryDict

from exercises.drills.asks import AnswerRefused, Ask
from exercises.drills.kind import Question


class AsTyped(forms.Widget):
    """All values that were sent under a name, as they were typed."""

    def value_from_datadict(self, data: Mapping[str, Any], files: Any, name: str) -> list[str]:
        if isinstance(data, QueryDict):
            return [str(value) for value in data.getlist(name)]
        return [str(data[name])] if name in data else []


class AskField(forms.Field):
    """One ask of a question; the ask itself says what is an answer to it."""

    widget = AsTyped

    def __init__(self, ask: Ask) -> None:
        super().__init__(label=ask.legend, required=False)
        self.ask = ask

    def clean(self, value: list[str]) -> Any:
        try:
            return self.ask.read(value)
        except AnswerRefused as refusal:
            raise ValidationError(str(refusal)) from refusal


class AnswerForm(forms.Form):
    """The fields that a question asks for, in its order."""

    def __init__(self, question: Question, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.asks = question.asks
        for ask in self.asks:
            self.fields[ask.name] = AskField(ask)

    def answer(self) -> dict[str, Any]:
        """The answer as `grade` takes it; valid forms only."""
        return {name: self.cleaned_data[name] for name in self.fields}

    def parts(self) -> list[dict[str, Any]]:
        """What the page draws: each ask, its template, what was typed and what is wrong."""
        return [self.part(ask) for ask in self.asks]

    def part(self, ask: Ask) -> dict[str, Any]:
        field = self[ask.name]
        typed = (field.value() or []) if self.is_bound else []
        return {
            "ask": ask,
            "template": f"exercises/asks/{ask.form}.html",
            "id": field.auto_id,
            "typed": typed,
            "rows": ask.rows(typed),
            "error": next(iter(field.errors), ""),
        }
