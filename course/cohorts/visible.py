"""Whether a text can be seen: something of it, and all of it."""

import unicodedata

from django.core.exceptions import ValidationError

UNSEEN = "There is a character in this that can’t be seen. Type it again."
NOTHING_SEEN = "Nothing in this can be seen. Type letters or figures."
# Letters and symbols by their category, which are drawn as nothing: the Hangul fillers (of
# Unicode's Default_Ignorable_Code_Point), the blank Braille pattern, the null notehead, and what
# stands where an object was.
DRAWN_AS_NOTHING = frozenset("\u115f\u1160\u3164\uffa0\u2800\U0001d159\ufffc")

JOINERS = "\u200c\u200d"  # zero-width, between letters that would else join, or not
VIRAMA = 9  # the combining class of what takes a letter's vowel away


def is_visible(text: str) -> bool:
    """Is there a letter, a figure, a mark of punctuation or a symbol, not only what joins them?"""
    return any(
        unicodedata.category(letter)[0] in "LNPS" and letter not in DRAWN_AS_NOTHING
        for letter in text
    )


def is_unseen(letter: str) -> bool:
    return unicodedata.category(letter) == "Cf" or letter in DRAWN_AS_NOTHING


def as_seen(text: str) -> str:
    """The text without what can't be seen in it: to compare what two people typed."""
    return " ".join("".join(letter for letter in text if not is_unseen(letter)).split())


def hides_something(text: str) -> bool:
    """Whether a character can't be seen that is not part of how a script is written."""
    return any(
        is_unseen(letter) and not joins(before, letter)
        for before, letter in zip(("", *text), text, strict=False)
    )


def joins(before: str, letter: str) -> bool:
    """A joiner after a virama or an Arabic letter: RFC 5892, A.1 and A.2, roughly."""
    if letter not in JOINERS or not before:
        return False
    return unicodedata.combining(before) == VIRAMA or unicodedata.bidirectional(before) == "AL"


def refuse_invisible(text: str) -> None:
    """For names: whoever reads a list must be able to point at each, and to type it."""
    if not is_visible(text):
        raise ValidationError(NOTHING_SEEN)
    if hides_something(text):
        raise ValidationError(UNSEEN)
