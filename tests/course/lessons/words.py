"""What the texts of the course may not say, and how they are counted."""

import re
from collections.abc import Iterable, Iterator

# American spellings, by how the words begin or end.
AMERICAN = re.compile(
    r"\b(color|center|centimeter|millimeter|gray|labor|favor|neighbor|behavior|honor|catalog"
    r"|dialog|fulfill|judgment|defense|traveled|labeled|canceled|modeled|leveled|signaled"
    r"|analog|fiber|theater|liter|mold|skeptical|gotten|maneuver"
    r"|practiced|practicing|to practice|toward|aluminum|program|license"
    r"|(?!size|seize|prize)\w+iz(e|es|ed|ing|ation))\b",
    re.IGNORECASE,
)
# One word a thing: on the left what is not said, on the right what is said instead.
OTHER_WORDS = {
    r"decks?|VTR|VCR": "player, recorder, machine",
    r"footage|clips?|rushes": "shot, take",
    r"audio|soundtrack": "sound, sound track",
    r"timecode|time-code": "time code",
    r"pre roll|preroll|runup|run up": "pre-roll, run-up",
    r"in[- ]points?|out[- ]points?|mark[- ]in|mark[- ]out": "edit in, edit out",
    r"master tapes?|the master|programme master": "edit master",
    r"camera tapes? master|raw tapes?": "source tape",
    r"control pulses|sync pulses|CTL": "pulses",
    r"out of step|pulses in step": "in phase, out of phase",
    r"SNR|S/N": "signal-to-noise",
    r"video": "picture, videotape",
    r"post roll|postroll": "post-roll",
    r"edit decision lists?|cue sheets?": "edit sheet",
    r"log sheets?|tape logs?|camera logs?": "shot log",
    r"paper cuts?|paper plan": "paper edit",
    r"colour bars and tone|bars & tone": "bars and tone",
    r"drop frame": "drop-frame",
    r"cross pulse|crosspulse|under-scan": "cross-pulse, underscan",
    r"erasing heads?|eraser heads?": "erase head",
    r"students?|pupils?|trainees?": "learner",
    r"teachers?|tutors?|trainers?": "instructor",
    r"quiz(zes)?|exercises?|tests? yourself": "drill",
    r"work ?station|edit suite": "bench",
}


def sentences(texts: Iterable[str]) -> Iterator[str]:
    for text in texts:
        yield from filter(None, re.split(r"(?<=[.!?])\)?\s+", text.strip()))


def words(text: str) -> list[str]:
    return re.findall(r"[\w’'-]+(?:[:.,]\w+)*", text)


def other_words(text: str) -> dict[str, str]:
    """Words that the course has others for, each with what is said instead."""
    return {
        found[0]: instead
        for pattern, instead in OTHER_WORDS.items()
        for found in re.finditer(rf"\b({pattern})\b", text, re.IGNORECASE)
    }


def runs(texts: Iterable[str], length: int) -> set[str]:
    """Every so many words that follow one another in a sentence."""
    found: set[str] = set()
    for sentence in sentences(texts):
        said = [word.lower() for word in words(sentence)]
        found |= {" ".join(said[at : at + length]) for at in range(len(said) - length + 1)}
    return found
