"""Every answer passes one of these before anything looks at it."""

from typing import Any

from django import forms

from exercises.drills.kind import Ask, Question


class AnswerForm(forms.Form):
    """The fields that a question asks for, in its order."""

    def __init__(self, question: Question, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.asks = question.asks
        for ask in question.asks:
            self.fields[ask.name] = choice_field(ask)

    def answer(self) -> dict[str, Any]:
        """The answer as `grade` takes it; valid forms only."""
        return {ask.name: self.cleaned_data[ask.name] for ask in self.asks}


def choice_field(ask: Ask) -> forms.ChoiceField:
    return forms.ChoiceField(
        label=ask.legend,
        choices=[(option.value, option.text) for option in ask.options],
        widget=forms.RadioSelect,
        error_messages={
            "required": "Choose one answer. Nothing has been recorded yet.",
            "invalid_choice": "That is not one of the answers. Choose one of those below.",
        },
    )
