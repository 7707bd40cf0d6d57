"""A block `sound`: what is heard of a stretch of a tape map further up.

map          its name
edits        after so many edits; without it, after all
start, end   frames, half-open
says         {source = {lines, begin, pause, room}}, see `exercises.drills.media.medium.Sound`
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any, ClassVar

from django.urls import reverse

from course.lessons.blocks.figure import KEYS, Figure, common
from course.lessons.blocks.given import Given
from course.lessons.blocks.heard import HeardStretch, reel_of
from course.lessons.blocks.picture import map_of
from course.lessons.lesson import Diagram
from course.made import name_of
from exercises.drills.asks import Json
from exercises.drills.media.medium import SoundClip, SourceSound, media
from exercises.drills.media.rendering import ROOMS
from exercises.signal.speech.line import lines
from exercises.tape import DocumentError, EditSession, read_edit_session
from exercises.tape.faults.meter import RunMeter

LONGEST = 20  # seconds
LATEST = 600_000  # ms into a tape


@dataclass(frozen=True, kw_only=True)
class Heard(Figure):
    part: ClassVar[str] = "sound"
    is_seen: ClassVar[bool] = False

    spec: Json
    words: tuple[str, ...]
    stretch: HeardStretch = field(repr=False)

    @property
    def url(self) -> str:
        return reverse("lesson-shown", args=[name_of(self.spec)])

    def sentences(self) -> list[str]:
        return list(self.words)

    def media(self) -> list[Json]:
        return [self.spec]


def read_sound(given: Given, maps: Mapping[str, Diagram]) -> Heard:
    given.only(*KEYS, "map", "edits", "start", "end", "says")
    drawn = map_of(given, maps)
    sounds = dict(_sounds(given.table("says"), drawn.session))
    made = given.whole("edits", 0, len(drawn.session.edits), default=len(drawn.session.edits))
    document = _marked(drawn.document, sounds, drawn.session)
    document["edits"] = document["edits"][:made]
    try:
        session = read_edit_session(document)
    except DocumentError as refused:
        raise given.problem("says", f"The session is refused at {refused}.") from refused
    start = given.whole("start", 0, session.master.length - 1)
    longest = LONGEST * session.bench.rate.nominal
    end = given.whole("end", start + 1, min(start + longest, session.master.length))
    stretch = HeardStretch(session, sounds, start, end)
    _refuse_unheard(given, stretch)
    words = tuple(stretch.sentences())
    told = common(given)
    clip = SoundClip(
        title=told["title"], words=words, session=document, sounds=sounds, start=start, end=end
    )
    (spec,) = media(clip)
    return Heard(**told, spec=spec, words=words, stretch=stretch)


def _sounds(given: Given, session: EditSession) -> Iterator[tuple[str, SourceSound]]:
    for source in given.values:
        if source not in session.sources:
            raise given.problem(source, f"The map has no source “{source}”.")
        said = given.table(source)
        said.only("lines", "begin", "pause", "room")
        names = said.values.get("lines", [])
        if not isinstance(names, list) or not names or not set(names) <= set(lines()):
            raise said.problem("lines", f"lines are one or more of {', '.join(lines())}.")
        yield (
            source,
            SourceSound(
                lines=tuple(names),
                begin=said.whole("begin", 0, LATEST, default=0),
                pause=said.whole("pause", 0, LATEST, default=600),
                room=said.one_of("room", tuple(ROOMS), default="room"),
            ),
        )


def _marked(
    document: Json, sounds: Mapping[str, SourceSound], session: EditSession
) -> dict[str, Any]:
    """The session with the marks of what is said, in the place of the map's own."""
    sources = {name: {**source} for name, source in document["sources"].items()}
    for name, sound in sounds.items():
        marks = reel_of(sound).marks(session.bench.rate)
        kept = {"words": marks.words, "breaths": marks.breaths}
        sources[name]["takes"] = [
            {
                **take,
                "marks": {
                    what: [
                        {"start": span.start, "end": span.end}
                        for span in spans
                        if take["start"] <= span.start and span.end <= take["end"]
                    ]
                    for what, spans in kept.items()
                },
            }
            for take in sources[name]["takes"]
        ]
    return {**document, "sources": sources}


def _refuse_unheard(given: Given, stretch: HeardStretch) -> None:
    meter = RunMeter(stretch.session.bench)
    for run in stretch.session.recorded().sound.laid.between(stretch.start, stretch.end):
        source = run.value.source
        if meter.levels(run.value) is not None and source not in stretch.sounds:
            raise given.problem("says", f"says has nothing for “{source}”, which is heard there.")
