"""Every answer passes one of these before anything looks at it."""

from collections.abc import Mapping
from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.core.files.uploadedfile import UploadedFile
from django.http import QueryDict
from django.utils.datastructures import MultiValueDict

from exercises.drills.asks import AnswerRefused, Ask, SentPicture
from exercises.drills.asks.picture import NONE_SENT
from exercises.drills.question import Question
from exercises.signal.photographs import (
    Photograph,
    PhotographRefused,
    PhotographsBusy,
    photograph,
)

BUSY = "busy"


class AsTyped(forms.Widget):
    """All values that were sent under a name, as they were typed."""

    def value_from_datadict(self, data: Mapping[str, Any], files: Any, name: str) -> list[str]:
        if isinstance(data, QueryDict):
            return [str(value) for value in data.getlist(name)]
        return [str(data[name])] if name in data else []


class AsSent(forms.Widget):
    """All files that were sent under a name."""

    needs_multipart_form = True

    def value_from_datadict(
        self, data: Mapping[str, Any], files: Any, name: str
    ) -> "list[UploadedFile[bytes]]":
        return list(files.getlist(name)) if isinstance(files, MultiValueDict) else []


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


class PictureField(forms.Field):
    """A picture that was sent, drawn anew."""

    widget = AsSent

    def __init__(self, ask: SentPicture) -> None:
        super().__init__(label=ask.legend, required=False)
        self.ask = ask

    def clean(self, value: "list[UploadedFile[bytes]]") -> Photograph:
        if not value:
            raise ValidationError(NONE_SENT)
        if len(value) > 1:
            raise ValidationError("Send one picture, not several.")
        try:
            return photograph(value[0], value[0].size or 0)
        except PhotographRefused as refusal:
            raise ValidationError(str(refusal)) from refusal
        except PhotographsBusy as busy:
            raise ValidationError(str(busy), code=BUSY) from busy


class AnswerForm(forms.Form):
    """The fields that a question asks for, in its order.

    `wait` is how long to wait before it is sent again, in words, where it came too soon.
    """

    wait = ""

    def __init__(self, question: Question, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.question, self.asks = question, question.asks
        for ask in self.asks:
            field = PictureField(ask) if isinstance(ask, SentPicture) else AskField(ask)
            self.fields[ask.name] = field

    @property
    def status(self) -> int:
        """Of the page that shows it: 503 where all that is wrong is that the site is busy."""
        codes = {error.code for found in self.errors.as_data().values() for error in found}
        return 503 if codes == {BUSY} else 422 if codes else 200

    def answer(self) -> dict[str, Any]:
        """The answer as `grade` takes it; valid forms only."""
        return {
            name: given.digest if isinstance(given, Photograph) else given
            for name in self.fields
            for given in [self.cleaned_data[name]]
        }

    def photograph(self) -> Photograph | None:
        """The picture that is the answer, where one was asked for; valid forms only."""
        return next(
            (each for each in self.cleaned_data.values() if isinstance(each, Photograph)), None
        )

    def parts(self) -> list[dict[str, Any]]:
        """What the page draws: each ask, its template, what was typed and what is wrong."""
        return [self.part(ask) for ask in self.asks]

    def part(self, ask: Ask) -> dict[str, Any]:
        field = self[ask.name]
        typed = (field.value() or []) if self.is_bound else []
        return {
            "ask": ask,
            "template": f"practice/asks/{ask.form}.html",
            "id": field.auto_id,
            "typed": typed,
            "rows": ask.rows(typed),
            "error": next(iter(field.errors), ""),
            "again": bool(self.wait) or (self.is_bound and self.has_error(ask.name, BUSY)),
        }
