"""Spot it by ear: a clip across an edit. Which fault, or none?"""

from copy import deepcopy

from exercises.drills.asks import Json
from exercises.drills.judging.spotted import grade
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.spot_by_ear.answers import FAULT, NOTHING, RULES, revealed, right_answer
from exercises.drills.kinds.spot_by_ear.described import Told
from exercises.drills.kinds.spot_by_ear.faults import (
    KINDS,
    SENTENCES,
    WORN,
    SoundStretch,
    stretches,
)
from exercises.drills.kinds.spot_by_ear.situations import Situation, drawn
from exercises.drills.kinds.spot_by_ear.talk import Talk
from exercises.drills.media.medium import SoundClip, media
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import opening
from exercises.drills.setting.settings import Settings
from exercises.tape import Bench, EditSession, Tape, faults, read_edit_session, tape_map
from exercises.tape.faults.wording import sentence

CLEAR = 0.4  # seconds on either side of the cut in which no worn tape dips
AROUND = 6  # seconds of the film on either side of the cut that the map shows, at most


def candidate(draw: Draw, settings: Settings) -> Question | None:
    situation, talk = drawn(draw), Talk(draw, settings)
    clean = deepcopy(talk)
    situation.spoil(talk)
    return question(situation, talk, clean)


def question(situation: Situation, talk: Talk, clean: Talk) -> Question | None:
    document = talk.document()
    session = read_edit_session(document)
    tape = session.recorded()
    found = stretches(tape, session.bench, *talk.window)
    right = right_answer(found, worn=bool(talk.dips))
    if right is None or (right != NOTHING) is not situation.is_fault or is_near(talk):
        return None
    rule = RULES[right]
    return Question(
        situation=situation.name,
        skill=rule.skill,
        asks=(FAULT,),
        shown={
            "story": f"{opening(talk.scene)} Below is what is heard across a cut in the interview.",
            "facts": [
                ["At the cut", talk.scene.code(talk.cut)],
                ["It comes", f"{into(talk)} seconds into the clip"],
                ["Played on", f"{talk.scene.room}, {talk.scene.rate.label} frames a second"],
            ],
            "shows": [0],
        },
        right={"fault": right},
        reveals=revealed(right),
        rule=rule.at(talk.scene.bench),
        media=media(
            clip("The sound across the cut", talk, session, tape, found),
            *([without(clean)] if situation.is_fault else []),
        ),
        key={
            "session": document,
            "happened": happened(tape, session.bench, found) or ([WORN] if talk.dips else []),
            "map": mapped(session, tape, talk),
            "caption": f"The edit master around the cut at {talk.scene.code(talk.cut)}",
            "afterwards": [0, 1] if situation.is_fault else [0],
            "examples": {},
        },
    )


def is_near(talk: Talk) -> bool:
    """Whether the sound dips so near the cut that the edit might have done it."""
    clear = CLEAR * talk.scene.rate.nominal
    return any(end > talk.cut - clear and start < talk.cut + clear for start, end in talk.dips)


def into(talk: Talk) -> str:
    """When the cut is heard, in seconds of the clip."""
    return f"{float((talk.cut - talk.window[0]) / talk.scene.rate.fraction):.1f}"


def clip(
    title: str, talk: Talk, session: EditSession, tape: Tape, found: list[SoundStretch]
) -> SoundClip:
    start, end = talk.window
    return SoundClip(
        title=title,
        words=Told(talk, session, tape, found).sentences(),
        session=talk.document(),
        sounds=talk.sounds,
        start=start,
        end=end,
    )


def without(clean: Talk) -> SoundClip:
    session = read_edit_session(clean.document())
    return clip("The same cut, made well", clean, session, session.recorded(), [])


def happened(tape: Tape, bench: Bench, found: list[SoundStretch]) -> list[str]:
    """What the tape model says of it."""
    heard = {each.heard for each in found}
    told = dict.fromkeys(
        sentence(fault)
        for fault in faults(tape, bench)
        if fault.kind in KINDS and KINDS[fault.kind] in heard
    )
    sentences = [f"{each[:1].upper()}{each[1:]}." for each in told]
    return sentences or [SENTENCES[each] for each in sorted(heard) if each in SENTENCES]


def mapped(session: EditSession, tape: Tape, talk: Talk) -> Json:
    reach = AROUND * session.bench.rate.nominal
    start, end = max(talk.cut - reach, talk.start - reach // 6), min(talk.cut + reach, talk.end)
    return tape_map(tape, session.bench, start=start, end=end, marks={"cut": talk.cut}).as_json()


KIND = Kind(
    slug=slug_of(__name__),
    title="Spot it by ear",
    purpose="The sound across a cut in the film: what is wrong with it?",
    skills=("hearing-a-bad-edit",),
    lesson="knowing-a-bad-edit",
    revision=3,
    template="drills/judging/spotted.html",
    candidate=candidate,
    grade=grade,
)
