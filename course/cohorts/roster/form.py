"""The form that a roster is sent by."""

from django import forms

from course.cohorts.roster.sheet import MOST_BYTES


class RosterForm(forms.Form):
    file = forms.FileField(
        label="CSV file",
        help_text="UTF-8, with commas, semicolons or tabs; at most 1,000 people.",
        widget=forms.FileInput(attrs={"accept": ".csv,.txt,text/csv,text/plain"}),
        error_messages={
            "required": "Choose a file first.",
            "missing": "Choose a file first.",
            "empty": "This file is empty.",
            "invalid": "Choose a file first.",
        },
    )

    def content(self) -> bytes:
        """The file's bytes, not more than it takes to see that they are too many."""
        return bytes(self.cleaned_data["file"].read(MOST_BYTES + 1))
