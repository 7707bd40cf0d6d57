"""Whether anything of a text can be seen."""

import unicodedata

from django.core.exceptions import ValidationError

NOTHING_SEEN = "Nothing in this can be seen. Type letters or figures."
# Letters and symbols by their category, which are drawn as nothing: the Hangul fillers (of
# Unicode's Default_Ignorable_Code_Point), the blank Braille pattern, the null notehead, and what
# stands where an object was.
DRAWN_AS_NOTHING = frozenset("\u115f\u1160\u3164\uffa0\u2800\U0001d159\ufffc")


def is_visible(text: str) -> bool:
    """Is there a letter, a figure, a mark of punctuation or a symbol, not only what joins them?"""
    return any(
        unicodedata.category(letter)[0] in "LNPS" and letter not in DRAWN_AS_NOTHING
        for letter in text
    )


def refuse_invisible(text: str) -> None:
    """For names: whoever reads a list must be able to point at each."""
    if not is_visible(text):
        raise ValidationError(NOTHING_SEEN)
